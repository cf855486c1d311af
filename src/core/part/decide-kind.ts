import type { Atom } from './atoms.ts';
import type { Cell } from './cell.ts';
import type { PartHints, ReadField } from './hints.ts';
import { PARENT } from './kinds.data.ts';
import { BATTERY_SIZES } from './packages.data.ts';
import { KINDS, type Kind } from './part.ts';
import { REF_ROWS } from './refs.data.ts';
import { wordAt } from './words.ts';

/** What speaks for each kind, added up. */
export type Evidence = Map<Kind, number>;

export interface KindReading {
  readonly kind: Kind;
  readonly score: number;
  /** an unrelated kind that nearly as much speaks for */
  readonly rival: Kind | null;
}

/** How far the words of a cell are to be trusted for what the part is. */
const WEIGHTS: Readonly<Record<ReadField | 'text', number>> = {
  category: 9,
  text: 7,
  description: 7,
  value: 6,
  device: 4,
  partNumber: 4,
  technology: 3,
  package: 3,
  footprint: 0,
  context: 3,
  maker: 0,
  tolerance: 0,
  voltage: 0,
  power: 0,
  current: 0,
  dielectric: 0,
  supplierNumber: 0,
};
const LETTERS: ReadonlyMap<string, readonly (readonly [Kind, number])[]> = refTable();

function refTable(): Map<string, [Kind, number][]> {
  const table = new Map<string, [Kind, number][]>();
  for (const [letters, kind, weight] of REF_ROWS)
    for (const one of letters.split(' ')) table.set(one, [...(table.get(one) ?? []), [kind, weight]]);
  return table;
}

/** The kind that most speaks for: words, part numbers, footprints, units and reference letters, each with its weight. */
export function decideKind(cells: readonly Cell[], hints: PartHints): KindReading {
  const evidence: Evidence = new Map();
  if (hints.kind) add(evidence, hints.kind, 20);
  refEvidence(evidence, hints.refs ?? []);
  for (const cell of cells) cellEvidence(evidence, cell);
  return best(evidence);
}

function add(evidence: Evidence, kind: Kind, weight: number): void {
  evidence.set(kind, (evidence.get(kind) ?? 0) + weight);
}

function refEvidence(evidence: Evidence, refs: readonly string[]): void {
  const letters = /^[A-Za-z]+/.exec(refs[0] ?? '')?.[0]?.toUpperCase();
  if (!letters) return;
  const rows = LETTERS.get(letters);
  if (rows) for (const [kind, weight] of rows) add(evidence, kind, weight);
  else namedRef(evidence, letters);
}

/** `LEDSTATUS`, `RPULLUP`: named refs say little, by their beginning. */
function namedRef(evidence: Evidence, letters: string): void {
  const word = wordAt(letters.toLowerCase(), 0);
  if (word) for (const kind of word.meaning.kinds) add(evidence, kind, 3);
  for (const length of [4, 3, 1]) {
    if (length >= letters.length) continue;
    const rows = LETTERS.get(letters.slice(0, length));
    if (!rows) continue;
    for (const [kind, weight] of rows) add(evidence, kind, Math.min(weight, length > 2 ? 4 : 1));
    return;
  }
}

function cellEvidence(evidence: Evidence, cell: Cell): void {
  if (cell.drawn) {
    const seen = new Set<Kind>();
    for (const [kind, weight] of cell.drawn.kinds) {
      if (!seen.has(kind)) add(evidence, kind, cell.field === 'device' ? weight * 0.8 : weight);
      seen.add(kind);
    }
  }
  const weight = WEIGHTS[cell.field];
  if (weight > 0) wordEvidence(evidence, cell, weight);
  codeEvidence(evidence, cell);
  if (cell.field === 'value' || cell.field === 'description' || cell.field === 'text') {
    const units = new Set<string>();
    for (const atom of cell.atoms) {
      // a unit counts once, however often it stands there
      const unit = atom.type === 'quantity' ? `${atom.quantity.unit}` : '';
      if (unit === '' || !units.has(unit)) atomEvidence(evidence, atom);
      units.add(unit);
    }
    if (cell.field === 'value' && cell.atoms[0]?.type === 'quantity' && cell.atoms[0].quantity.unit === 'Hz')
      add(evidence, 'crystal', 3);
    if (cell.field === 'value') valueEvidence(evidence, cell);
    if (BATTERY_SIZES.test(cell.text)) add(evidence, 'battery', 1);
  }
}

/** What only a value cell tells: a colour alone is an LED's, `3V6` a zener's, 32.768 a watch crystal's. */
function valueEvidence(evidence: Evidence, cell: Cell): void {
  const [first] = cell.atoms;
  if (first?.type === 'word' && first.meaning.facts.some(([fact]) => fact === 'colour')) add(evidence, 'led', 2.6);
  if (first?.type === 'quantity' && first.quantity.unit === 'V' && first.quantity.form === 'rkm') add(evidence, 'zener', 2.6);
  if (/^\s*32[.,]?768/.test(cell.text)) add(evidence, 'crystal', 4);
  // megahertz without their unit, three decimals or more: `16.000`
  if (/^\s*\d{1,2}[.,]\d{3,6}\s*$/.test(cell.text)) add(evidence, 'crystal', 1.5);
  if (/^\s*7[89](?:05|06|08|09|10|12|15|18|24)\s*$/.test(cell.text)) add(evidence, 'regulator', 3);
}

function codeEvidence(evidence: Evidence, cell: Cell): void {
  const [first] = cell.codes;
  if (!first) return;
  const aside = cell.atoms.some((atom) => atom.type === 'word' && atom.meaning.aside && atom.start < first.start);
  const weight = first.decoded ? 9 : cell.field === 'description' && first.start > 0 ? 5 : 6;
  if (cell.field !== 'footprint' && cell.field !== 'package')
    add(evidence, first.kind, aside ? weight * 0.2 : cell.field === 'device' ? 3 : weight);
}

