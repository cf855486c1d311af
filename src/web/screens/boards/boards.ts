import type { BoardReach, BoardView } from '#api/boards.ts';

export type BoardBuild = BoardView['builds'][number];
export type BoardGroup = 'open' | 'built' | 'never';

export const BOARD_GROUPS: readonly BoardGroup[] = ['open', 'built', 'never'];

export interface BoardEntry {
  readonly name: string;
  readonly group: BoardGroup;
  readonly board: BoardView;
  /** the newest one */
  readonly revision: BoardView['revisions'][number] | null;
  /** builds planned or under way */
  readonly open: readonly BoardBuild[];
  readonly lastBuilt: BoardBuild | null;
  /** unknown while it is worked out */
  readonly reach: BoardReach | null;
}

const OPEN: ReadonlySet<string> = new Set(['planned', 'reserved', 'picking']);

export function entryOf(board: BoardView, reaches: readonly BoardReach[] | undefined): BoardEntry {
  const open = board.builds.filter(({ state }) => OPEN.has(state));
  const lastBuilt = board.builds.find(({ state }) => state === 'built') ?? null;
  return {
    name: board.name,
    group: open.length > 0 ? 'open' : lastBuilt ? 'built' : 'never',
    board,
    revision: board.revisions.at(-1) ?? null,
    open,
    lastBuilt,
    reach: reaches?.find((one) => one.board === board.name) ?? null,
  };
}

/** Boards with a kit open first, then those that were built, the latest first, then the rest; by name where that is equal. */
export function entriesOf(boards: readonly BoardView[], reaches: readonly BoardReach[] | undefined): BoardEntry[] {
  const place = (entry: BoardEntry): number => BOARD_GROUPS.indexOf(entry.group);
  const built = ({ group, lastBuilt }: BoardEntry): string => (group === 'built' ? (lastBuilt?.when ?? '') : '');
  return boards
    .map((board) => entryOf(board, reaches))
    .toSorted((a, b) => place(a) - place(b) || built(b).localeCompare(built(a)) || a.name.localeCompare(b.name));
}

/** How many boards can be built at least once; null while that is worked out. */
export function canBuild(entries: readonly BoardEntry[]): number | null {
  if (entries.some(({ reach }) => reach === null)) return null;
  return entries.filter(({ reach }) => (reach?.buildable ?? 0) > 0).length;
}

/** The board above or below; the first or the last where none is chosen. */
export function nextName(entries: readonly BoardEntry[], name: string | undefined, by: 1 | -1): string | null {
  const at = entries.findIndex((entry) => entry.name === name);
  if (at < 0) return (by > 0 ? entries[0] : entries.at(-1))?.name ?? null;
  return entries[Math.min(entries.length - 1, Math.max(0, at + by))]?.name ?? null;
}

export interface BuildBar {
  readonly build: BoardBuild;
  readonly boards: number;
  readonly length: number;
  readonly open: boolean;
}

const MOST_BARS = 8;

/** The latest builds, the oldest first, as lengths; what was given up made nothing. */
export function barsOf(builds: readonly BoardBuild[]): BuildBar[] {
  const shown = builds
    .filter(({ state }) => state === 'built' || OPEN.has(state))
    .slice(0, MOST_BARS)
    .toReversed();
  const boardsOf = ({ made, boards }: BoardBuild): number => made ?? boards;
  const most = Math.max(1, ...shown.map(boardsOf));
  return shown.map((build) => ({
    build,
    boards: boardsOf(build),
    length: boardsOf(build) / most,
    open: OPEN.has(build.state),
  }));
}
