import type { Kit, KitTake } from '#db/read-builds.ts';

/** A take of a kit, with what of it should come back. */
export interface ExpectedLeftover {
  readonly take: KitTake;
  readonly expected: number;
}

/**
 * What should be left in the trays of a build: of each line what was picked, less what its boards use and what came back.
 * Where several bags fed one line, the leftover is looked for in the last of them first.
 */
export function expectedLeftovers({ build, lines, takes }: Kit): ExpectedLeftover[] {
  const made = build.made ?? build.boards;
  const left = new Map(
    lines.map(({ key, need }) => {
      const out = takes.filter((take) => take.line === key).reduce((sum, take) => sum + take.picked - take.returned, 0);
      const used = build.boards ? Math.ceil((need / build.boards) * made) : 0;
      return [key, Math.max(0, out - used)];
    }),
  );
  const expected = takes.toReversed().map((take): ExpectedLeftover => {
    const some = Math.min(left.get(take.line) ?? 0, take.picked - take.returned);
    left.set(take.line, (left.get(take.line) ?? 0) - some);
    return { take, expected: some };
  });
  return expected.toReversed();
}
