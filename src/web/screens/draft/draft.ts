import type { DraftChange, DraftRow, DraftView } from '#api/drafts.ts';

export type Group = 'doubts' | 'told' | 'clear' | 'none' | 'out';

/** What a row waits for; one that is left out waits for nothing. */
export function groupOf(row: DraftRow): Group {
  if (row.out) return 'out';
  if (row.doubts.length > 0) return 'doubts';
  if (!row.part) return 'none';
  return row.answers.length > 0 ? 'told' : 'clear';
}

const ORDER = ['doubts', 'told', 'clear', 'none', 'out'] as const satisfies readonly Group[];

export interface RowGroup {
  readonly group: Group;
  readonly rows: readonly DraftRow[];
}

/** Rows by what they wait for, those with doubts first; a group without rows is left out. */
export function groupsOf(rows: readonly DraftRow[]): RowGroup[] {
  const found = Object.groupBy(rows, groupOf);
  return ORDER.flatMap((group) => {
    const its = found[group];
    return its ? [{ group, rows: its }] : [];
  });
}

/** How many rows of each group stand on the page at once: doubts are looked at, clear ones only glanced at. */
const FIRST: Readonly<Record<Group, number>> = { doubts: 50, told: 50, clear: 6, none: 6, out: 50 };
export const STEP = 50;

/** How many rows of a group are shown, where `wanted` were asked for. */
export function shownOf({ group, rows }: RowGroup, wanted: number | null): number {
  return Math.min(rows.length, Math.max(FIRST[group], wanted ?? 0));
}

/** The next row with a doubt after this one, from the first again; null where no other waits. */
export function nextDoubt(rows: readonly DraftRow[], after: number | null): number | null {
  const waiting = rows.filter((row) => groupOf(row) === 'doubts').map(({ row }) => row);
  return waiting.find((row) => after === null || row > after) ?? waiting.find((row) => row !== after) ?? null;
}

/** Where the eye goes once a doubt of a row has its answer: the same row while it has another, else the next with one. */
export function afterAnswer(rows: readonly DraftRow[], row: number): number | null {
  const here = rows.find((one) => one.row === row);
  return here && here.doubts.length > 1 ? row : nextDoubt(rows, row);
}

/**
 * Rows as they will stand once the draft holds what was said: a long list takes a while to be read again, and nobody should wait
 * for that between two answers. A doubt that is being answered in words stays, with what is typed, until the draft holds it.
 */
export function asTold(
  rows: DraftRow[],
  held: DraftChange | null,
  saying: { readonly row: number; readonly field: string } | null,
): DraftRow[] {
  if (!held?.answers && !held?.out) return rows;
  const answers = Map.groupBy(held.answers ?? [], ({ row }) => row);
  const outs = new Map((held.out ?? []).map(({ row, out }) => [row, out]));
  return rows.map((row) => {
    const given = (answers.get(row.row) ?? []).filter(({ field }) => saying?.row !== row.row || saying.field !== field);
    const out = outs.get(row.row) ?? row.out;
    if (given.length === 0 && out === row.out) return row;
    const settled = new Set(given.map(({ field }) => field));
    const doubts = row.doubts.filter(({ field }) => !settled.has(field));
    return { ...row, out, doubts, answers: [...row.answers.filter(({ field }) => !settled.has(field)), ...given] };
  });
}

/** What it is was not understood: a doubt may be about less. */
export const notRead = (row: DraftRow): boolean =>
  row.gloss.some(({ how }) => how === 'unread') && row.doubts.some(({ field }) => field === 'kind');

/** First lines of the file as they stand in it, at most `most`. */
export function sampleRows({ columns }: Pick<DraftView, 'columns'>, most = 6): readonly (readonly string[])[] {
  const lines = Math.min(most, Math.max(0, ...columns.map(({ samples }) => samples.length)));
  return Array.from({ length: lines }, (_, at) => columns.map(({ samples }) => samples[at] ?? ''));
}

/** `212–423`, or single numbers where they do not run on. */
export function numbersOf(rows: readonly DraftRow[]): string {
  const numbers = rows.flatMap(({ bag, out, part }) => (bag === null || out || !part ? [] : [bag])).toSorted((a, b) => a - b);
  const [first, last] = [numbers[0], numbers.at(-1)];
  if (first === undefined || last === undefined) return '';
  return first === last ? String(first) : `${first}–${last}`;
}
