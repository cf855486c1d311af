import {
  KINDS,
  NUMERIC_FACTS,
  WORD_FACTS,
  type Fact,
  type FactKey,
  type Facts,
  type Origin,
  type Part,
} from '#core/part/part.ts';
import { parseDecimal } from '#core/quantity/decimal.ts';
import { done, refuse, type Outcome, type Refusal } from '#core/stock/refusal.ts';
import type { Bag, BagState, BagUnit, Holder } from '#core/stock/stock.ts';
import type { Kept, ReadRow } from './bom.ts';
import type { PlainRow, PlainTable } from './plain-table.ts';
import { readQuantity } from './quantity.ts';

/** Columns of a stock list as Bagatelle writes it. The last ones are for its own reader; a person may leave them alone. */
export const OWN_HEAD = [
  'Bag',
  'Box',
  'Place',
  'Part code',
  'Description',
  'Quantity',
  'Sure',
  'Reserved',
  'State',
  'Oldest',
  'To count',
  'Holder',
  'Unit',
  'Kind',
  'Facts',
] as const;
type OwnColumn = (typeof OWN_HEAD)[number];

const STATES: readonly BagState[] = ['sound', 'astray', 'salvaged', 'mixed', 'expired'];
const HOLDERS: readonly Holder[] = ['zip-bag', 'reel', 'tube', 'tin', 'drawer', 'spool', 'cell'];
const UNITS: readonly BagUnit[] = ['piece', 'mm', 'mg'];
const ORIGINS: readonly Origin[] = ['stated', 'decoded', 'assumed', 'measured'];
const FACT_KEYS: ReadonlyMap<string, FactKey> = new Map(
  [...Object.keys(NUMERIC_FACTS), ...WORD_FACTS].map((key) => [key, key as FactKey]),
); // as: these are all of them

/** A start that a spreadsheet takes for a formula (OWASP, CSV injection), however often it was guarded. */
const FORMULA = /^'*[=+\-@\t\r]/;

/** The cells of a bag under `OWN_HEAD`. Texts that would be formulae are guarded with an apostrophe, which the reader takes off. */
export function writeOwnRow({
  number,
  box,
  place,
  code,
  part,
  onHand,
  sure,
  reserved,
  state,
  oldest,
  toCount,
  holder,
  unit,
}: Bag): string[] {
  const words = [box, place, code, part.text].map((text) => guarded(text ?? ''));
  return [
    String(number),
    ...words,
    ...[onHand, sure, reserved].map(String),
    state,
    oldest ?? '',
    toCount ? 'yes' : '',
    holder,
    unit,
    part.kind,
    writeFacts(part.facts),
  ];
}

function guarded(text: string): string {
  return FORMULA.test(text) ? `'${text}` : text;
}

function unguarded(text: string): string {
  return text.startsWith("'") && FORMULA.test(text) ? text.slice(1) : text;
}

/** Facts as JSON: key → value, unit, and origin where it is not stated. `{"value":["47e2","ohm"],"package":["0805"]}` */
function writeFacts(facts: Facts): string {
  const known = Object.values(facts).filter((fact) => fact !== undefined);
  const short = ({ value, unit, origin }: Fact): unknown[] =>
    origin === 'stated' ? (unit === null ? [value] : [value, unit]) : [value, unit, origin];
  return JSON.stringify(
    Object.fromEntries(known.toSorted((a, b) => (a.key < b.key ? -1 : 1)).map((fact) => [fact.key, short(fact)])),
  );
}

/** Facts as they were written; null where the text is anything else. */
function parseFacts(text: string): Facts | null {
  const tree = parsed(text);
  if (typeof tree !== 'object' || tree === null || Array.isArray(tree)) return null;
  const facts: Partial<Record<FactKey, Fact>> = {};
  for (const [name, said] of Object.entries(tree)) {
    const key = FACT_KEYS.get(name);
    const [value, unit = null, origin = 'stated']: unknown[] = Array.isArray(said) ? said : [];
    const from = ORIGINS.find((one) => one === origin);
    if (!key || !from || typeof value !== 'string' || (unit !== null && typeof unit !== 'string')) return null;
    if (key in NUMERIC_FACTS && parseDecimal(value) !== value) return null;
    facts[key] = { key, value, unit, origin: from };
  }
  return facts;
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return null;
  }
}

/** The rows of a list of our own that say their facts, and what is left of the tables for the reader of any list. */
export interface OwnReading {
  readonly rows: readonly Outcome<ReadRow>[];
  readonly rest: readonly PlainTable[];
}

/** Takes out of the tables the rows that Bagatelle wrote itself: these are exact. Rows that a person added have no facts and stay. */
export function takeOwnRows(tables: readonly PlainTable[]): OwnReading {
  const rows: Outcome<ReadRow>[] = [];
  const rest = tables.map((table): PlainTable => {
    const at = placesIn(table.rows[0]?.cells ?? []);
    if (at === null) return table;
    const [head, ...body] = table.rows;
    const strange = body.filter((plain) => {
      const own = ownRow(plain, at);
      if (own) rows.push(own);
      return !own;
    });
    return { ...table, rows: head && strange.length ? [head, ...strange] : [] };
  });
  return { rows, rest };
}

type Places = ReadonlyMap<OwnColumn, number>;

/** Where the columns stand, in whatever order; null where this is no list of ours. */
function placesIn(header: readonly string[]): Places | null {
  const places = OWN_HEAD.map((name) => [name, header.indexOf(name)] as const);
  return places.every(([, at]) => at >= 0) ? new Map(places) : null;
}

function ownRow({ row, cells }: PlainRow, at: Places): Outcome<ReadRow> | null {
  const cell = (name: OwnColumn): string => cells[at.get(name) ?? -1] ?? '';
  const kind = KINDS.find((one) => one === cell('Kind'));
  const facts = parseFacts(cell('Facts'));
  if (!kind || !facts) return null;
  const { quantity, impossible, doubts } = readQuantity(cell('Quantity'));
  if (impossible) return { ok: false, refusal: impossibleCell(row, (at.get('Quantity') ?? 0) + 1, cell('Quantity'), impossible) };
  const part: Part = { kind, facts, text: unguarded(cell('Description')) };
  const words = (name: OwnColumn): string | null => unguarded(cell(name)) || null;
  const bag = words('Bag');
  const [box, place] = [words('Box'), words('Place')];
  return done({
    row,
    refs: [],
    quantity,
    fitted: true,
    part,
    location: bag ?? place ?? box,
    bag,
    box,
    place,
    supplier: null,
    kept: keptOf(cell, quantity ?? 0),
    doubts,
  });
}

function keptOf(cell: (name: OwnColumn) => string, quantity: number): Kept {
  const sure = readQuantity(cell('Sure')).quantity ?? quantity;
  return {
    sure: Math.min(sure, quantity),
    state: STATES.find((one) => one === cell('State')) ?? 'sound',
    holder: HOLDERS.find((one) => one === cell('Holder')) ?? 'zip-bag',
    unit: UNITS.find((one) => one === cell('Unit')) ?? 'piece',
    toCount: cell('To count') === 'yes',
  };
}

function impossibleCell(row: number, column: number, text: string, why: string): Refusal {
  return refuse('number-impossible', { row, column, text, why }).refusal;
}
