import type { Fact, FactKey, Facts, Kind, Part } from '#core/part/part.ts';
import { factName } from './fact-name.ts';
import { sayFact, sayTolerance, sayWord, times } from './fact-words.ts';
import { begun, kindWord } from './kind-words.ts';

/** A part in the words of a screen: the name by which a person picks it out, and the rest. */
export interface SaidPart {
  readonly name: string;
  readonly rest: string;
}

type Piece = FactKey | 'tolerance' | 'size' | 'count';

/**
 * What stands in the name of a kind, in this order, when the first of it is known. A kind that is not here is known by its part number,
 * else by what is written.
 */
const NAMES: Readonly<Partial<Record<Kind, readonly Piece[]>>> = {
  resistor: ['value', 'tolerance'],
  'resistor-network': ['value', 'tolerance'],
  potentiometer: ['value', 'tolerance'],
  thermistor: ['value', 'tolerance'],
  varistor: ['voltage'],
  capacitor: ['value', 'safety', 'voltage', 'dielectric'],
  inductor: ['value', 'current', 'tolerance'],
  ferrite: ['value', 'current'],
  zener: ['value'],
  led: ['colour'],
  crystal: ['value', 'tolerance'],
  oscillator: ['value', 'tolerance'],
  header: ['count', 'pitch'],
  fuse: ['value', 'safety', 'voltage'],
  screw: ['size', 'head'],
  nut: ['size'],
  washer: ['size'],
  standoff: ['size'],
};
/** Kinds whose value is their name even where a part number is known. */
const BY_VALUE: ReadonlySet<Kind> = new Set<Kind>([
  'resistor',
  'resistor-network',
  'capacitor',
  'thermistor',
  'fuse',
  'screw',
  'nut',
  'washer',
  'standoff',
]);

/** Kinds of which a number says too little: solder of one alloy comes in several thicknesses. */
const BY_TEXT: ReadonlySet<Kind> = new Set<Kind>(['mechanical', 'other', 'wire', 'not-a-part']);
/** Words that stand before their kind: `Lock nut`, `Box header`. */
const BEFORE: Readonly<Partial<Record<Kind, string>>> = {
  header: 'box socket stacking xh ph zh sh',
  nut: 'lock square flange wing thin',
  washer: 'spring toothed large insulating',
};

/** What follows the kind, in this order. */
const REST: readonly Piece[] = [
  'value',
  'size',
  'count',
  'pitch',
  'colour',
  'polarity',
  'voltage',
  'power',
  'current',
  'technology',
  'dielectric',
  'polarised',
  'safety',
  'tolerance',
  'temperature-coefficient',
  'load-capacitance',
  'diameter',
  'head',
  'drive',
  'material',
  'temperature-low',
  'temperature-high',
];

/**
 * A bag or a line in the words of a screen: `4.7 kΩ ±1 %` and `Resistor 0805, 125 mW`; `M3 × 8 pan head` and `Screw`; a part known by
 * its number `LM35DZ` and `Sensor TO-92`; else what is written and the kind.
 */
export function sayPart(part: Part): SaidPart {
  const used = new Set<Piece>();
  const number = part.facts.partNumber?.value;
  const byValue = number === undefined || BY_VALUE.has(part.kind) ? nameOf(part, used) : null;
  const asWritten = byValue === null && (number === undefined || BY_TEXT.has(part.kind));
  const name = asWritten ? written(part.text) : (byValue ?? number ?? '');
  const pieces = REST.flatMap((piece) => (used.has(piece) ? [] : (pieceOf(part, piece) ?? [])));
  const words = [...pieces, ...variantOf(part, used), ...(number !== undefined && name !== number ? [number] : [])];
  // what is written has most of it already
  const rest = asWritten ? words.filter((word) => !contains(part.text, word.replace(/(?<=\d pin)s$/, ''))) : words;
  const doubted = (part.facts.doubted?.value.split(' ') ?? []).map((field) => `${factName(field)} in doubt`);
  return { name, rest: [kindAndPackage(part, asWritten ? name : ''), ...rest, ...doubted].join(', ') };
}

function nameOf(part: Part, used: Set<Piece>): string | null {
  const pieces = NAMES[part.kind];
  const [first] = pieces ?? [];
  if (!pieces || first === undefined || pieceOf(part, first) === null) return null;
  const said = pieces.flatMap((piece) => {
    const text = pieceOf(part, piece);
    if (text === null) return [];
    used.add(piece);
    return [text];
  });
  if (part.kind === 'led') return `LED ${said.join(' ')}`;
  if (part.kind === 'fuse' && used.has('safety')) return [said[1], said[0], ...said.slice(2)].join(' ');
  return said.join(part.kind === 'header' ? ', ' : ' ');
}

