import { useState, useSyncExternalStore } from 'react';
import type { DraftChange, DraftView } from '#api/drafts.ts';
import { queries } from '../../lab/answers.ts';
import { ask, type Trouble } from '../../lab/ask.ts';
import { Telling } from './telling.ts';

export interface Told {
  /** tells the draft; true where it holds it now */
  readonly tell: (change: DraftChange) => Promise<boolean>;
  /** tells what is held; true where the draft holds all of it */
  readonly again: () => Promise<boolean>;
  /** what was said and is not in the draft yet */
  readonly held: DraftChange | null;
  readonly busy: boolean;
  readonly trouble: Trouble | null;
}

/** All that is told of a draft is kept in it at once. One draft for as long as the component stands. */
export function useTelling(draft: string): Told {
  const [telling] = useState(() => tellingOf(draft));
  const { sending, held, trouble } = useSyncExternalStore(telling.subscribe, telling.snapshot);
  return { tell: (change) => telling.tell(change), again: () => telling.again(), held, busy: sending, trouble };
}

function tellingOf(draft: string): Telling {
  const path = `/api/drafts/${encodeURIComponent(draft)}`;
  return new Telling(async (change) => {
    const view = await ask<DraftView>(path, { method: 'PATCH', body: change });
    // an answer that was asked for before knows less than this one
    await queries.cancelQueries({ queryKey: ['lab', path] });
    queries.setQueryData(['lab', path], view);
  });
}
