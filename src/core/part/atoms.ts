import { leadingRkmAt, quantityAt, type Quantity } from '#core/quantity/quantity.ts';
import { metricThreadAt } from './mechanical/metric-thread.ts';
import { cartridgeAt, packageAt } from './package.ts';
import type { PackageReading } from './sizes.ts';
import { unifiedThreadAt } from './unified.ts';
import { foldWords, wordAt, type WordMeaning } from './words.ts';

/** A piece of a text that was understood, or one that was not. Places are [start, end) in the text. */
export type Atom = { readonly start: number; readonly end: number } & (
  | { readonly type: 'quantity'; readonly quantity: Quantity }
  | { readonly type: 'asymmetric'; readonly high: string; readonly low: string; readonly unit: string }
  | { readonly type: 'package'; readonly reading: PackageReading }
  | { readonly type: 'word'; readonly meaning: WordMeaning }
  | { readonly type: 'dielectric'; readonly name: string }
  | { readonly type: 'thread'; readonly thread: string; readonly length: string | null }
  | { readonly type: 'size' }
  | { readonly type: 'grid'; readonly rows: number; readonly columns: number }
  | { readonly type: 'break'; readonly mark: string }
  | { readonly type: 'unknown'; readonly text: string }
);

type Recogniser = (text: string, start: number, folded: string) => Atom | null;

/** By how an atom begins, in this order; the first that knows the place takes it. A new sort of thing is a new row. */
const BY_DIGIT: readonly Recogniser[] = [unifiedAt, timesAt, fuseSizeAt, sizeAt, gridAt, packageFor, quantityFor, wordFor];
const BY_SIGN: readonly Recogniser[] = [asymmetricAt, quantityFor];
const BY_LETTER: readonly Recogniser[] = [threadAt, dielectricAt, zeroOhmAt, fuseAt, taperAt, packageFor, wordFor];

/** Splits a plain text into atoms from left to right. In a value, a letter may stand first for the point: `R47`. */
export function atomsOf(text: string, value = false): Atom[] {
  const folded = foldWords(text);
  const atoms: Atom[] = [];
  let i = 0;
  while (i < text.length) {
    const char = text[i] ?? '';
    if (!startsAtom(text, i)) {
      if (/[,;:()|[\]]/.test(char) || (char === '-' && text[i - 1] === ' ' && text[i + 1] === ' '))
        atoms.push({ type: 'break', mark: char, start: i, end: i + 1 });
      i++;
      continue;
    }
    const atom = recognise(text, i, folded, value);
    atoms.push(atom);
    i = Math.max(atom.end, i + 1);
  }
  return atoms;
}

function startsAtom(text: string, i: number): boolean {
  const code = text.charCodeAt(i);
  if (isWordCode(code)) return true;
  if (!isWordCode(text.charCodeAt(i + 1)) && !/[±+<>=~-]/.test(text[i] ?? '')) return false;
  return (
    /[.±+-]/.test(text[i] ?? '') &&
    /^(?:[±]\s?|\+\/?-\s?|[+-]|)[.,]?\d/.test(text.slice(i, i + 6)) &&
    !isWordCode(text.charCodeAt(i - 1))
  );
}

const isDigit = (code: number): boolean => code >= 48 && code <= 57;
/** `¼ ½ ¾ ⅛` */
const isFraction = (code: number): boolean => (code >= 0xbc && code <= 0xbe) || code === 0x215b;

function isWordCode(code: number): boolean {
  return (
    (code >= 48 && code <= 57) ||
    (code >= 65 && code <= 90) ||
    (code >= 97 && code <= 122) ||
    (code >= 0xb5 && !(code >= 0x2010 && code <= 0x2bff && code !== 0x2103) && code !== 0xd7 && code !== 0xf7 && code !== 0xfffd)
  );
}

