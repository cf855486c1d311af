import type { DraftChange, DraftRow, DraftView } from '#api/drafts.ts';
import type { Trouble } from '../../lab/ask.ts';

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

/** A doubt of it stops the whole file from being kept. */
const stops = (row: DraftRow): boolean => row.doubts.some((doubt) => doubt.stops);

/** Rows by what they wait for, those with doubts first, of these what stops the file; a group without rows is left out. */
export function groupsOf(rows: readonly DraftRow[]): RowGroup[] {
  const found = Object.groupBy(rows, groupOf);
  if (found.doubts) found.doubts = found.doubts.toSorted((a, b) => Number(stops(b)) - Number(stops(a)));
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

/** The next row with a doubt below this one, from the first again; null where no other waits. */
export function nextDoubt(rows: readonly DraftRow[], after: number | null): number | null {
  const waiting = groupsOf(rows).flatMap(({ group, rows: its }) => (group === 'doubts' ? its.map(({ row }) => row) : []));
  const at = after === null ? -1 : waiting.indexOf(after);
  const below = at < 0 && after !== null ? waiting.find((row) => row > after) : waiting[at + 1];
  return below ?? waiting.find((row) => row !== after) ?? null;
}

/** Where the eye goes once a row has an answer: on to the next with a doubt, where that was its last; else it stays. */
export function afterAnswer(rows: readonly DraftRow[], row: number): number | null {
  const here = rows.find((one) => one.row === row);
  return here && groupOf(here) === 'doubts' && here.doubts.length === 1 ? nextDoubt(rows, row) : row;
}

/** Where the eye goes once a row is left out: on from a row with doubts, else it stays. */
export function afterOut(rows: readonly DraftRow[], row: number): number | null {
  const here = rows.find((one) => one.row === row);
  return here && groupOf(here) === 'doubts' ? nextDoubt(rows, row) : row;
}

/** The shown row above (-1) or below (1) the one that the eye is on; from outside, the last or the first. */
export function besideRow(
  rows: readonly DraftRow[],
  { on, show }: { readonly on: number | null; readonly show: number | null },
  step: 1 | -1,
): number | null {
  const shown = groupsOf(rows).flatMap((group) => group.rows.slice(0, shownOf(group, show)).map(({ row }) => row));
  const at = on === null ? -1 : shown.indexOf(on);
  if (at < 0) return shown.at(step > 0 ? 0 : -1) ?? null;
  return shown[at + step] ?? on;
}

/** What is said of a row by `E`: an answer to its first doubt, else what it is. */
export function fieldToSay(row: DraftRow): string {
  return (groupOf(row) === 'doubts' && row.doubts[0]?.field) || 'part';
}

/** Why the answer in the open field was refused; null where the refusal is about something else. */
export function refusalAt(
  trouble: Trouble | null,
  saying: { readonly row: number; readonly field: string } | null,
): string | null {
  if (trouble?.kind !== 'refused' || !saying) return null;
  const { row, field, detail } = trouble.problem;
  return row === saying.row && field === saying.field ? detail : null;
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

/** `212–423`, or the one number. */
export function numbersOf(numbers: DraftView['numbers']): string {
  if (!numbers) return '';
  const { first, last } = numbers;
  return first === last ? String(first) : `${first}–${last}`;
}

/** Lines of the file, also those that a long list does not show. */
export const linesOf = ({ rows, more, moreDoubted }: Pick<DraftView, 'rows' | 'more' | 'moreDoubted'>): number =>
  rows.length + more + moreDoubted;
