import { decimal, type Decimal } from '#core/quantity/decimal.ts';
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

/** A piece of the code: its name in patterns, and what it is made of. The order is that of the code; a new fact that tells parts apart is a new row. */
const PIECES = [
  ['package', (part) => wordFact(part, 'package')?.toUpperCase().replaceAll(' ', '') ?? null],
  ['value', (part) => rkm(part, 'value', part.facts.value?.unit ?? null)],
  ['tolerance', toleranceCode],
  ['dielectric', (part) => wordFact(part, 'dielectric')],
  ['voltage', voltageCode],
  ['power', (part) => rkm(part, 'power', 'W')],
  ['current', currentCode],
  ['technology', technologyCode],
  ['polarised', (part) => (wordFact(part, 'polarised') === 'no' && POLAR.has(wordFact(part, 'technology') ?? '') ? 'BP' : null)],
  ['polarity', (part) => word(part, 'polarity')],
  ['colour', (part) => word(part, 'colour')],
  ['pins', (part) => (gridSaysPins(part) || packageSaysPins(part) ? null : counted(part, 'pins', 0, 'P'))],
  ['grid', gridOf],
  ['pitch', (part) => counted(part, 'pitch', 3, 'MM')],
  ['thread', (part) => word(part, 'thread')],
  ['length', lengthCode],
  ['diameter', (part) => counted(part, 'diameter', 3, 'DIA')],
  ['head', (part) => word(part, 'head')],
  ['drive', driveCode],
  ['material', (part) => word(part, 'material')],
  ['safety', (part) => word(part, 'safety')],
  ['load', (part) => rkm(part, 'load-capacitance', 'F')],
  ['drift', (part) => counted(part, 'temperature-coefficient', 6, 'PPM')],
  ['cold', (part) => counted(part, 'temperature-low', 0, 'C')],
  ['hot', (part) => counted(part, 'temperature-high', 0, 'C')],
  ['words', (part) => words(part, gridOf(part))],
  ['number', partNumberCode],
] as const satisfies readonly (readonly [name: string, piece: (part: Part) => string | null])[];

export type PieceName = 'kind' | (typeof PIECES)[number][0];
/** The names of the pieces that a pattern may hold, in the order of today's code. */
export const CODE_PIECES: readonly PieceName[] = ['kind', ...PIECES.map(([name]) => name)];

/**
 * The lab's canonical short name of a part: `R-0805-4K7-F`, `C-0805-100N-X7R-50V`, `Q-TO-92-BC547B`. A pure function of the facts
 * that tell parts apart, so that a label printed once never needs another; facts that were only assumed are no part of it.
 */
export function partCode(part: Part): string {
  const pieces = piecesByName(part);
  return pieces.size > 0 ? [...pieces.values()].join('-') : `${KIND_ROWS[part.kind].letters}-${namedBy(part.text)}`;
}

/** Is nothing known of the part but its text? Then the code is made of the text. */
export function toldByText(part: Part): boolean {
  return piecesByName(part).size === 0;
}

/** The pieces of a part's code by name, in the order of the code, the letters of the kind first; none where nothing but its text is known. */
export function piecesByName(part: Part): ReadonlyMap<PieceName, string> {
  const pieces = PIECES.flatMap(([name, piece]): [PieceName, string][] => {
    const text = piece(part);
    return text ? [[name, text]] : [];
  });
  return new Map(pieces.length > 0 ? [['kind', KIND_ROWS[part.kind].letters], ...pieces] : []);
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

function gridSaysPins(part: Part): boolean {
  const [rows, ways] = gridOf(part)?.split('X') ?? [];
  return numberFact(part, 'pins') === decimal(Number(rows) * Number(ways) || 0);
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

/** Beside a value in volts the rated voltage says what it is, and beside one in amperes the current. */
function voltageCode(part: Part): string | null {
  const code = suffixed(rkm(part, 'voltage', 'V'), part, 'voltage-kind', { ac: 'AC', mains: 'MAINS' });
  return code !== null && KIND_ROWS[part.kind].value === 'V' ? `${code}MAX` : code;
}

function currentCode(part: Part): string | null {
  const code = rkm(part, 'current', 'A');
  return code !== null && KIND_ROWS[part.kind].value === 'A' ? `${code}MAX` : code;
}

/** Of what has a pitch too, the length is marked. */
function lengthCode(part: Part): string | null {
  const code = counted(part, 'length', 3, 'MM');
  return code !== null && KIND_ROWS[part.kind].facts.includes('pitch') ? `L${code}` : code;
}

/** A screw of which only the drive is known: `HEX` alone would be its head. */
function driveCode(part: Part): string | null {
  const code = word(part, 'drive');
  return code === 'HEX' && !known(part, 'head') ? 'DRIVE-HEX' : code;
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
