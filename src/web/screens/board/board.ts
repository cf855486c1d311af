import type { BoardLine, BoardLines } from '#api/boards.ts';
import type { Limit } from '#api/kits.ts';
import type { LimitWords } from '#say/en/board-page.ts';

/** Where a line stands in the table: what is fitted now first, what needs nothing at the end. */
export type LineGroup = 'now' | 'later' | 'unfitted' | 'noPart';

export const LINE_GROUPS: readonly LineGroup[] = ['now', 'later', 'unfitted', 'noPart'];

export function groupOf({ because, fitted, later }: Pick<BoardLine, 'because' | 'fitted' | 'later'>): LineGroup {
  if (because.some(({ code }) => code === 'not-a-part')) return 'noPart';
  if (!fitted) return 'unfitted';
  return later ? 'later' : 'now';
}

export type TableRow =
  | { readonly key: string; readonly head: Exclude<LineGroup, 'now'>; readonly line: null }
  | { readonly key: string; readonly head: null; readonly line: BoardLine };

/** The rows of the table in their order: lines as the BOM has them, group by group, each group but the first under its head. */
export function rowsOf(lines: readonly BoardLine[]): TableRow[] {
  return LINE_GROUPS.flatMap((group): TableRow[] => {
    const own = lines.filter((line) => groupOf(line) === group);
    if (own.length === 0) return [];
    const rows = own.map((line): TableRow => ({ key: String(line.row), head: null, line }));
    return group === 'now' ? rows : [{ key: group, head: group, line: null }, ...rows];
  });
}

/** How a line stands: an accepted check is one that nobody waits for. */
export type Standing = BoardLine['verdict'] | 'accepted';

export function standingOf({ verdict, chosen }: Pick<BoardLine, 'verdict' | 'chosen'>): Standing {
  return verdict === 'check' && chosen ? 'accepted' : verdict;
}

export function countsOf(lines: readonly BoardLine[]): Readonly<Record<Standing, number>> {
  const counts = { exact: 0, serves: 0, accepted: 0, check: 0, missing: 0 };
  for (const line of lines) if (groupOf(line) === 'now') counts[standingOf(line)] += 1;
  return counts;
}

/** Reasons that the columns of the table say already. */
const SAID_ALREADY: ReadonlySet<string> = new Set([
  'same',
  'part-number',
  'short',
  'may-serve',
  'chosen',
  'described',
  'estimate',
  'later',
  'not-fitted',
  'not-a-part',
]);
const MOST_REASONS = 2;

/** What is to know of a match beside its verdict, short enough for a row. */
export function whyOf(line: Pick<BoardLine, 'because' | 'chosen'>): string {
  const worth = line.because.filter(({ code }) => !SAID_ALREADY.has(code) && (code !== 'accepted' || line.chosen?.reason));
  return worth
    .slice(0, MOST_REASONS)
    .map(({ text }) => text)
    .join('; ');
}

/** The bag of a line that its row shows: the one it takes from, else the one to look at. */
export function bagOf({ bags, chosen, nearest }: Pick<BoardLine, 'bags' | 'chosen' | 'nearest'>): number | null {
  return bags[0]?.bag ?? chosen?.bag ?? nearest;
}

/** What keeps the board from more, in the order of its lines. */
export function limitsOf({ lines, limitedBy, boards }: Pick<BoardLines, 'lines' | 'limitedBy' | 'boards'>): LimitWords[] {
  const found = new Map<number, LimitWords>();
  for (const limit of limitedBy) {
    const line = lineOf(lines, limit);
    if (line) found.set(line.row, wordsOf(line, limit, boards));
  }
  return [...found.values()].toSorted((a, b) => a.line - b.line);
}

function lineOf(lines: readonly BoardLine[], limit: Limit): BoardLine | undefined {
  if ('line' in limit) return lines.find(({ row }) => row === limit.line);
  const users = lines.filter(({ bags }) => bags.some(({ bag }) => bag === limit.bag));
  return users.toSorted((a, b) => b.short - a.short || b.need - a.need)[0];
}

function wordsOf(line: BoardLine, limit: Limit, boards: number): LimitWords {
  return {
    bag: 'bag' in limit ? limit.bag : null,
    line: line.row,
    name: line.said.name,
    free: line.free,
    perBoard: Math.round(line.need / boards),
    toCheck: standingOf(line) === 'check' && line.bags.length === 0,
  };
}

export interface Reaching {
  readonly row: number;
  readonly name: string;
  readonly boards: number;
  readonly short: boolean;
  /** length of its bar, and where the goal stands on it, as parts of the whole */
  readonly length: number;
  readonly goal: number;
}

const LEAST = 5;
/** the goal stands at five eighths where nothing reaches far beyond it */
const ROOM = 1.6;

/** The lines that reach the fewest boards, and what every other line reaches at least. */
export function reachingOf(lines: readonly BoardLine[], boards: number): { least: Reaching[]; rest: number | null } {
  const all = lines
    .flatMap((line) => (line.reaches === null || groupOf(line) !== 'now' ? [] : [{ line, reaches: line.reaches }]))
    .toSorted((a, b) => a.reaches - b.reaches || a.line.row - b.line.row);
  const shown = all.slice(0, LEAST);
  const top = Math.max(boards * ROOM, ...shown.map(({ reaches }) => reaches));
  return {
    least: shown.map(({ line, reaches }) => ({
      row: line.row,
      name: line.said.name,
      boards: reaches,
      short: reaches < boards,
      length: reaches / top,
      goal: boards / top,
    })),
    rest: all[LEAST]?.reaches ?? null,
  };
}

/** The row above or below the chosen one; the first or the last where none is chosen, itself at the end. */
export function stepFrom(rows: readonly TableRow[], row: number | null, by: 1 | -1): number | null {
  const numbers = rows.flatMap(({ line }) => (line ? [line.row] : []));
  const at = row === null ? -1 : numbers.indexOf(row);
  if (at < 0) return (by > 0 ? numbers[0] : numbers.at(-1)) ?? null;
  return numbers[Math.min(numbers.length - 1, Math.max(0, at + by))] ?? null;
}

/** The line that a typed bag number jumps to. */
export function lineWithBag(lines: readonly BoardLine[], bag: number): number | null {
  return (
    lines.find(({ bags }) => bags.some((one) => one.bag === bag))?.row ?? lines.find((line) => bagOf(line) === bag)?.row ?? null
  );
}

/** What a BOM writes out for a program, with names of footprints, is long: then the row has it as it was read, and the drawer as written. */
const SHORT_TEXT = 26;

export const asksOf = ({ asks }: Pick<BoardLine, 'asks'>): string | null => (asks.length <= SHORT_TEXT ? asks : null);
