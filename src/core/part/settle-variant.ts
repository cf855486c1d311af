import { decimal } from '#core/quantity/decimal.ts';
import { plainDigits, writeQuantity } from '#core/quantity/write-quantity.ts';
import type { Atom } from './atoms.ts';
import type { Cell } from './cell.ts';
import { KIND_ROWS } from './kinds.data.ts';
import type { Fact, FactKey, Kind } from './part.ts';
import { FILLERS, VARIANT_ROWS } from './variant-words.data.ts';
import { foldWords } from './words.ts';

type Known = ReadonlyMap<FactKey, Fact>;

/** Facts that name a part of the kind, so that only the words of the table add to them; else by value or part number. */
const NAMED_BY: Readonly<Partial<Record<Kind, readonly FactKey[]>>> = {
  led: ['colour', 'partNumber', 'package'],
  header: ['pins', 'partNumber'],
  jumper: ['pins', 'pitch', 'partNumber'],
  testpoint: ['colour', 'partNumber'],
  screw: ['thread', 'partNumber'],
  nut: ['thread', 'partNumber'],
  washer: ['thread', 'partNumber'],
  standoff: ['thread', 'partNumber'],
  varistor: ['voltage', 'partNumber'],
  tvs: ['voltage', 'partNumber'],
  relay: ['voltage', 'partNumber'],
  transistor: ['polarity', 'partNumber'],
  mosfet: ['polarity', 'partNumber'],
  regulator: ['partNumber'],
  speaker: ['partNumber'],
};
/** Kinds of many sorts, where a word of the trade for one of them tells it: `magnet`, `motor`, `OLED`; elsewhere it says the kind alone. */
const BROAD: ReadonlySet<Kind> = new Set<Kind>([
  'ic',
  'sensor',
  'module',
  'display',
  'connector',
  'switch',
  'wire',
  'speaker',
  'mechanical',
  'other',
]);
/** Kinds of which a number says too little: solder of one alloy comes in several thicknesses. */
const NEVER_NAMED: ReadonlySet<Kind> = new Set<Kind>(['mechanical', 'other', 'wire']);
/** Where words are read whole; names of footprints and symbols only for the words of the table. */
const WHOLE: ReadonlySet<Cell['field']> = new Set<Cell['field']>(['text', 'description', 'value', 'category']);
const DRAWN: ReadonlySet<Cell['field']> = new Set<Cell['field']>(['footprint', 'package', 'device']);

/**
 * What the text says that tells parts apart and no other fact holds, in one spelling: words without filler, lower case, sorted, those
 * with figures last. `"Tact switch 6x6"`, `"tactile switch 6 x 6 mm"` → `tactile 6x6mm`; `"header 2x3"` → `2x3`.
 */
export function settleVariant(kind: Kind, cells: readonly Cell[], known: readonly Fact[]): Fact | null {
  if (kind === 'not-a-part') return null;
  const facts = new Map(known.map((fact) => [fact.key, fact]));
  const described = cells.some(({ field, text }) => (field === 'text' || field === 'description') && text.trim() !== '');
  const words = new Set<string>();
  for (const cell of cells) {
    if (!WHOLE.has(cell.field) && !DRAWN.has(cell.field)) continue;
    const tableOnly = DRAWN.has(cell.field) || cell.field === 'category' || (cell.field === 'value' && described);
    for (const { word } of wordPlaces(kind, cell, facts, tableOnly)) if (word) words.add(word);
  }
  if (words.has('tactile')) words.delete('push'); // goes without saying
  if (kind === 'led') for (const word of facts.get('colour')?.value.split(/[ /]/) ?? []) words.delete(word);
  return variantOf(words);
}

/** Words in the one order in which a variant has them; null where there are none. */
export function variantOf(words: Iterable<string>): Fact | null {
  const value = [...words].sort((a, b) => Number(/\d/.test(a)) - Number(/\d/.test(b)) || (a < b ? -1 : 1)).join(' ');
  return value === '' ? null : { key: 'variant', value, unit: null, origin: 'stated' };
}

/** A word of the variant, and the place in the text that says it; an empty word goes without saying. */
export interface WordPlace {
  readonly word: string;
  readonly start: number;
  readonly end: number;
}

/** Where the text of a cell says what the variant of its part holds. */
export function variantPlaces(kind: Kind, cell: Cell, known: readonly Fact[]): WordPlace[] {
  return kind === 'not-a-part' ? [] : wordPlaces(kind, cell, new Map(known.map((fact) => [fact.key, fact])), false);
}

function wordPlaces(kind: Kind, cell: Cell, facts: Known, tableOnly: boolean): WordPlace[] {
  const whole = NEVER_NAMED.has(kind) || !(NAMED_BY[kind] ?? ['value', 'partNumber']).some((key) => facts.has(key));
  const places: WordPlace[] = [];
  const left = tableWords(kind, cell, places);
  if (tableOnly) return places;
  for (const atom of cell.atoms)
    for (const word of atomWords(kind, atom, left, facts, whole)) places.push({ word, start: atom.start, end: atom.end });
  if (whole)
    for (const { text, start, end } of cell.codes) if (!held(facts, text)) places.push({ word: text.toLowerCase(), start, end });
  return places;
}

