import { useNavigate } from '@tanstack/react-router';
import { useRef, useState } from 'react';
import type { DraftView } from '#api/drafts.ts';
import { useAct } from '../../lab/act.ts';
import { queries } from '../../lab/answers.ts';
import type { Trouble } from '../../lab/ask.ts';
import type { Kept } from './kept.tsx';
import type { Told } from './use-draft.ts';

export interface Keeping {
  readonly keep: () => void;
  /** the same once more, where its answer did not come */
  readonly again: () => void;
  /** from the press to what came of it, the last words to the draft among it */
  readonly busy: boolean;
  readonly trouble: Trouble | null;
  readonly done: Kept | undefined;
}

/** Makes of a draft what it is to become, once; the board of a BOM opens. */
export function useKeeping(draft: string, told: Told): Keeping {
  const path = `/api/drafts/${encodeURIComponent(draft)}`;
  const navigate = useNavigate();
  const act = useAct<{ readonly saw?: number }, Kept>(`${path}/keep`);
  const [busy, setBusy] = useState(false);
  const pressed = useRef(false);
  const once = async (run: () => Promise<Kept | null>): Promise<void> => {
    // a second press comes before the page is drawn anew
    if (pressed.current) return;
    pressed.current = true;
    setBusy(true);
    try {
      // what was typed last may still be on its way
      const became = (await told.again()) ? await run() : null;
      if (became && 'board' in became) await navigate({ to: '/boards/$board', params: { board: became.board }, search: {} });
      // another may have said something of it meanwhile: it is shown
      if (!became) void queries.invalidateQueries({ queryKey: ['lab', path] });
    } finally {
      pressed.current = false;
      setBusy(false);
    }
  };
  const keep = (): Promise<Kept | null> => {
    const seen = queries.getQueryData<DraftView>(['lab', path]);
    return act.run(seen ? { saw: seen.version } : {});
  };
  return {
    keep: () => void once(keep),
    again: () => void once(act.again),
    busy,
    trouble: act.trouble,
    done: act.done,
  };
}
