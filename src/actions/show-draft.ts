import type { ReadRow } from '#core/bom/bom.ts';
import { cellEvidence, type CellEvidence } from '#core/bom/column-evidence.ts';
import { COLUMN_ROLES, type ColumnRole } from '#core/bom/columns.ts';
import { glossRow, type CellGloss } from '#core/bom/gloss-row.ts';
import { MOST_NUMBER } from '#core/stock/bag-number.ts';
import type { Refusal } from '#core/stock/refusal.ts';
import { bagTexts } from '#db/bags.ts';
import type { Tx } from '#db/database.ts';
import type { Draft } from '#db/drafts.ts';
import { MOST } from './checks.ts';
import { draftBoard, type DraftBoard } from './draft-board.ts';
import { previewImport } from './import-list.ts';
import type { OpenDraft } from './make-draft.ts';
import { readInWords } from './part-words.ts';
import { clashOf, type ImportPlan, type PlannedBag } from './plan-import.ts';
import type { DraftReading } from './read-draft.ts';
import { shownRows, type ShownRows } from './shown-rows.ts';

/** What a draft would become in the lab as it is now. */
export interface ShownDraft extends OpenDraft, ShownRows {
  /** open doubts, also of rows that are not shown */
  readonly doubts: number;
  /** of a list: the bag of each row that makes one */
  readonly bags: ReadonlyMap<number, PlannedBag>;
  readonly board: DraftBoard | null;
  /** why it can't be kept as it stands; null where it can */
  readonly trouble: Refusal | null;
  /** what the cells of each column say for what it was taken for */
  readonly evidence: ReadonlyMap<number, CellEvidence>;
  /** what a column can be */
  readonly roles: readonly ColumnRole[];
  /** each row that is shown over how it was read */
  readonly glosses: ReadonlyMap<number, readonly CellGloss[]>;
  /** of a list: rows that are shown and whose number is taken */
  readonly taken: ReadonlyMap<number, TakenNumber>;
}

/** A number that is taken: by an earlier row of the list, or by a bag of the lab, and what that bag holds. */
export interface TakenNumber {
  readonly number: number;
  readonly by: { readonly row: number } | { readonly bag: string };
  /** a number for the row that nothing has; null where there is none */
  readonly free: number | null;
}

/** Looks at a draft against the lab; writes nothing. */
export async function showDraft(tx: Tx, { draft, reading }: OpenDraft): Promise<ShownDraft> {
  const { is, told } = draft;
  const evidence = new Map(reading.columns.map((column) => [column.column, cellEvidence(column, reading.table)]));
  const common = { draft, reading, evidence, roles: COLUMN_ROLES };
  const open = reading.kept.reduce((sum, { doubts }) => sum + doubts.length, 0);
  if (is === 'list') {
    const plan = await previewImport(tx, { rows: reading.kept, ...(told.box !== null && { box: told.box }) });
    const shown = shownRows(reading.rows, told, new Set(plan.clashes.map(({ row }) => row)));
    return {
      ...common,
      ...shown,
      doubts: open + plan.clashes.length,
      glosses: glossesOf(shown.rows, draft, reading),
      bags: new Map(plan.bags.map((bag) => [bag.row.row, bag])),
      board: null,
      trouble: troubleOf(plan),
      taken: await takenOf(tx, plan, new Set(shown.rows.map(({ row }) => row))),
    };
  }
  const shown = shownRows(reading.rows, told, new Set());
  const glosses = glossesOf(shown.rows, draft, reading);
  const board = await draftBoard(tx, draft);
  const trouble = boardTrouble(board, reading.kept.length);
  return { ...common, ...shown, doubts: open, glosses, bags: new Map(), taken: new Map(), board, trouble };
}

function glossesOf(
  rows: readonly ReadRow[],
  { told }: Draft,
  { cells }: DraftReading,
): ReadonlyMap<number, readonly CellGloss[]> {
  const whole = new Set(told.answers.filter(({ field, text }) => field === 'part' && text !== null).map(({ row }) => row));
  return new Map(rows.map((row) => [row.row, glossRow(row, cells.get(row.row), whole.has(row.row))]));
}

async function takenOf(
  tx: Tx,
  { clashes, free }: ImportPlan,
  shown: ReadonlySet<number>,
): Promise<ReadonlyMap<number, TakenNumber>> {
  const told = clashes.map((clash, at) => ({ ...clash, free: free + at })).filter(({ row }) => shown.has(row));
  const texts = await bagTexts(
    tx,
    told.flatMap((clash) => (clash.with === null ? [clash.number] : [])),
  );
  return new Map(
    told.map(({ row, number, with: earlier, free: next }) => {
      const text = texts.get(number) ?? '';
      const by = earlier === null ? { bag: readInWords(text).said.name || text } : { row: earlier };
      return [row, { number, by, free: next > MOST_NUMBER ? null : next }];
    }),
  );
}

/** What `importList` would refuse the list for. */
function troubleOf(plan: ImportPlan): Refusal | null {
  const clash = clashOf(plan);
  if (clash) return clash;
  if (plan.bags.length === 0) return { code: 'nothing-to-do', args: {} };
  const over = plan.bags.find(({ quantity }) => quantity > MOST);
  if (over) return range('quantity', over.quantity, 0, MOST, over);
  const beyond = plan.bags.find(({ number }) => number > MOST_NUMBER);
  return beyond ? range('bag', beyond.number, 1, MOST_NUMBER, beyond) : null;
}

function range(field: string, received: number, least: number, most: number, { row }: PlannedBag): Refusal {
  return { code: 'out-of-range', args: { field, received, least, most, row: row.row } };
}

function boardTrouble({ revision, taken }: DraftBoard, lines: number): Refusal | null {
  if (lines === 0) return { code: 'nothing-to-do', args: {} };
  return taken ? { code: 'not-valid', args: { field: 'revision', received: revision ?? '', expected: 'new-revision' } } : null;
}
