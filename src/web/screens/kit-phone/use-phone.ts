import { useNavigate, useSearch } from '@tanstack/react-router';
import { useState } from 'react';
import type { KitTakeView, KitView } from '#api/kits.ts';
import { sayAreIn, sayMade, sayMeanwhile, sayPickedNone, sayPickedSome } from '#say/en/kit-page.ts';
import { useStillHere } from '../../still-here.ts';
import { useKitActs, type KitActs } from '../kit/kit-acts.ts';
import {
  allAtOnce,
  asPlanned,
  cellOf,
  isOpen,
  pickedBy,
  pickOf,
  readSkipped,
  skipStop,
  toTake,
  writeSkipped,
  type Ending,
  type StopPick,
} from '../kit/walk.ts';
import { afterBooking, standOf, type PhoneStand, type PhoneWords } from './phone.ts';

export interface Phone extends PhoneStand {
  readonly kit: KitView;
  readonly words: PhoneWords;
  readonly acts: KitActs;
  /** another picked what stood here a moment ago */
  readonly meanwhile: string | null;
  readonly to: (words: PhoneWords) => void;
  /** to another stop: what was said of this one goes */
  readonly leave: (words: PhoneWords) => void;
  readonly planned: () => void;
  readonly put: (quantity: number, ending?: Ending) => void;
  /** the stops of this box that `allOfBox` books */
  readonly atOnce: readonly KitTakeView[];
  readonly allOfBox: () => void;
  readonly skip: () => void;
  readonly finish: (made: number) => void;
}

/** Picking at the boxes; the stop, what is skipped and what is open stand in the address. */
export function usePhone(kit: KitView): Phone {
  const words = useSearch({ from: '/kits/$build/pick' });
  const navigate = useNavigate({ from: '/kits/$build/pick' });
  const stillHere = useStillHere();
  const acts = useKitActs(kit.build.id);
  const stand = standOf(kit.takes, words);
  const { stop } = stand;
  const meanwhile = useMeanwhile(kit, stop, acts);
  const { skipped } = words;
  const to = (next: PhoneWords): void =>
    void navigate({ search: { ...(skipped && { skipped }), ...next }, replace: true, resetScroll: false });
  const onward = async (): Promise<void> => {
    if (stillHere()) await navigate({ search: (now: PhoneWords) => afterBooking(now, words), replace: true, resetScroll: false });
  };
  const book = async (says: string, picks: readonly StopPick[]): Promise<void> => {
    if (!acts.busy) await acts.pick(says, picks, onward);
  };
  const leave = (next: PhoneWords): void => {
    acts.forget();
    to(next);
  };
  const open = kit.takes.filter((take) => take.box === stop?.box && isOpen(take));
  const atOnce = allAtOnce({ open }, kit.takes, readSkipped(skipped), stop);
  return {
    ...stand,
    kit,
    words,
    acts,
    meanwhile,
    to,
    leave,
    atOnce,
    planned: () => {
      if (stop) void book(`${sayAreIn(toTake(stop), cellOf(kit.takes, stop))}.`, [asPlanned(stop)]);
    },
    put: (quantity, ending) => {
      if (!stop) return;
      const says = quantity === 0 ? sayPickedNone(stop.bag) : `${sayAreIn(quantity, cellOf(kit.takes, stop))}.`;
      void book(says, [pickOf(stop, quantity, ending)]);
    },
    allOfBox: () => {
      const pieces = atOnce.reduce((sum, take) => sum + toTake(take), 0);
      void book(sayPickedSome(pieces, atOnce.length), atOnce.map(asPlanned));
    },
    skip: () => {
      if (stop) leave({ skipped: writeSkipped(skipStop(readSkipped(skipped), stop)) });
    },
    finish: (made) => {
      const on = async (): Promise<void> => {
        if ((await acts.finish(sayMade, made)) && stillHere())
          await navigate({ to: '/kits/$build/leftovers', params: { build: kit.build.id }, search: {} });
      };
      void on();
    },
  };
}

/** Says who picked the stop that stood here, where that was another. */
function useMeanwhile(kit: KitView, stop: KitTakeView | null, acts: KitActs): string | null {
  const [seen, setSeen] = useState<{ readonly now: string | null; readonly before: string | null }>({
    now: stop?.id ?? null,
    before: null,
  });
  const id = stop?.id ?? null;
  if (seen.now !== id) setSeen({ now: id, before: seen.now });
  if (acts.busy) return null;
  const watched = [seen.before, id].flatMap((one) => kit.takes.filter((take) => take.id === one && !isOpen(take)));
  for (const take of watched) {
    const act = pickedBy(kit.acts, take, acts.mine);
    if (act) return sayMeanwhile(take.bag, act.who);
  }
  return null;
}
