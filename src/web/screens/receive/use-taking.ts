import { useRef, useState } from 'react';
import type { BagWithHistory, NewBag, NewBagRequest } from '#api/bags.ts';
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
  readonly addTo: (bag: number, quantity: number) => Promise<boolean>;
  readonly takeBack: (act: string) => Promise<void>;
}

/** Takes bags in one by one, and keeps the list of them for this window. */
export function useTaking(): Taking {
  const take = useAct<Asking, NewBag>('/api/bags');
  const add = useAct<Adding, Movement>('/api/movements');
  const undo = useAct<{ readonly act: string }, Undone>('/api/undo');
  const [list, setList] = useState<readonly TakenIn[]>(() => readTakenIn(sessionStorage));
  const keep = (change: (list: readonly TakenIn[]) => readonly TakenIn[]): void =>
    setList((old) => {
      const now = change(old);
      keepTakenIn(sessionStorage, now);
      return now;
    });
  const booked = async (done: NewBag | null, asking: Asking): Promise<number | null> => {
    if (!done) return null;
    const { said, code, box, bag } = done;
    const { quantity, about = false } = asking;
    const one = { act: done.id, bag, ...said, code, box, quantity, about, added: false, back: false };
    const doubts = await doubtsOf(bag);
    keep((old) => [{ ...one, doubts }, ...old]);
    return bag;
  };
  const adding = useRef('');
  const addTo = async (bag: number, quantity: number): Promise<boolean> => {
    const same = adding.current === `${bag} ${quantity}` && add.trouble?.kind === 'away';
    adding.current = `${bag} ${quantity}`;
    // the answer did not come, but the act may have: the same act again is harmless
    const done = await (same ? add.again() : add.run({ kind: 'received', bag, quantity }));
    if (!done) return false;
    const { said, code, box } = await ask<BagWithHistory>(`/api/bags/${bag}`);
    keep((old) => [
      { act: done.id, bag, ...said, code, box, quantity, about: false, added: true, doubts: [], back: false },
      ...old,
    ]);
    return true;
  };
  const takeBack = async (act: string): Promise<void> => {
    if (await undo.run({ act })) keep((old) => old.map((one) => (one.act === act ? { ...one, back: true } : one)));
  };
  return {
    list,
    newest: list.find(({ back }) => !back) ?? null,
    take,
    add,
    undo,
    book: async (asking) => booked(await take.run(asking), asking),
    bookAgain: async (asking) => booked(await take.again(), asking),
    addTo,
    takeBack,
  };
}

/** Doubts that a bag keeps, in words; the booking stands whether they can be asked for or not. */
async function doubtsOf(bag: number): Promise<readonly string[]> {
  try {
    const { doubts } = await ask<BagWithHistory>(`/api/bags/${bag}`);
    return doubts.map(({ why }) => why);
  } catch (error) {
    if (error instanceof Unanswered) return [];
    throw error;
  }
}
