import type { Movement, Undone } from '#api/movements.ts';
import type { Warned } from '#api/acts.ts';
import { useAct } from '../../lab/act.ts';
import type { Trouble } from '../../lab/ask.ts';

interface Noted {
  readonly bag: number;
  readonly note?: string;
}

/** One movement of one bag, as it is told to the lab. */
export type MoveBody =
  | (Noted & { readonly kind: 'picked'; readonly quantity: number; readonly inHand?: boolean })
  | (Noted & { readonly kind: 'returned'; readonly quantity: number })
  | (Noted & { readonly kind: 'counted'; readonly counted: number; readonly sawSeq: number });

export interface BagActs {
  /** true: it is booked */
  readonly move: (body: MoveBody) => Promise<boolean>;
  readonly moveAgain: () => Promise<boolean>;
  readonly undo: (act: string) => Promise<void>;
  readonly undoAgain: () => Promise<void>;
  readonly forget: () => void;
  readonly busy: boolean;
  readonly moveTrouble: Trouble | null;
  readonly undoTrouble: Trouble | null;
  /** of the latest act that was done here */
  readonly warnings: readonly Warned[];
}

/** What can be done with a bag. */
export function useBagActs(): BagActs {
  const move = useAct<MoveBody, Movement>('/api/movements');
  const undo = useAct<{ readonly act: string }, Undone>('/api/undo');
  const forget = (): void => {
    move.forget();
    undo.forget();
  };
  return {
    move: async (body) => {
      undo.forget();
      return (await move.run(body)) !== null;
    },
    moveAgain: async () => (await move.again()) !== null,
    undo: async (act) => {
      move.forget();
      await undo.run({ act });
    },
    undoAgain: async () => {
      await undo.again();
    },
    forget,
    busy: move.busy || undo.busy,
    moveTrouble: move.trouble,
    undoTrouble: undo.trouble,
    warnings: undo.done?.warnings ?? move.done?.warnings ?? [],
  };
}