function kindAndPackage({ kind, facts }: Part, name: string): string {
  const pack = facts.package ? times(facts.package.value) : '';
  const size = /^\d+mm$/.test(pack) ? sayWord(pack) : pack;
  const before = variantWords(facts).filter((word) => standsBefore(kind, word));
  return `${begun([...before.map(sayWord), kindWord(kind)].join(' '))}${size === '' || contains(name, size) ? '' : ` ${size}`}`;
}

/** One piece as it is said, or null where the part does not state it. */
function pieceOf(part: Part, piece: Piece): string | null {
  if (piece === 'tolerance') return tolerance(part);
  if (piece === 'size') return sizeOf(part);
  if (piece === 'count') return countOf(part);
  const fact = part.facts[piece];
  if (!fact) return piece === 'technology' && isCeramic(part) ? 'ceramic' : null;
  return `${fact.origin === 'assumed' ? 'assumed ' : ''}${SAID[piece]?.(fact, part) ?? sayFact(fact)}`;
}

/** The codes of EIA-198 are those of ceramics. */
function isCeramic({ kind, facts }: Part): boolean {
  return kind === 'capacitor' && facts.dielectric !== undefined;
}

/** Pieces that are said with a word beside them. */
const SAID: { readonly [K in FactKey]?: (fact: Fact, part: Part) => string } = {
  voltage: (fact, part) => `${sayFact(fact)}${VOLTAGES[part.facts['voltage-kind']?.value ?? ''] ?? ''}`,
  'load-capacitance': (fact) => `${sayFact(fact)} load`,
  polarised: (fact) => (fact.value === 'yes' ? 'polarised' : 'not polarised'),
  head: (fact) => `${sayFact(fact)}${fact.value === 'countersunk' ? '' : ' head'}`,
  pitch: (fact, part) => `${part.kind === 'capacitor' ? 'pitch ' : ''}${sayFact(fact)}`,
  diameter: (fact) => `${sayFact(fact)} across`,
  'temperature-low': (fact) => `from ${sayFact(fact)}`,
  'temperature-high': (fact) => `up to ${sayFact(fact)}`,
};
const VOLTAGES: Readonly<Record<string, string>> = { ac: ' AC', dc: ' DC', mains: ' AC mains', 'ac-mains': ' AC mains' };

function tolerance({ facts, kind }: Part): string | null {
  const [low, high] = [facts['tolerance-low'], facts['tolerance-high']];
  return low && high ? sayTolerance(low, high, kind) : null;
}

/** `M3 × 8`, `4-40 × 6.35 mm`, `150 mm`. */
function sizeOf({ facts }: Part): string | null {
  const thread = facts.thread?.value.replace('x', ' × ');
  const length = facts.length ? sayFact(facts.length) : null;
  if (thread === undefined) return length;
  if (length === null) return thread;
  return `${thread} × ${thread.startsWith('M') ? length.split('\u202f')[0] : length}`;
}

/** `2 × 5` where rows and columns are stated, else `8 pins`; not where the package says it. */
function countOf({ facts, kind }: Part): string | null {
  const pins = facts.pins ? sayFact(facts.pins) : null;
  if (pins === null || (facts.package?.value.endsWith(`-${pins}`) ?? false)) return null;
  const grid = kind === 'header' ? GRID.exec(facts.variant?.value ?? '')?.[0] : undefined;
  return grid === undefined ? `${pins} ${pins === '1' ? 'pin' : 'pins'}` : times(grid);
}

const GRID = /(?<![^ ])\d+x\d+(?![^ ])/;

function variantOf({ facts, kind }: Part, used: ReadonlySet<Piece>): string[] {
  const grid = kind === 'header' && (used.has('count') || facts.pins) ? GRID.exec(facts.variant?.value ?? '')?.[0] : undefined;
  return variantWords(facts)
    .filter((word) => word !== grid && !standsBefore(kind, word))
    .map(sayWord);
}

function variantWords(facts: Facts): string[] {
  return facts.variant?.value.split(' ') ?? [];
}

function standsBefore(kind: Kind, word: string): boolean {
  return BEFORE[kind]?.split(' ').includes(word) ?? false;
}

/** What is written, without remarks in brackets behind it and names out of drawing libraries (`Fuse:Fuse_1206`). */
function written(text: string): string {
  const words = text.split(/\s+/).filter((word) => !LIBRARY_NAME.test(word));
  const short = words
    .join(' ')
    .replaceAll(/\s*\([^)]*\)$/g, '')
    .trim();
  return begun(short || text.trim());
}

const LIBRARY_NAME = /^[A-Za-z]\w*:[A-Za-z]\S*$/;

function contains(name: string, word: string): boolean {
  return plain(name).includes(plain(word));
}

function plain(text: string): string {
  return text
    .toLowerCase()
    .replaceAll('×', 'x')
    .replaceAll(/(?<=\d),(?=\d)/g, '.')
    .replaceAll(/[\s_-]/g, '');
}
