import type { ActView } from '#api/acts.ts';
import { deedName } from '#say/en/acts.ts';

/** How an act stands in the list. */
export interface Deed {
  readonly act: ActView;
  readonly name: string;
  readonly state: 'done' | 'taken-back' | 'undo';
  readonly moreBags: number;
}

/** Numbers that an act names at most; it may have touched more bags, which its movements tell. */
const NAMED = 8;

export function deedsOf(acts: readonly ActView[]): Deed[] {
  return acts.map((act) => ({
    act,
    name: deedName(act.kind),
    state: act.undoes === null ? (act.undoneBy === null ? 'done' : 'taken-back') : 'undo',
    moreBags: act.bags.length < NAMED ? 0 : Math.max(0, act.movements - act.bags.length),
  }));
}
