import type { BoxesView } from '#api/bags.ts';
import { useAct } from '../../lab/act.ts';
import type { Trouble } from '../../lab/ask.ts';
import { moved, standingOf } from './boxes.ts';

interface ArrangeBody {
  readonly boxes: readonly string[];
  readonly standing: 'beside' | 'stacked';
}

export interface Arranging {
  readonly stand: (standing: 'beside' | 'stacked') => void;
  readonly move: (name: string, by: -1 | 1) => void;
  readonly undo: (() => void) | null;
  readonly again: () => void;
  readonly undone: boolean;
  readonly busy: boolean;
  readonly trouble: Trouble | null;
}

/** Puts the boxes into an order, as one act that can be taken back. */
export function useArranging(view: BoxesView): Arranging {
  const arrange = useAct<ArrangeBody, { readonly id: string }>('/api/boxes/order');
  const undo = useAct<{ readonly act: string }, { readonly undoes: string }>('/api/undo');
  const names = view.boxes.map(({ name }) => name);
  const standing = standingOf(view);
  const done = arrange.done?.id;
  const failed = undo.trouble ? undo : arrange;
  const arranged = (body: ArrangeBody): void => {
    // an undo that failed was of the change before this one
    undo.forget();
    void arrange.run(body);
  };
  const undone = done !== undefined && undo.done?.undoes === done;
  return {
    stand: (wanted) => arranged({ boxes: names, standing: wanted }),
    move: (name, by) => arranged({ boxes: moved(names, name, by), standing }),
    undo: done === undefined || undone ? null : () => void undo.run({ act: done }),
    again: () => void failed.again(),
    undone,
    busy: arrange.busy || undo.busy,
    trouble: failed.trouble,
  };
}