/** By phrase: the word that it means for each kind. */
const PHRASES = new Map<string, Map<string, string>>();
for (const [, word, phrases, kinds] of VARIANT_ROWS)
  for (const phrase of phrases.split(',').map((one) => foldWords(one.trim()))) {
    const meanings = PHRASES.get(phrase) ?? new Map<string, string>();
    for (const kind of kinds.split(' ')) meanings.set(kind, word);
    PHRASES.set(phrase, meanings);
  }
const patterns = new Map<Kind, RegExp | null>();

/** The phrases of a kind as one pattern, the longest first. */
function patternOf(kind: Kind): RegExp | null {
  const made = patterns.get(kind);
  if (made !== undefined) return made;
  const phrases = [...PHRASES].filter(([, meanings]) => meanings.has(kind)).map(([phrase]) => phrase);
  const longest = phrases
    .sort((a, b) => b.length - a.length)
    .map((phrase) => phrase.replaceAll(/[.*+?^$(){}|[\]\\]/g, String.raw`\$&`));
  const pattern = longest.length
    ? new RegExp(String.raw`(?<![\p{L}\p{N}])(?:${longest.join('|')})(?:s|es)?(?![\p{L}\p{N}])`, 'gu')
    : null;
  patterns.set(kind, pattern);
  return pattern;
}

