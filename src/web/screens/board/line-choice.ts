import type { BoardLine, LineDetail } from '#api/boards.ts';
import { groupOf } from './board.ts';

/** What can be done about the bag that stands beside a line. */
export interface LineChoice {
  /** the bag that may be accepted or taken, or null where there is nothing to do */
  readonly bag: number | null;
  /** `accept`: its check; `take`: another bag; `anyway`: one that does not serve, which needs a reason */
  readonly how: 'accept' | 'take' | 'anyway';
  readonly canFree: boolean;
  readonly canLater: boolean;
  readonly canFit: boolean;
}

/** `looked` is a bag that was put beside the line by hand. */
export function choiceOf(
  line: BoardLine,
  { bag, verdict }: Pick<LineDetail, 'bag' | 'verdict'>,
  looked: number | null,
): LineChoice {
  const group = groupOf(line);
  const fitted = group === 'now' || group === 'later';
  const chosen = line.chosen !== null && line.chosen.bag === bag;
  const open = looked !== null || verdict === 'check' || verdict === 'missing';
  return {
    bag: fitted && bag !== null && !chosen && open ? bag : null,
    how: verdict === 'missing' ? 'anyway' : looked === null ? 'accept' : 'take',
    canFree: line.chosen !== null,
    canLater: group === 'now',
    canFit: group === 'later',
  };
}
