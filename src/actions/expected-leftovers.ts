import { leftInCells } from '#db/left-in-cells.ts';
import type { Kit, KitTake } from '#db/read-builds.ts';

/** A take of a kit, with what of it should come back. */
export interface ExpectedLeftover {
  readonly take: KitTake;
  readonly expected: number;
}

/** What should be left in the trays of a build; of one that is still being picked, were all its boards made. */
export function expectedLeftovers({ build, lines, takes }: Kit): ExpectedLeftover[] {
  const left = leftInCells(build, new Map(lines.map(({ key, need }) => [key, need])), takes);
  return takes.map((take, at) => ({ take, expected: left[at] ?? 0 }));
}