function recognise(text: string, start: number, folded: string, value: boolean): Atom {
  const code = text.charCodeAt(start);
  const recognisers = isDigit(code) || isFraction(code) ? BY_DIGIT : isWordCode(code) ? BY_LETTER : BY_SIGN;
  for (const recogniser of recognisers) {
    const atom = recogniser(text, start, folded);
    if (atom) return atom;
  }
  const leading = value ? leadingRkmAt(text, start) : null;
  if (leading) return { type: 'quantity', quantity: leading, start, end: leading.end };
  let end = start + 1;
  // words of Japanese and Chinese stand without blanks: the next may begin at once
  const last = code < 0x2e80 ? text.length : end;
  while (end < last && isWordCode(text.charCodeAt(end))) end++;
  return { type: 'unknown', text: text.slice(start, end), start, end };
}

function threadAt(text: string, start: number): Atom | null {
  const found = metricThreadAt(text, start);
  return found ? { type: 'thread', ...found, start } : null;
}

const DIELECTRIC_LETTERS: ReadonlySet<string> = new Set('XYZCNUPRSTMBxyzcnu');
const DIELECTRIC =
  /(?:([XYZ][2-9][ABCDEFPRSTUVL])|(C0G|COG|CG0|NP0|NPO|CG)|(U2J|U1G|P2G|P2H|R2H|S2H|S2L|T2H|M7G|B2G|P3K|R3L|U2K|SL|CH|CK|UJ|X7RV))(?![A-Za-z0-9])/iy;

/** EIA-198 codes; `NP0`, `NPO`, `COG` and `CG` are one. Two letters alone count only in capitals. */
function dielectricAt(text: string, start: number): Atom | null {
  if (!DIELECTRIC_LETTERS.has(text[start] ?? '')) return null;
  DIELECTRIC.lastIndex = start;
  const match = DIELECTRIC.exec(text);
  if (!match) return null;
  const written = match[0];
  if (written.length === 2 && written !== written.toUpperCase()) return null;
  const name = match[2] ? 'C0G' : written.toUpperCase();
  return { type: 'dielectric', name, start, end: start + written.length };
}

const TIMES = /\d\s?[xX]\s?(?=\d+(?:[.,]\d+)?\s?(?:[kKMRΩ]|[pnuµ]F?)(?![A-Za-z]))/y;

/** `4x10k`, `2x100n`: the count of elements before the value. */
function timesAt(text: string, start: number): Atom | null {
  TIMES.lastIndex = start;
  const match = TIMES.exec(text);
  return match ? { type: 'size', start, end: start + match[0].length } : null;
}

const ZERO_OHM = /(?:zero|null|nul)[ -]?ohms?(?![A-Za-z0-9])/iy;
const ZERO_LETTERS: ReadonlySet<string> = new Set('zZnN');

/** `zero ohm`, `Null-Ohm`: a link. */
function zeroOhmAt(text: string, start: number): Atom | null {
  if (!ZERO_LETTERS.has(text[start] ?? '')) return null;
  ZERO_OHM.lastIndex = start;
  const match = ZERO_OHM.exec(text);
  const quantity = match ? quantityAt('0 ohm', 0) : null;
  return match && quantity
    ? { type: 'quantity', quantity: { ...quantity, start, end: start + match[0].length }, start, end: start + match[0].length }
    : null;
}

const FUSE_LETTERS: ReadonlySet<string> = new Set('FTM');
const FUSE = /(?:FF|TT|F|T|M)(\d+(?:[.,]\d+)?\s?[mM]?A)(?:[HLE](?![A-Za-z]))?(?=\d+\s?V|[^A-Za-z0-9]|$)/y;

/** `T1A`, `F500mA`, `T1AL250V`: the characteristic of a fuse before its current, its breaking capacity behind (IEC 60127). */
function fuseAt(text: string, start: number): Atom | null {
  if (!FUSE_LETTERS.has(text[start] ?? '')) return null;
  FUSE.lastIndex = start;
  const match = FUSE.exec(text);
  const end = start + (match?.[0].length ?? 0);
  const stated = match?.[1] ?? '';
  const first = start + (match?.[0].indexOf(stated) ?? 0);
  const quantity = match ? quantityAt(text.slice(0, first + stated.length), first) : null;
  return quantity ? { type: 'quantity', quantity, start, end } : null;
}

