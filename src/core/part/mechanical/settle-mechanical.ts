import { decimal, multiply, type Decimal } from '#core/quantity/decimal.ts';
import { plainDigits } from '#core/quantity/write-quantity.ts';
import type { Cell } from '../cell.ts';
import type { Doubt } from '../doubt.ts';
import type { Fact, FactKey, Kind } from '../part.ts';
import { variantOf } from '../settle-variant.ts';
import { foldWords } from '../words.ts';
import { saidOf, type Said } from './phrases.ts';
import type { StandardRow } from './standards.data.ts';
import { standardIn, standsApart } from './standards.ts';
import { tubeOf } from './tube.ts';
import { PLAIN_WASHERS } from './threads.data.ts';
import { settleWireSize } from './wire-size.ts';
import { SAID_ALREADY } from './words.data.ts';

const FASTENERS: ReadonlySet<Kind> = new Set<Kind>(['screw', 'nut', 'washer', 'standoff', 'mechanical']);
const READ: ReadonlySet<Cell['field']> = new Set<Cell['field']>(['text', 'description', 'value', 'category', 'partNumber']);

export interface Mechanical {
  /** before what single words say: a standard tells the head, whatever its name is taken for */
  readonly facts: readonly Fact[];
  readonly doubts: readonly Doubt[];
  /** the variant, with what is known here */
  variantOf(read: Fact | null): Fact | null;
}

/** A thread with the standard of a nut is a nut; one with a length and a head is a screw. */
export function mechanicalKind(kind: Kind, cells: readonly Cell[]): Kind {
  if (kind !== 'mechanical' && kind !== 'other') return kind;
  const text = textOf(cells);
  const threads = threadsOf(cells);
  if (threads.length === 0) return kind;
  const standard = standardIn(text);
  if (standard) return standard.row.kind;
  const shaped = saidOf('screw', text).some(([key]) => key === 'head' || key === 'drive');
  return shaped && threads.some(({ length }) => length !== null) ? 'screw' : kind;
}

/** Head, drive, material, gauge and what else is said of fasteners, wires and tubes, by their standards and by the words of the trade. */
export function settleMechanical(kind: Kind, cells: readonly Cell[]): Mechanical {
  if (kind === 'wire') return wire();
  if (kind === 'other') return tube(cells);
  return FASTENERS.has(kind) ? fastener(kind, cells) : NOTHING;
}

const NOTHING: Mechanical = { facts: [], doubts: [], variantOf: (read) => read };

function textOf(cells: readonly Cell[]): string {
  return cells
    .filter(({ field }) => READ.has(field))
    .map(({ text }) => foldWords(text))
    .join(' ');
}

function threadsOf(cells: readonly Cell[]): { readonly thread: string; readonly length: string | null }[] {
  return cells.flatMap(({ atoms }) => atoms.flatMap((atom) => (atom.type === 'thread' ? [atom] : [])));
}

function stated(key: FactKey, value: string, unit: string | null = null): Fact {
  return { key, value, unit, origin: 'stated' };
}

function fastener(kind: Kind, cells: readonly Cell[]): Mechanical {
  const text = textOf(cells);
  const said = saidOf(kind, text);
  const standard = standardIn(text);
  const row = standard?.row.kind === kind ? standard.row : null;
  const head = row?.head ?? headOf(said);
  const drive = row?.drive ?? first(said, 'drive');
  const material = first(said, 'material');
  const thread = threadsOf(cells)[0]?.thread ?? (kind === 'washer' ? threadOfWasher(text) : null);
  const words = [
    ...said.flatMap(([key, value]) => (key === 'word' ? [value] : [])),
    ...(row?.words?.split(' ') ?? []),
    ...(row && standard && standsApart(row, thread) ? [standard.name.toLowerCase().replace(' ', '')] : []),
    ...(kind === 'standoff' ? studOf(text) : []),
  ];
  const facts = [
    ...(head ? [stated('head', head)] : []),
    ...(drive ? [stated('drive', drive)] : []),
    ...(material ? [stated('material', material)] : []),
    ...(thread && threadsOf(cells).length === 0 ? [stated('thread', thread)] : []),
  ];
  return {
    facts,
    doubts: row ? against(row, standard?.name ?? '', said) : [],
    variantOf: (read) => variantOf(without(kind, new Set([...(read?.value.split(' ') ?? []), ...words]), standard?.written)),
  };
}