interface Found {
  readonly start: number;
  readonly kinds: readonly Kind[];
  readonly lead: boolean;
  readonly segment: number;
  readonly aside: boolean;
}

/**
 * The head of a description: in a catalogue's telegram style (`CAP CER …`, `CONN HEADER …`) the leading abbreviation, in plain
 * words the last noun before a comma or `for` (`boost inductor`, `relay module`). Other words only narrow.
 */
function wordEvidence(evidence: Evidence, cell: Cell, weight: number): void {
  // `TERM BLK 2POS PCB`: in a catalogue's capitals the last word is how it is mounted, and so is `board` behind a size: `jack 2.1 mm board`
  const telegram = !/[a-z]/.test(cell.text);
  const found = kindWords(cell.atoms).filter(
    (one, index) => index === 0 || !((telegram && one.kinds.every((kind) => kind === 'not-a-part')) || isMount(cell, one.start)),
  );
  const [first] = found;
  if (!first) return;
  const sameSegment = found.filter((one) => one.segment === first.segment && one.aside === first.aside);
  const head = first.lead ? first : (sameSegment[sameSegment.length - 1] ?? first);
  for (const one of found) {
    const share = one === head ? 1 : one.aside ? 0.15 : one.segment === head.segment ? 0.4 : 0.35;
    for (const kind of new Set(one.kinds)) add(evidence, kind, weight * share * (kind === 'not-a-part' ? 0.7 : 1));
  }
}

/** `board`, `pcb` behind a measure or a size or a socket's name say where a part sits. */
function isMount(cell: Cell, start: number): boolean {
  if (!/^(?:pcb|board)(?![a-z])/i.test(cell.text.slice(start))) return false;
  const before = cell.atoms.findLast((atom) => atom.end <= start);
  if (before?.type === 'word')
    return /^(?:socket|jack|receptacle|holder|buchse)$/i.test(cell.text.slice(before.start, before.end).split(' ').at(-1) ?? '');
  return before !== undefined && before.type !== 'unknown' && before.type !== 'break';
}

function kindWords(atoms: readonly Atom[]): Found[] {
  const found: Found[] = [];
  let segment = 0;
  let aside = false;
  for (const atom of atoms) {
    if (atom.type === 'break') {
      segment++;
      aside = false;
    } else if (atom.type === 'word') {
      if (atom.meaning.aside) aside = true;
      if (atom.meaning.kinds.length)
        found.push({ start: atom.start, kinds: atom.meaning.kinds, lead: atom.meaning.lead, segment, aside });
    } else if (atom.type === 'package' && atom.reading.of?.length === 1 && atom.reading.of[0] === 'led') {
      found.push({ start: atom.start, kinds: ['led'], lead: false, segment, aside });
    }
  }
  return found;
}

const UNIT_KINDS: Readonly<Record<string, readonly [Kind, number]>> = {
  F: ['capacitor', 5],
  H: ['inductor', 5],
  ohm: ['resistor', 2],
  Hz: ['crystal', 1],
  Ah: ['battery', 5],
};

function atomEvidence(evidence: Evidence, atom: Atom): void {
  if (atom.type === 'quantity') quantityEvidence(evidence, atom);
  else if (atom.type === 'dielectric') add(evidence, 'capacitor', 3);
  else if (atom.type === 'grid') add(evidence, 'header', 2);
  else if (atom.type === 'thread') add(evidence, 'mechanical', 1);
  else if (atom.type === 'package' && /^(?:DIP|SOIC|TSSOP|SSOP|QF[NP]|[LT]QFP|MSOP|PLCC|BGA)/.test(atom.reading.name))
    add(evidence, 'ic', 1.5);
  else if (atom.type === 'package' && /^(?:SO[TD]-|TO-|DO-)/.test(atom.reading.name))
    add(evidence, atom.reading.name.startsWith('T') || atom.reading.name.startsWith('SOT') ? 'transistor' : 'diode', 0.5);
}

function quantityEvidence(evidence: Evidence, atom: Extract<Atom, { type: 'quantity' }>): void {
  const { unit, form, power } = atom.quantity;
  const row = UNIT_KINDS[unit ?? ''];
  if (row) add(evidence, row[0], row[1]);
  else if (unit === null && form !== 'bare') {
    if (power >= 3) add(evidence, 'resistor', 1.5);
    else if (power <= -6) add(evidence, 'capacitor', 1.5);
  }
}

function best(evidence: Evidence): KindReading {
  const totals = KINDS.flatMap((kind) => {
    const own = evidence.get(kind) ?? 0;
    // a reference letter alone does not make a resistor that is named so a potentiometer
    return own > 0 ? [{ kind, score: own + (own > 2.5 ? inherited(evidence, kind) : 0) }] : [];
  }).sort((a, b) => b.score - a.score);
  const [first, ...others] = totals;
  if (!first) return { kind: 'other', score: 0, rival: null };
  const rival = others.find((one) => !related(one.kind, first.kind));
  return { kind: first.kind, score: first.score, rival: rival && rival.score > first.score - 1 ? rival.kind : null };
}

function inherited(evidence: Evidence, kind: Kind): number {
  const parent = PARENT[kind];
  return parent ? (evidence.get(parent) ?? 0) : 0;
}

/** One is a special case of the other, or both of the same. */
export function related(a: Kind, b: Kind): boolean {
  return a === b || PARENT[a] === b || PARENT[b] === a || (PARENT[a] !== undefined && PARENT[a] === PARENT[b]);
}