const TAPER = /[ABC](?=\d{1,3}[kKM](?:Ω|[oO]hm)?(?![A-Za-z0-9]))/y;

/** `B10K`: the taper of a potentiometer before its value. */
function taperAt(text: string, start: number): Atom | null {
  TAPER.lastIndex = start;
  const quantity = TAPER.test(text) ? quantityAt(text, start + 1) : null;
  return quantity ? { type: 'quantity', quantity, start, end: quantity.end } : null;
}

/** Before the measures: `5x20 mm` names a fuse. */
function fuseSizeAt(text: string, start: number): Atom | null {
  const reading = cartridgeAt(text, start);
  return reading ? { type: 'package', reading, start, end: reading.end } : null;
}

function unifiedAt(text: string, start: number): Atom | null {
  const found = unifiedThreadAt(text, start);
  return found ? { type: 'thread', ...found, start } : null;
}

const SIZE =
  /\d+(?:[.,]\d+)?(?:\s?[xX*]\s?\d+(?:[.,]\d+)?){1,2}\s?(?:mm|cm|MM|CM)(?![A-Za-z])|\d+(?:[.,]\d+)?(?:[xX*]\d+(?:[.,]\d+)?){2}(?![\dA-Za-z])/y;

/** `6x6 mm`, `5,5x2,1mm`, `100x60x25`: outer measures, which are no values. */
function sizeAt(text: string, start: number): Atom | null {
  SIZE.lastIndex = start;
  const match = SIZE.exec(text);
  return match ? { type: 'size', start, end: start + match[0].length } : null;
}

const GRID = /(\d{1,2})\s?[xX*]\s?(\d{1,2})(?:-?pins?|-?[pP])?(?![\dA-Za-z]|[.,]\d|\s?(?:mm|x\s?\d|cm|bit))/y;

/** `1x04`, `2X5`: rows and columns of a header. */
function gridAt(text: string, start: number): Atom | null {
  GRID.lastIndex = start;
  const match = GRID.exec(text);
  if (!match) return null;
  const [rows, columns] = [Number(match[1]), Number(match[2])];
  return rows >= 1 && rows <= 8 && columns >= 1 ? { type: 'grid', rows, columns, start, end: start + match[0].length } : null;
}

const ASYMMETRIC =
  /\+\s?(\d+(?:[.,]\d+)?)\s?(%|[pnu]F)?\s?[/,]?\s?-\s?(\d+(?:[.,]\d+)?)\s?(%|[pnu]F)|-\s?(\d+(?:[.,]\d+)?)\s?(%|[pnu]F)?\s?[/,]?\s?\+\s?(\d+(?:[.,]\d+)?)\s?(%|[pnu]F)/y;

/** `+80/-20%`, `-20+80 %`. */
function asymmetricAt(text: string, start: number): Atom | null {
  ASYMMETRIC.lastIndex = start;
  const match = ASYMMETRIC.exec(text);
  if (!match) return null;
  const [high = '', low = ''] = match[1] ? [match[1], match[3]] : [match[7], match[5]];
  return {
    type: 'asymmetric',
    high: high.replace(',', '.'),
    low: low.replace(',', '.'),
    unit: match[4] ?? match[8] ?? '%',
    start,
    end: start + match[0].length,
  };
}

function packageFor(text: string, start: number): Atom | null {
  const reading = packageAt(text, start);
  return reading ? { type: 'package', reading, start, end: reading.end } : null;
}

function quantityFor(text: string, start: number): Atom | null {
  const quantity = quantityAt(text, start);
  if (!quantity || (quantity.form === 'bare' && isWordCode(text.charCodeAt(quantity.end)))) return null;
  return { type: 'quantity', quantity, start, end: quantity.end };
}

function wordFor(_text: string, start: number, folded: string): Atom | null {
  const reading = wordAt(folded, start);
  return reading ? { type: 'word', meaning: reading.meaning, start, end: reading.end } : null;
}
