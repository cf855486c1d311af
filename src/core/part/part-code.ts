import type { Decimal } from '#core/quantity/decimal.ts';
import { writeRkm } from '#core/quantity/rkm.ts';
import { writeToleranceLetter } from '#core/quantity/tolerance.ts';
import { plainDigits } from '#core/quantity/write-quantity.ts';
import { KIND_ROWS } from './kinds.data.ts';
import { numberFact, wordFact, type FactKey, type Kind, type NumericFact, type Part, type WordFact } from './part.ts';

const TECHNOLOGIES: Readonly<Record<string, string>> = {
  electrolytic: 'EL',
  tantalum: 'TA',
  film: 'FI',
  polymer: 'PO',
  supercap: 'SC',
  mica: 'MI',
  'thin-film': 'THIN',
  'metal-film': 'MF',
  'metal-oxide': 'MO',
  carbon: 'CF',
  wirewound: 'WW',
  ceramic: 'CER',
  'thick-film': 'THICK',
};
/** Technologies of which an unpolarised one is something special. */
const POLAR: ReadonlySet<string> = new Set(['electrolytic', 'tantalum', 'polymer']);
/** Kinds that are told apart by their facts alone: a maker's number adds nothing to them once value and package are known. */
const BY_FACTS: ReadonlySet<Kind> = new Set(['resistor', 'resistor-network', 'capacitor']);

/** A piece of the code: what it is made of, and how. The order is that of the code; a new fact that tells parts apart is a new row. */
const PIECES: readonly ((part: Part) => string | null)[] = [
  (part) => wordFact(part, 'package')?.toUpperCase().replaceAll(' ', '') ?? null,
  (part) => rkm(part, 'value', part.facts.value?.unit ?? null),
  toleranceCode,
  (part) => wordFact(part, 'dielectric'),
  (part) => suffixed(rkm(part, 'voltage', 'V'), part, 'voltage-kind', { ac: 'AC', mains: 'AC' }),
  (part) => rkm(part, 'power', 'W'),
  (part) => rkm(part, 'current', 'A'),
  technologyCode,
  (part) => (wordFact(part, 'polarised') === 'no' && POLAR.has(wordFact(part, 'technology') ?? '') ? 'BP' : null),
  (part) => word(part, 'polarity'),
  (part) => word(part, 'colour'),
  (part) => (gridOf(part) || packageSaysPins(part) ? null : counted(part, 'pins', 0, 'P')),
  gridOf,
  (part) => counted(part, 'pitch', 3, 'MM'),
  (part) => word(part, 'thread'),
  (part) => counted(part, 'length', 3, 'MM'),
  (part) => counted(part, 'diameter', 3, 'DIA'),
  (part) => word(part, 'head'),
  (part) => word(part, 'drive'),
  (part) => word(part, 'material'),
  (part) => word(part, 'safety'),
  (part) => rkm(part, 'load-capacitance', 'F'),
  (part) => counted(part, 'temperature-coefficient', 6, 'PPM'),
  (part) => counted(part, 'temperature-low', 0, 'C'),
  (part) => counted(part, 'temperature-high', 0, 'C'),
  (part) => words(part, gridOf(part)),
  partNumberCode,
];

/**
 * The lab's canonical short name of a part: `R-0805-4K7-F`, `C-0805-100N-X7R-50V`, `Q-TO-92-BC547B`. A pure function of the facts
 * that tell parts apart, so that a label printed once never needs another; facts that were only assumed are no part of it.
 */
export function partCode(part: Part): string {
  const pieces = piecesOf(part);
  const [letters] = [KIND_ROWS[part.kind].letters];
  return [letters, ...(pieces.length ? pieces : [namedBy(part.text)])].filter(Boolean).join('-');
}

/** Is nothing known of the part but its text? Then the code is made of the text. */
export function toldByText(part: Part): boolean {
  return piecesOf(part).length === 0;
}

function piecesOf(part: Part): string[] {
  return PIECES.flatMap((piece) => piece(part) || []);
}

function known(part: Part, key: FactKey): boolean {
  const fact = part.facts[key];
  return fact !== undefined && fact.origin !== 'assumed';
}

