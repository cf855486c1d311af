import { useNavigate, useSearch } from '@tanstack/react-router';
import type { KitTakeView, KitView } from '#api/kits.ts';
import { sayAreIn, sayPickedNone, sayPickedSome } from '#say/en/kit-page.ts';
import { kitNow } from '../../lab/answers.ts';
import { useStillHere } from '../../still-here.ts';
import { useKitActs, type KitActs } from './kit-acts.ts';
import {
  afterPick,
  allAtOnce,
  asPlanned,
  cellOf,
  comingStops,
  isOpen,
  namedStop,
  pickOf,
  readSkipped,
  skipStop,
  stopAfter,
  stopName,
  toTake,
  writeSkipped,
  type BoxWalk,
  type Ending,
  type StopPick,
  type StopWords,
} from './walk.ts';

export interface Picking {
  readonly acts: KitActs;
  /** the stop that is meant; null where all is done */
  readonly chosen: KitTakeView | null;
  readonly show: string | undefined;
  readonly to: (take: KitTakeView | null, show?: string) => void;
  readonly planned: () => void;
  readonly put: (quantity: number, ending?: Ending) => void;
  /** the stops of a box that `all` books */
  readonly atOnce: (walk: BoxWalk) => readonly KitTakeView[];
  readonly all: (walk: BoxWalk) => void;
  readonly skip: () => void;
}

/** Picking at the desk: the chosen stop stands in the address. */
export function usePicking(kit: KitView): Picking {
  const words = useSearch({ from: '/kits/$build' });
  const { take: name, show, skipped } = words;
  const passed = readSkipped(skipped);
  const navigate = useNavigate({ from: '/kits/$build' });
  const stillHere = useStillHere();
  const acts = useKitActs(kit.build.id);
  const named = namedStop(kit.takes, name);
  const chosen = named && isOpen(named) ? named : (comingStops(kit.takes, passed)[0] ?? null);
  const to = (take: KitTakeView | null, shown?: string, names = passed): void =>
    void navigate({
      search: {
        ...(names.length > 0 && { skipped: writeSkipped(names) }),
        ...(take && { take: stopName(take) }),
        ...(shown && { show: shown }),
      },
      replace: true,
      resetScroll: false,
    });
  const after = async (take: KitTakeView): Promise<void> => {
    if (!stillHere()) return;
    const next = stopAfter(kitNow(kit.build.id)?.takes ?? kit.takes, take);
    await navigate({ search: (now: StopWords) => afterPick(now, words, next), replace: true, resetScroll: false });
  };
  const book = (says: string, picks: readonly StopPick[], take: KitTakeView): void =>
    void acts.pick(says, picks, () => after(take));
  const atOnce = (walk: BoxWalk): KitTakeView[] => allAtOnce(walk, kit.takes, passed, chosen);
  return {
    acts,
    chosen,
    show,
    to,
    planned: () => {
      if (chosen) book(`${sayAreIn(toTake(chosen), cellOf(kit.takes, chosen))}.`, [asPlanned(chosen)], chosen);
    },
    put: (quantity, ending) => {
      if (!chosen) return;
      const says = quantity === 0 ? sayPickedNone(chosen.bag) : `${sayAreIn(quantity, cellOf(kit.takes, chosen))}.`;
      book(says, [pickOf(chosen, quantity, ending)], chosen);
    },
    atOnce,
    all: (walk) => {
      const open = atOnce(walk);
      const last = open.at(-1);
      const pieces = open.reduce((sum, take) => sum + toTake(take), 0);
      if (last) book(sayPickedSome(pieces, open.length), open.map(asPlanned), last);
    },
    skip: () => {
      if (chosen) to(stopAfter(kit.takes, chosen), undefined, skipStop(passed, chosen));
    },
  };
}
