import { useRef, useState } from 'react';
import type { BagView, BagWithHistory, NewBag, NewBagRequest } from '#api/bags.ts';
import type { Movement, Undone } from '#api/movements.ts';
import { useAct, type Act } from '../../lab/act.ts';
import { ask, Unanswered } from '../../lab/ask.ts';
import { keepTakenIn, readTakenIn, type TakenIn } from './receive.ts';

export type Asking = Omit<NewBagRequest, 'id'>;
interface Adding {
  readonly kind: 'received';
  readonly bag: number;
  readonly quantity: number;
}

interface Taking {
  readonly list: readonly TakenIn[];
  readonly newest: TakenIn | null;
  readonly take: Act<Asking, NewBag>;
  readonly add: Act<Adding, Movement>;
  readonly undo: Act<{ readonly act: string }, Undone>;
  /** books it; the bag, or null where it was not booked */
  readonly book: (asking: Asking) => Promise<number | null>;
  /** the same booking once more, where its answer did not come */
  readonly bookAgain: (asking: Asking) => Promise<number | null>;
  readonly addTo: (bag: BagView, quantity: number) => Promise<boolean>;
  readonly takeBack: (act: string) => Promise<void>;
  readonly takeBackAgain: () => Promise<void>;
}

/** Takes bags in one by one, and keeps the list of them for this window. */
export function useTaking(): Taking {
  const take = useAct<Asking, NewBag>('/api/bags');
  const add = useAct<Adding, Movement>('/api/movements');
  const undo = useAct<{ readonly act: string }, Undone>('/api/undo');
  const { list, keep } = useTakenIn();
  const forget = (): void => {
    for (const act of [take, add, undo]) act.forget();
  };
  const booked = (done: NewBag | null, { quantity, about = false }: Asking): number | null => {
    if (!done) return null;
    const { id: act, said, code, box, bag } = done;
    keep((old) => [{ act, bag, ...said, code, box, quantity, about, added: false, doubts: [], back: false }, ...old]);
    // the booking stands whatever comes of this reading
    void doubtsOf(bag).then((doubts) => keep((old) => old.map((one) => (one.act === act ? { ...one, doubts } : one))));
    return bag;
  };
  const addTo = async ({ bag, said, code, box }: BagView, quantity: number): Promise<boolean> => {
    forget();
    const done = await add.run({ kind: 'received', bag, quantity });
    if (!done) return false;
    const one = { act: done.id, bag, ...said, code, box, quantity, about: false, added: true, doubts: [], back: false };
    keep((old) => [one, ...old]);
    return true;
  };
  const back = (done: Undone | null): void => {
    if (done) keep((old) => old.map((one) => (one.act === done.undoes ? { ...one, back: true } : one)));
  };
  return {
    list,
    newest: list.find((one) => !one.back) ?? null,
    take,
    add,
    undo,
    book: async (asking) => {
      forget();
      return booked(await take.run(asking), asking);
    },
    bookAgain: async (asking) => booked(await take.again(), asking),
    addTo,
    takeBack: async (act) => {
      forget();
      back(await undo.run({ act }));
    },
    takeBackAgain: async () => back(await undo.again()),
  };
}

interface Kept {
  readonly list: readonly TakenIn[];
  readonly keep: (change: (list: readonly TakenIn[]) => readonly TakenIn[]) => void;
}

/** The list of this window; a reload keeps it. */
function useTakenIn(): Kept {
  const [list, setList] = useState<readonly TakenIn[]>(() => readTakenIn(sessionStorage));
  const latest = useRef(list);
  return {
    list,
    keep: (change) => {
      latest.current = change(latest.current);
      setList(latest.current);
      keepTakenIn(sessionStorage, latest.current);
    },
  };
}

/** Doubts that a bag keeps, in words; none where they can't be asked for. */
async function doubtsOf(bag: number): Promise<readonly string[]> {
  try {
    const { doubts } = await ask<BagWithHistory>(`/api/bags/${bag}`);
    return doubts.map(({ why }) => why);
  } catch (error) {
    if (error instanceof Unanswered) return [];
    throw error;
  }
}
