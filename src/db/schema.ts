import type { ColumnType } from 'kysely';

/** Whole numbers; int8 and sums of PostgreSQL are made numbers in `postgres.ts`. */
type Flag = 0 | 1;
/** A column that is set once, when the row is made. */
type Once<T> = ColumnType<T, T, never>;

/** One row for each act: what a person did at once. `result` is the answer that a repeat gets again. */
export interface ActTable {
  id: Once<string>;
  kind: Once<string>;
  who: Once<string>;
  device: Once<string | null>;
  happened_at: Once<string>;
  recorded_at: Once<string>;
  /** the act that this one takes back; at most one act takes back another */
  undoes: Once<string | null>;
  note: Once<string | null>;
  /** change number of the act's transaction */
  change: Once<number>;
  body_hash: string;
  result: string;
  /** what an undo must know beyond movements and bag changes */
  memo: string;
}

/** Append-only. `delta` and `sure_delta` are in the bag's unit; `saw` is the last seq that a count knew. */
export interface MovementTable {
  seq: Once<number>;
  act: Once<string>;
  bag: Once<string>;
  lot: Once<string | null>;
  delta: Once<number>;
  sure_delta: Once<number>;
  saw: Once<number | null>;
  build_line: Once<string | null>;
}

/** Append-only: what else an act changed on a bag (its state, whether it is to be counted, whether it lives). */
export interface BagChangeTable {
  act: Once<string>;
  ord: Once<number>;
  bag: Once<string>;
  field: Once<'state' | 'to_count' | 'live'>;
  before: Once<string>;
  after: Once<string>;
}

export interface BagTable {
  id: Once<string>;
  number: number;
  part: string;
  text: string;
  holder: string;
  unit: string;
  box: string | null;
  place: string | null;
  state: string;
  on_hand: number;
  sure: number;
  /** plain date of the oldest lot in it */
  oldest: string | null;
  to_count: Flag;
  live: Flag;
  made_by: Once<string>;
  /** change number at which the bag, or what is reserved of it, changed last */
  changed: number;
}

export interface LotTable {
  id: Once<string>;
  act: Once<string>;
  part: Once<string>;
  supplier: string | null;
  received: string | null;
  date_code: string | null;
  label: string | null;
  price_micros: number | null;
  currency: string | null;
  price_pieces: number | null;
}

/** One row for each distinct set of facts; `key` is those facts in one canonical spelling. */
export interface PartTable {
  id: Once<string>;
  key: Once<string>;
  code: string;
  kind: string;
  text: string;
}

export interface PartFactTable {
  part: string;
  key: string;
  value: string;
  unit: string | null;
  origin: string;
}

export interface BoxTable {
  name: Once<string>;
  places: number;
  lifts: number;
  ord: number;
  live: Flag;
  made_by: Once<string | null>;
}

export interface BoardTable {
  id: Once<string>;
  name: string;
  live: Flag;
}

export interface RevisionTable {
  id: Once<string>;
  board: Once<string>;
  name: Once<string>;
  ord: Once<number>;
  source: string | null;
  act: Once<string>;
  live: Flag;
}

/** A line of a BOM as it was read: `read` is the whole `ReadRow` as JSON. */
export interface LineTable {
  id: Once<string>;
  revision: Once<string>;
  ord: Once<number>;
  row: Once<number>;
  read: Once<string>;
}

export interface ChoiceTable {
  board: string;
  demand: string;
  bag: string;
  accept: Flag;
}

/** Demands that are left off a board for now. */
export interface LaterTable {
  board: string;
  demand: string;
}

export interface BuildTable {
  id: Once<string>;
  name: string;
  board: string | null;
  revision: string | null;
  boards: number;
  made: number | null;
  state: string;
  priority: number;
  due: string | null;
  buildable: number;
  proof: string;
  act: Once<string>;
}

export interface BuildLineTable {
  id: Once<string>;
  build: string;
  ord: Once<number>;
  /** the plan's name of the line */
  key: Once<string>;
  row: Once<number>;
  refs: Once<string>;
  need: Once<number>;
  spare: Once<number>;
  short: Once<number>;
  verdict: Once<string>;
  because: Once<string>;
}

/** What is still promised of a bag to a line; the row goes when nothing is. */
export interface ReservationTable {
  build_line: string;
  bag: string;
  quantity: number;
}

/** One stop of a kit's walk: from which bag into which cell, and what became of it. */
export interface KitTakeTable {
  id: Once<string>;
  build_line: Once<string>;
  bag: Once<string>;
  ord: number;
  tray: number;
  cell: number;
  planned: number;
  picked: number;
  returned: number;
  state: 'open' | 'done';
}

/** A phone or computer that may reach the lab over the network; its token is kept as a hash only. */
export interface DeviceTable {
  id: Once<string>;
  name: Once<string>;
  /** another takes its place where the device did not hear the first */
  token_hash: string;
  paired_at: Once<string>;
  seen_at: string | null;
  forgotten: Flag;
}

/** What the lab must know of itself; a row a fact (`setting.ts`). */
export interface SettingTable {
  key: Once<string>;
  value: string;
}

/** A file that was brought in and is not kept yet; `told` is JSON. */
export interface DraftTable {
  id: Once<string>;
  name: Once<string>;
  holds: Once<'list' | 'bom'>;
  file: Once<Uint8Array>;
  row_count: number;
  told: string;
  version: number;
  made_at: Once<string>;
  touched_at: string;
}

/** A draft that was kept, by the act that made it real. */
export interface KeptDraftTable {
  draft: Once<string>;
  act: Once<string>;
  kept_at: Once<string>;
}

export interface Schema {
  act: ActTable;
  movement: MovementTable;
  bag_change: BagChangeTable;
  bag: BagTable;
  lot: LotTable;
  part: PartTable;
  part_fact: PartFactTable;
  box: BoxTable;
  board: BoardTable;
  revision: RevisionTable;
  line: LineTable;
  choice: ChoiceTable;
  later: LaterTable;
  build: BuildTable;
  build_line: BuildLineTable;
  reservation: ReservationTable;
  kit_take: KitTakeTable;
  change: { id: number; number: number };
  device: DeviceTable;
  setting: SettingTable;
  draft: DraftTable;
  kept_draft: KeptDraftTable;
}
