import type { Part } from '#core/part/part.ts';
import { readBoard } from '#db/boards.ts';
import type { Lab } from '#db/database.ts';
import type { Kit, KitTake } from '#db/read-builds.ts';
import type { FollowedStock } from './follow-stock.ts';
import { planOpen } from './plan-open.ts';

/** A line of a build: what it needs for all boards, and what it lacks. */
export interface KitLineFound {
  /** the plan's name of the line */
  readonly line: string;
  readonly row: number;
  readonly refs: readonly string[];
  readonly need: number;
  readonly short: number;
  /** what it asks for; null for a build that is of no saved board */
  readonly asks: Part | null;
}

/** The lines of a build: as they were reserved, or, while it is only planned, as its board and the stock are now. */
export async function kitLines(lab: Lab, stock: FollowedStock, { build, lines, takes }: Kit): Promise<KitLineFound[]> {
  const { board, revision, id } = build;
  const found = board === null || revision === null ? null : await lab.read((tx) => readBoard(tx, board, revision));
  const asks = new Map(found?.lines.map(({ row, part }) => [row, part]));
  if (build.state !== 'planned') {
    const got = gotOf(takes);
    return lines.map(({ key, row, refs, need }) => {
      const short = Math.max(0, need - (got.get(key) ?? 0));
      return { line: key, row, refs, need, short, asks: asks.get(row) ?? null };
    });
  }
  const { all } = await planOpen(lab, stock, [], { spares: true });
  const planned = all.find(({ open }) => open.key === id)?.lines ?? [];
  return planned
    .filter(({ need }) => need > 0)
    .map(({ line, row, refs, need, short }) => ({ line, row, refs, need, short, asks: asks.get(row) ?? null }));
}

/** What each line has in its cells, or is still promised: after a stop whose bag gave no more that is less than was planned. */
function gotOf(takes: readonly KitTake[]): Map<string, number> {
  const got = new Map<string, number>();
  for (const { line, state, planned, picked } of takes)
    got.set(line, (got.get(line) ?? 0) + (state === 'open' ? Math.max(planned, picked) : picked));
  return got;
}

/** Of each take what is above the count: what is planned beyond the need of its line, looked for in its last bags. */
export function sparesOf({ lines, takes }: Pick<Kit, 'lines' | 'takes'>): ReadonlyMap<string, number> {
  const wanted = new Map(lines.map(({ key, need, short }) => [key, need - short]));
  return new Map(
    takes.map(({ id, line, planned }: KitTake) => {
      const counted = Math.min(planned, wanted.get(line) ?? 0);
      wanted.set(line, (wanted.get(line) ?? 0) - counted);
      return [id, planned - counted];
    }),
  );
}
