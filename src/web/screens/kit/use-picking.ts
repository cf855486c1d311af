import { useNavigate, useSearch } from '@tanstack/react-router';
import type { KitTakeView, KitView } from '#api/kits.ts';
import { sayAreIn, sayPickedNone, sayPickedSome } from '#say/en/kit-page.ts';
import { kitNow } from '../../lab/answers.ts';
import { useStillHere } from '../../still-here.ts';
import { useKitActs, type KitActs } from './kit-acts.ts';
import {
  afterPick,
  asPlanned,
  cellOf,
  comingStops,
  isOpen,
  namedStop,
  pickOf,
  stopAfter,
  stopName,
  toTake,
  type BoxWalk,
  type StopWords,
} from './walk.ts';

export interface Picking {
  readonly acts: KitActs;
  /** the stop that is meant; null where all is done */
  readonly chosen: KitTakeView | null;
  readonly show: string | undefined;
  readonly to: (take: KitTakeView | null, show?: string) => void;
  readonly planned: () => void;
  readonly put: (quantity: number, short: boolean) => void;
  readonly all: (walk: BoxWalk) => void;
  readonly skip: () => void;
}

/** Picking at the desk: the chosen stop stands in the address. */
export function usePicking(kit: KitView): Picking {
  const words = useSearch({ from: '/kits/$build' });
  const { take: name, show } = words;
  const navigate = useNavigate({ from: '/kits/$build' });
  const stillHere = useStillHere();
  const acts = useKitActs(kit.build.id);
  const named = namedStop(kit.takes, name);
  const chosen = named && isOpen(named) ? named : (comingStops(kit.takes)[0] ?? null);
  const to = (take: KitTakeView | null, shown?: string): void =>
    void navigate({
      search: { ...(take && { take: stopName(take) }), ...(shown && { show: shown }) },
      replace: true,
      resetScroll: false,
    });
  const after = async (booked: Promise<boolean>, take: KitTakeView): Promise<void> => {
    if (!(await booked) || !stillHere()) return;
    const next = stopAfter(kitNow(kit.build.id)?.takes ?? kit.takes, take);
    await navigate({ search: (now: StopWords) => afterPick(now, words, next), replace: true, resetScroll: false });
  };
  return {
    acts,
    chosen,
    show,
    to,
    planned: () => {
      if (chosen) void after(acts.pick(`${sayAreIn(toTake(chosen), cellOf(kit.takes, chosen))}.`, [asPlanned(chosen)]), chosen);
    },
    put: (quantity, short) => {
      if (!chosen) return;
      const says = quantity === 0 ? sayPickedNone(chosen.bag) : `${sayAreIn(quantity, cellOf(kit.takes, chosen))}.`;
      void after(acts.pick(says, [pickOf(chosen, quantity, short)]), chosen);
    },
    all: ({ open }) => {
      const last = open.at(-1);
      const pieces = open.reduce((sum, take) => sum + toTake(take), 0);
      if (last) void after(acts.pick(sayPickedSome(pieces, open.length), open.map(asPlanned)), last);
    },
    skip: () => {
      if (chosen) to(stopAfter(kit.takes, chosen));
    },
  };
}
