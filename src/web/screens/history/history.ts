import type { ActView } from '#api/acts.ts';
import { deedName } from '#say/en/acts.ts';

/** How an act stands in the list. */
export interface Deed {
  readonly act: ActView;
  readonly name: string;
  readonly state: 'done' | 'taken-back' | 'undo';
  readonly moreBags: number;
}

export function deedsOf(acts: readonly ActView[]): Deed[] {
  return acts.map((act) => ({
    act,
    name: deedName(act.kind),
    state: act.undoes === null ? (act.undoneBy === null ? 'done' : 'taken-back') : 'undo',
    moreBags: act.more,
  }));
}