/** A cylinder head with a slot or a cross is a cheese head; `cap` is the one with a socket. */
function headOf(said: readonly Said[]): string | null {
  const head = first(said, 'head');
  const drive = first(said, 'drive');
  return head === 'cap' && drive !== null && drive !== 'hex' && drive !== 'torx' ? 'cheese' : head;
}

function first(said: readonly Said[], wanted: Said[0]): string | null {
  return said.find(([key]) => key === wanted)?.[1] ?? null;
}

/** Words that name another head than the standard has: the standard is taken, and a person looks. */
function against(row: StandardRow, name: string, said: readonly Said[]): Doubt[] {
  const told = headOf(said);
  if (row.head === undefined || told === null || told === row.head || LIKE[told] === row.head) return [];
  return [{ field: 'row', code: 'conflict', args: { taken: `${name}, ${row.head}`, other: told, place: 'text' } }];
}

/** German has one word, Linsenkopf, for two heads; a cheese head is a cylinder. */
const LIKE: Readonly<Record<string, string>> = { pan: 'button', cap: 'cheese' };

/** `M3x10+6`: a stud of 6 mm at one end, which makes it male-female. */
function studOf(text: string): string[] {
  const stud = /m\d(?:[.,]\d)?\s?[x*]\s?\d+(?:[.,]\d+)?\s?(?:mm)?\s?\+\s?(\d+(?:[.,]\d+)?)/.exec(text)?.[1];
  return stud === undefined ? [] : ['mf', `stud${stud.replace(',', '.')}mm`];
}

/** A plain washer that is named by its measures alone: `3.2 x 7 x 0.5`. */
function threadOfWasher(text: string): string | null {
  const measures = /(?<![\d.,])(\d+(?:[.,]\d+)?)\s?[x*]\s?(\d+(?:[.,]\d+)?)(?:\s?[x*]\s?(\d+(?:[.,]\d+)?))?/.exec(text);
  const [hole, outer, thick] = measures?.slice(1).map((one) => (one ? decimal(one.replace(',', '.')) : null)) ?? [];
  const found = PLAIN_WASHERS.find(
    ([, d1, d2, h]) => decimal(d1) === hole && decimal(d2) === outer && (!thick || decimal(h) === thick),
  );
  return found?.[0] ?? null;
}

/** Without what other facts say: the figures of the standard's own number, the words for the thread of an insert. */
function without(kind: Kind, words: Set<string>, standard: string | undefined): Set<string> {
  const drop = new Set([...(SAID_ALREADY[kind] ?? []), ...(standard?.split(/[^\p{L}\p{N}]+/u) ?? [])]);
  if (words.has('threaded') && !words.has('insert')) drop.delete('threaded');
  return new Set([...words].filter((word) => !drop.has(word)));
}

/** A figure without a unit on a strand is its copper in mm²: `LiY 0,25`. */
function strandSize(word: string): string {
  return /^0[.,]\d{2}$/.test(word) ? `${plainDigits(decimal(word.replace(',', '.')))}mm2` : word;
}

function wire(): Mechanical {
  return {
    ...NOTHING,
    variantOf: (read) => (read ? variantOf(settleWireSize(new Set(read.value.split(' ').map(strandSize)))) : null),
  };
}

/** Heat-shrink tube: as wide as it comes, and how far it shrinks. */
function tube(cells: readonly Cell[]): Mechanical {
  const text = textOf(cells);
  const found = tubeOf(text);
  if (!found) return NOTHING;
  const said = saidOf('other', text);
  const colour = cells
    .flatMap(({ atoms }) => atoms.flatMap((atom) => (atom.type === 'word' ? atom.meaning.facts : [])))
    .find(([key]) => key === 'colour')?.[1];
  const words = ['heat-shrink', ...found.words, ...said.flatMap(([key, value]) => (key === 'word' ? [value] : []))];
  return {
    facts: [...(found.wide ? [stated('diameter', metres(found.wide), 'm')] : []), ...(colour ? [stated('colour', colour)] : [])],
    doubts: [],
    variantOf: () => variantOf(new Set(words)),
  };
}

function metres(millimetres: Decimal): Decimal {
  return multiply(millimetres, decimal('1e-3'));
}
