import { plainText } from '#core/quantity/plain-text.ts';
import { quantityAt } from '#core/quantity/quantity.ts';
import { atomsOf, type Atom } from './atoms.ts';
import { decodeOrderingCode, type Decoded } from './decode.ts';
import { familyKind } from './families.ts';
import type { ReadField } from './hints.ts';
import { readFootprint, type FootprintReading } from './footprint.ts';
import { isStandardOf } from './mechanical/standards.ts';
import { packageAt } from './package.ts';
import type { Kind } from './part.ts';

/** A maker's part number that was known by its grammar or its series. */
export interface Code {
  readonly text: string;
  readonly kind: Kind;
  readonly decoded: Decoded | null;
  readonly start: number;
  readonly end: number;
}

/** A cell of a row with what is in it. */
export interface Cell {
  readonly field: ReadField | 'text';
  readonly text: string;
  readonly codes: readonly Code[];
  readonly atoms: readonly Atom[];
  /** what it says as the name of a footprint, package or library symbol */
  readonly drawn: FootprintReading | null;
}

export type CellReader = (field: Cell['field'], written: string) => Cell;

const LINKS = /(?:https?:\/\/|www\.)\S+/gi;

/** Reads one cell: first the part numbers that are known, then the atoms of the rest. */
export function readCell(field: Cell['field'], written: string): Cell {
  const plain = plainText(written);
  const text = plain.includes('//') || plain.includes('www.') ? plain.replace(LINKS, (link) => ' '.repeat(link.length)) : plain;
  const codes = codesOf(text).filter((code) => !isStandardOf(text, code.text));
  const drawn = field === 'footprint' || field === 'package' || field === 'device' ? readFootprint(text) : null;
  return { field, text, codes, atoms: atomsOf(without(text, codes), field === 'value' || field === 'partNumber'), drawn };
}

function without(text: string, codes: readonly Code[]): string {
  let masked = text;
  for (const code of codes) masked = masked.slice(0, code.start) + ' '.repeat(code.end - code.start) + masked.slice(code.end);
  return masked;
}

const BLOCK = /[A-Za-z0-9][^\s;|()"[\]]*/g;
const APART = /(?<![A-Za-z0-9])([A-Z]{1,4}|[123][NS][ABCDJK]?|74[A-Z]{1,4}) (\d{2,5})(?: ?([A-Z]{1,2}))?(?![A-Za-z0-9])/g;

function codesOf(text: string): Code[] {
  const codes: Code[] = [];
  if (!/\d/.test(text)) return codes;
  BLOCK.lastIndex = 0;
  for (let match = BLOCK.exec(text); match; match = BLOCK.exec(text)) {
    const code = codeOf(blockText(match[0]), match.index);
    if (code) codes.push(code);
  }
  return codes.length ? codes : apart(text);
}

/** A comma ends a block, except between digits: `MKDSN1,5/3-5,08`. */
function blockText(block: string): string {
  const comma = /(?<!\d),|,(?!\d)/.exec(block);
  return (comma ? block.slice(0, comma.index) : block).replace(/[.:,\-/_*]+$/, '');
}

function codeOf(block: string, start: number): Code | null {
  if (block.length < 4 || !/[A-Za-z]/.test(block) || !/\d/.test(block)) return null;
  if (isValue(block)) return null;
  const decoded = decodeOrderingCode(block);
  if (decoded) return { text: block, kind: decoded.kind, decoded, start, end: start + block.length };
  const kind = familyKind(block);
  if (kind === null || packageAt(block, 0)?.end === block.length) return null;
  const text = withoutPackage(block);
  return { text, kind, decoded: null, start, end: start + text.length };
}

/** `430k`, `4k7`, `100nF` are values, whatever series begin so; `78M05`, `1N914`, `4N35` are not. */
function isValue(block: string): boolean {
  const quantity = quantityAt(block, 0);
  if (!quantity || quantity.form === 'bare' || quantity.end !== block.length) return false;
  if (quantity.unit === 'W' && Number(quantity.value) >= 1000) return false; // a trimmer of the 3296W style
  return quantity.form !== 'rkm' || !/^7[89][LM]|^\d{1,2}N\d/.test(block);
}

/** `STM32F030-LQFP32` → `STM32F030`: what stands behind is said by the package. */
export function withoutPackage(block: string): string {
  for (let i = 2; i < block.length; i++) {
    if (!/[-_/]/.test(block[i - 1] ?? '')) continue;
    const found = packageAt(block, i);
    if (found && !found.bare && block.slice(found.end).length <= 4 && found.end - i > 2) return block.slice(0, i - 1);
    if (/^(?:(?:NPN|PNP|SMD|THT|SOT|DIL|DIP|SO)(?![A-Za-z0-9])|[A-ZÄÖÜ]?[a-zäöüß]{3,}(?!\d))/.test(block.slice(i)))
      return block.slice(0, i - 1);
  }
  return block;
}

/** `IRF 840`, `2N 2222 A`: one number written apart, where the series is known. */
function apart(text: string): Code[] {
  const codes: Code[] = [];
  APART.lastIndex = 0;
  for (let match = APART.exec(text); match; match = APART.exec(text)) {
    const [all, letters = '', digits = '', tail = ''] = match;
    const kind = familyKind(letters + digits);
    if (kind !== null && !/^[KMR]$/.test(tail) && (digits.length >= 3 || letters.length >= 3))
      codes.push({ text: letters + digits + tail, kind, decoded: null, start: match.index, end: match.index + all.length });
  }
  return codes;
}