function rkm(part: Part, key: NumericFact, unit: string | null): string | null {
  const value = known(part, key) ? numberFact(part, key) : null;
  return value === null ? null : writeRkm(value, unit);
}

function toleranceCode(part: Part): string | null {
  const low = numberFact(part, 'tolerance-low');
  const high = numberFact(part, 'tolerance-high');
  if (low === null || high === null || !known(part, 'tolerance-low')) return null;
  const unit = part.facts['tolerance-low']?.unit === 'F' ? 'F' : 'fraction';
  const letter = writeToleranceLetter({ low, high, unit });
  // ±0.5 pF and ±0.5 % have one letter; the values to which each applies do not overlap
  if (letter !== null) return letter;
  const side = (size: Decimal): string => (unit === 'F' ? writeRkm(size, 'F') : `${plainDigits(size, 2)}PC`);
  return low === high ? side(low) : `-${side(low)}+${side(high)}`;
}

/** Ceramic goes without saying beside a dielectric, thick film on a chip resistor. */
function technologyCode(part: Part): string | null {
  const technology = known(part, 'technology') ? wordFact(part, 'technology') : null;
  if (technology === null || technology === 'thick-film' || (technology === 'ceramic' && known(part, 'dielectric'))) return null;
  return TECHNOLOGIES[technology] ?? technology.toUpperCase();
}

function word(part: Part, key: WordFact): string | null {
  return known(part, key) ? (wordFact(part, key)?.toUpperCase().replaceAll(' ', '') ?? null) : null;
}

/** `2x3` says how many pins, and how. */
function gridOf(part: Part): string | null {
  const grid =
    part.kind === 'header' && known(part, 'pins')
      ? /(?:^| )(\d+x\d+)(?= |$)/.exec(wordFact(part, 'variant') ?? '')?.[1]
      : undefined;
  return grid?.toUpperCase() ?? null;
}

/** `DIP-8`: the count need not be said twice. */
function packageSaysPins(part: Part): boolean {
  const pins = numberFact(part, 'pins');
  return pins !== null && (wordFact(part, 'package') ?? '').endsWith(`-${plainDigits(pins)}`);
}

/** The words of the variant, but for the one that the code has already. */
function words(part: Part, without: string | null): string | null {
  const left = (wordFact(part, 'variant') ?? '')
    .toUpperCase()
    .split(' ')
    .filter((one) => one !== without);
  return left.join('-') || null;
}

function suffixed(code: string | null, part: Part, key: WordFact, suffixes: Readonly<Record<string, string>>): string | null {
  return code === null ? null : `${code}${suffixes[wordFact(part, key) ?? ''] ?? ''}`;
}

function counted(part: Part, key: NumericFact, by: number, unit: string): string | null {
  const value = known(part, key) ? numberFact(part, key) : null;
  return value === null ? null : `${plainDigits(value, by)}${unit}`;
}

function partNumberCode(part: Part): string | null {
  if (BY_FACTS.has(part.kind) && known(part, 'value') && known(part, 'package')) return null;
  const number = known(part, 'partNumber') ? wordFact(part, 'partNumber') : null;
  return number === null ? null : number.toUpperCase().replaceAll(/\s+/g, '');
}

/** A part of which nothing is known but its text is named by it; a long one by its beginning and a check mark of the whole. */
function namedBy(text: string): string {
  const name = text
    .normalize('NFC')
    .toUpperCase()
    .replaceAll(/[^\p{L}\p{N}]+/gu, '-')
    .replaceAll(/^-|-$/g, '');
  return name.length <= LONGEST_NAME ? name : `${name.slice(0, LONGEST_NAME - 7)}-${checkMark(name)}`;
}

const LONGEST_NAME = 40;

/** Six characters that differ where texts differ (FNV-1a, 32 bits, base 36). */
function checkMark(text: string): string {
  let hash = 0x811c9dc5;
  for (let i = 0; i < text.length; i++) hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193) >>> 0;
  return hash.toString(36).toUpperCase().padStart(6, '0').slice(-6);
}
