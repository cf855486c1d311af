import type { LineAnswer, RouteStop } from '#api/kits.ts';
import type { Because } from '#core/serve/verdict.ts';
import { sayReasons } from '#say/en/reasons.ts';
import type { ColumnOf } from './table.ts';

/** `['R1','R2','R3','R5']` -> `R1–R3 R5`: refs in the order given, runs drawn together. */
export function writeRefs(refs: readonly string[]): string {
  const runs: { text: string; first: string; last: number; prefix: string; count: number }[] = [];
  for (const ref of refs) {
    const [, prefix = '', digits = ''] = /^(.*?)(\d*)$/.exec(ref) ?? [];
    const before = runs.at(-1);
    if (before && digits && before.prefix === prefix && Number(digits) === before.last + 1) {
      before.last += 1;
      before.count += 1;
      before.text = `${before.first}–${ref}`;
    } else runs.push({ text: ref, first: ref, last: digits ? Number(digits) : Number.NaN, prefix, count: 1 });
  }
  return runs.map(({ text }) => text).join(' ');
}

/** A line with its reasons as a person reads them. */
export type ToldLine = LineAnswer & { readonly said: string };

/** Lines as people read them, each beside the reasons that its answer was made of. */
export function toldLines(
  lines: readonly { readonly because: readonly Because[] }[],
  answers: readonly LineAnswer[],
): ToldLine[] {
  return answers.map((answer, at) => ({ ...answer, said: sayReasons(lines[at]?.because ?? []).join('; ') }));
}

/** Why a line gets nothing though nothing is missing; else its verdict. */
function verdictWord({ verdict, because }: LineAnswer): string {
  if (because.some(({ code }) => code === 'not-fitted')) return 'not fitted';
  return because.some(({ code }) => code === 'later') ? 'fit later' : verdict;
}

const taken = ({ bags }: LineAnswer): string => (bags.length ? bags.map(({ bag, take }) => `${bag} × ${take}`).join(', ') : '–');

export const LINE_COLUMNS: readonly ColumnOf<ToldLine>[] = [
  { head: 'row', cell: (line) => line.row, right: true },
  { head: 'refs', cell: (line) => shortened(writeRefs(line.refs)) },
  { head: 'need', cell: (line) => line.need, right: true },
  { head: 'verdict', cell: verdictWord },
  { head: 'bags', cell: taken },
  { head: 'spare', cell: (line) => line.spare || '', right: true },
  { head: 'short', cell: (line) => line.short || '', right: true },
  { head: 'because', cell: (line) => line.said, gives: true },
];

export const ROUTE_COLUMNS: readonly ColumnOf<RouteStop>[] = [
  { head: 'box', cell: (stop) => stop.box },
  { head: 'place', cell: (stop) => stop.place },
  { head: 'bag', cell: (stop) => stop.bag, right: true },
  { head: 'take', cell: (stop) => stop.take, right: true },
  { head: 'tray', cell: (stop) => stop.tray, right: true },
  { head: 'cell', cell: (stop) => stop.cell, right: true },
  { head: 'refs', cell: (stop) => writeRefs(stop.refs), gives: true },
];

const MOST_REFS = 24;

function shortened(refs: string): string {
  return refs.length > MOST_REFS ? `${refs.slice(0, MOST_REFS - 1)}…` : refs || '–';
}