/** Measures that are one word in several spellings; `of` limits them to kinds where the letters mean that. */
const MEASURES: readonly (readonly [pattern: RegExp, word: (figures: string) => string, of?: readonly Kind[]])[] = [
  [/(?<![\p{L}\p{N}])(?:awg ?(\d\/0|\d{1,2})|(\d\/0|\d{1,2}) ?awg)(?![\p{L}\p{N}])/gu, (figures) => `awg${figures}`],
  [
    /(?<![\d.,])(\d+(?:[.,]\d+)?) ?(?:mm²|mm2|mm\^2|sqmm|qmm)(?![\p{L}\p{N}])/gu,
    (figures) => `${plainDigits(decimal(figures))}mm2`,
  ],
  [
    /(?<![\d.,/])(\d+(?:[.,]\d+)?) ?(?:"|inch(?:es)?|zoll|in)(?![\p{L}\p{N}])/gu,
    (figures) => `${figures}in`,
    ['display', 'module', 'mechanical', 'wire', 'other'],
  ],
  [/(?<![\d.,])(\d{3,4}) ?nm(?![\p{L}\p{N}])/gu, (figures) => `${figures}nm`, ['led', 'sensor', 'diode']],
  [/(?<![\d.,])([2-9]\d00) ?k(?![\p{L}\p{N}])/gu, (figures) => `${figures}k`, ['led']],
  [
    /(?<![\p{L}\p{N}])(\d ?x ?(?:aaa|aa|c|d|18650|14500|cr2032|cr123))(?![\p{L}\p{N}])/gu,
    (figures) => figures.replaceAll(' ', ''),
    ['battery'],
  ],
  // the body of a coil, which is its package
  [
    /(?<![\d.,])(\d+(?:[.,]\d+)?(?: ?[x*] ?\d+(?:[.,]\d+)?){1,2}) ?(?:mm)?(?![\p{L}\p{N}])/gu,
    (figures) => `${figures.replaceAll(/\s/g, '').replaceAll(',', '.').replaceAll('*', 'x')}mm`,
    ['inductor'],
  ],
  [/(?<![\p{L}\p{N}])pg ?(\d{1,2})(?![\p{L}\p{N}])/gu, (figures) => `pg${figures}`],
  [/(?<![\p{L}\p{N}])b(?:25\/(?:50|85|100))? ?[=:]? ?(\d{4})k?(?![\p{L}\p{N}])/gu, (figures) => `b${figures}`, ['thermistor']],
  [/(?<![\p{L}\p{N}])a\d+(?:[.,]\d+)?[km]|(?<=\d[km])a(?![\p{L}\p{N}])/gu, () => 'taper-a', ['potentiometer']],
  [/(?<![\p{L}\p{N}])b\d+(?:[.,]\d+)?[km]|(?<=\d[km])b(?![\p{L}\p{N}])/gu, () => 'taper-b', ['potentiometer']],
  [/(?<![\p{L}\p{N}])c\d+(?:[.,]\d+)?[km]|(?<=\d[km])c(?![\p{L}\p{N}])/gu, () => 'taper-c', ['potentiometer']],
  [/(?<![\p{L}\p{N}])(?:ff|tt|f|m|t) ?\d+(?:[.,]\d+)? ?m?a ?([hle])(?![a-z])/gu, (letter) => `breaking-${letter}`, ['fuse']],
];

/** Adds the words of the table; answers with the text in which they are blanked. */
function tableWords(kind: Kind, cell: Cell, places: WordPlace[]): string {
  let left = foldWords(cell.text);
  const take = (pattern: RegExp, wordOf: (match: string, figures: string) => string | undefined): void => {
    left = left.replace(pattern, (match: string, ...groups: unknown[]) => {
      const figures = groups.find((group): group is string => typeof group === 'string' && group !== '' && group !== left) ?? '';
      const word = wordOf(match, figures.replace(',', '.'));
      const start = Number(groups.find((group) => typeof group === 'number'));
      if (word !== undefined) places.push({ word, start, end: start + match.length });
      return word === undefined ? match : ' '.repeat(match.length);
    });
  };
  for (const [pattern, word, of] of MEASURES) if (!of || of.includes(kind)) take(pattern, (_match, figures) => word(figures));
  const phrases = patternOf(kind);
  if (phrases) take(phrases, (match) => meaningOf(kind, match));
  return left;
}

function meaningOf(kind: Kind, match: string): string | undefined {
  for (const phrase of [match, match.replace(/s$/, ''), match.replace(/es$/, '')]) {
    const word = PHRASES.get(phrase)?.get(kind);
    if (word !== undefined) return word;
  }
  return undefined;
}

/** Rows and columns tell headers apart whatever else is known; everything else counts only where nothing names the part. */
function atomWords(kind: Kind, atom: Atom, left: string, facts: Known, whole: boolean): readonly string[] {
  if (atom.type === 'grid') return gridWords(kind, atom, whole);
  if (!whole || left.slice(atom.start, atom.end).trim() === '') return [];
  if (atom.type === 'unknown')
    return facts.get('partNumber')?.value.toLowerCase().includes(atom.text.toLowerCase())
      ? []
      : plainWords(left.slice(atom.start, atom.end));
  if (atom.type === 'size') return [sizeWord(left.slice(atom.start, atom.end))];
  if (atom.type === 'thread') return facts.has('thread') ? [] : [atom.thread.toLowerCase()];
  if (atom.type === 'package') return held(facts, atom.reading.name) ? [] : [atom.reading.name.toLowerCase()];
  if (atom.type === 'quantity') return quantityWords(kind, atom, left, facts);
  if (atom.type !== 'word' || atom.meaning.aside) return [];
  const own = atom.meaning.facts.find(([key]) => KIND_ROWS[kind].facts.some((one) => one === key));
  if (own) return [];
  const [first] = atom.meaning.facts;
  if (first && atom.meaning.kinds.length === 0) return [first[1]];
  return BROAD.has(kind) || !atom.meaning.kinds.includes(kind) ? plainWords(left.slice(atom.start, atom.end)) : [];
}

const held = (facts: Known, word: string): boolean =>
  [...facts.values()].some(({ value }) => value === word || (/^\d+$/.test(word) && value.endsWith(`-${word}`)));

function gridWords(kind: Kind, { rows, columns }: Extract<Atom, { type: 'grid' }>, whole: boolean): string[] {
  const [few, many] = [Math.min(rows, columns), Math.max(rows, columns)];
  if (kind === 'header') return [`${few}x${many}`];
  if (kind === 'connector' || kind === 'jumper') return few > 1 ? [`${few}x${many}`] : [];
  if (!whole) return [];
  return [kind === 'switch' || kind === 'mechanical' ? `${rows}x${columns}mm` : `${rows}x${columns}`];
}

function sizeWord(text: string): string {
  const word = text.replaceAll(/[\s]/g, '').replaceAll(',', '.').replaceAll('*', 'x');
  return /[a-z]$/.test(word) ? word : `${word}mm`;
}

const COUNT = /^\s?(?:pcs|pieces|pc|stk|stuck|st|ea|x)(?![\p{L}\p{N}])/u;

function quantityWords(kind: Kind, { quantity }: Extract<Atom, { type: 'quantity' }>, left: string, facts: Known): string[] {
  const { value, unit, start, end } = quantity;
  const written = left.slice(start, end).replaceAll(/\s/g, '');
  if (unit === null) return COUNT.test(left.slice(end)) || KIND_ROWS[kind].value || held(facts, written) ? [] : [written];
  if (unit === 'other') return [written];
  if (unit === 'inch' || unit === KIND_ROWS[kind].value || held(facts, value)) return [];
  if (unit === 'pins') return [`${plainDigits(value)}p`];
  return [unit === 'm' ? `${plainDigits(value, 3)}mm` : writeQuantity(value, unit).replaceAll(/\s/g, '').toLowerCase()];
}

const NO_WORDS: ReadonlySet<string> = new Set(FILLERS.split(' '));

function plainWords(folded: string): string[] {
  return folded
    .split(/[^\p{L}\p{N}.]+/u)
    .map((word) => word.replaceAll(/^\.|\.$/g, ''))
    .map((word) => (word.length > 4 && /[^s]s$/.test(word) ? word.slice(0, -1) : word))
    .filter((word) => (word.length > 1 || /\d/.test(word)) && !NO_WORDS.has(word));
}
