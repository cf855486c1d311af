import type { BoxPicture } from '#api/bags.ts';
import type { KitAct, KitTakeView } from '#api/kits.ts';
import { CAUTIONS, type Caution } from '#core/kit/cautions.ts';
import type { CellName } from '#say/en/kit-page.ts';
import { unlessMoved } from '../../address.ts';
import { depthOf, type Depth } from '../../ui/depth.ts';
import type { Slot } from '../../ui/slots.tsx';

/** The stops of one box, in the order of the walk. `box` null: bags that stand in no box. */
export interface BoxWalk {
  readonly box: string | null;
  readonly takes: readonly KitTakeView[];
  readonly open: readonly KitTakeView[];
}

export const isOpen = (take: KitTakeView): boolean => take.state === 'open' && take.picked < take.planned;

/** Pieces that are still to go into the cell. */
export const toTake = (take: KitTakeView): number => Math.max(0, take.planned - take.picked);

/** Of the pieces still to take, those above the count: spares are what is left out first. */
export const sparesIn = (take: KitTakeView): number => Math.min(take.spare, toTake(take));

/** How a stop ends where the cell got fewer than planned: the bag gave no more, or no more is wanted. */
export type Ending = 'short' | 'enough';

/** With so many more in its cell a stop lacks nothing but spares. */
export const isEnough = (take: KitTakeView, pieces: number): boolean => take.picked + pieces >= take.planned - take.spare;

/** Pieces that lie in the cell: what came back lies there no more. */
export const lies = ({ picked, returned }: KitTakeView): number => picked - returned;

/** Nothing more is to come into the cell, and its boards lack pieces. */
export const lacks = (take: KitTakeView): boolean => !isOpen(take) && lies(take) < take.planned - take.spare;

/** The cell of a stop as a person names it: with its tray where there are several. */
export function cellOf(takes: readonly KitTakeView[], { cell, tray }: KitTakeView): CellName {
  return { cell, tray: takes.some((other) => other.tray !== tray) ? tray : null };
}

/** Name of a stop in an address: short, and the same for everybody. */
export const stopName = ({ id }: { readonly id: string }): string => id.slice(0, 8);

export interface StopWords {
  readonly take?: string;
  readonly show?: string;
  readonly skipped?: string;
}

/** The words of the address after a pick that was begun at `before`: the next stop, unless another was chosen meanwhile. */
export const afterPick = (now: StopWords, before: StopWords, next: { readonly id: string } | null): StopWords =>
  unlessMoved<StopWords>(now, before, ['take', 'show'], ({ skipped }) => ({
    ...(skipped !== undefined && { skipped }),
    ...(next && { take: stopName(next) }),
  }));

export function namedStop(takes: readonly KitTakeView[], name: string | undefined): KitTakeView | null {
  return (name !== undefined && takes.find((take) => stopName(take) === name)) || null;
}

/** The walk box by box, in the order in which the boxes are opened. */
export function boxWalks(takes: readonly KitTakeView[]): BoxWalk[] {
  const boxes = [...new Set(takes.map(({ box }) => box))];
  return boxes.map((box) => {
    const own = takes.filter((take) => take.box === box);
    return { box, takes: own, open: own.filter(isOpen) };
  });
}

/** Names that were skipped, as the address holds them. */
export const readSkipped = (word: string | undefined): readonly string[] => (word ? word.split('.').filter(Boolean) : []);
export const writeSkipped = (names: readonly string[]): string => names.join('.');

/** Open stops in the order in which they come: as the walk goes, then what was skipped, in the order of skipping. */
export function comingStops(takes: readonly KitTakeView[], skipped: readonly string[] = []): KitTakeView[] {
  const open = takes.filter(isOpen);
  const later = skipped.flatMap((name) => open.filter((take) => stopName(take) === name));
  return [...open.filter((take) => !skipped.includes(stopName(take))), ...later];
}

/** Skipped once more, a stop goes to the very end. */
export function skipStop(skipped: readonly string[], take: KitTakeView): string[] {
  return [...skipped.filter((name) => name !== stopName(take)), stopName(take)];
}

/**
 * The stops of a box that are booked at once: what was skipped stays out, unless it is meant now, or the walk has come round to what
 * was skipped.
 */
export function allAtOnce(
  { open }: Pick<BoxWalk, 'open'>,
  takes: readonly KitTakeView[],
  skipped: readonly string[],
  meant: KitTakeView | null,
): KitTakeView[] {
  const fresh = (take: KitTakeView): boolean => !skipped.includes(stopName(take));
  const round = !takes.some((take) => isOpen(take) && fresh(take));
  return open.filter((take) => round || fresh(take) || take.id === meant?.id);
}

/** The open stop after this one in the walk; from the end back to the front. */
export function stopAfter(takes: readonly KitTakeView[], take: KitTakeView, step: 1 | -1 = 1): KitTakeView | null {
  const at = takes.findIndex(({ id }) => id === take.id);
  const round = step === 1 ? [...takes.slice(at + 1), ...takes.slice(0, at)] : takes.toReversed().slice(takes.length - at);
  const rest = step === 1 ? round : [...round, ...takes.slice(at + 1).toReversed()];
  return rest.find(isOpen) ?? null;
}

/** What the lab is told of one stop. */
export interface StopPick {
  readonly take: string;
  readonly quantity: number;
  readonly short?: true;
  readonly enough?: true;
  readonly saw: number;
}

export const asPlanned = (take: KitTakeView): StopPick => ({ take: take.id, quantity: toTake(take), saw: take.picked });

/** So many went in; without an ending the rest comes later. */
export function pickOf(take: KitTakeView, quantity: number, ending?: Ending): StopPick {
  return { take: take.id, quantity, saw: take.picked, ...(ending && { [ending]: true }) };
}

/** A look into the box: today's bags stand out, the one that is meant most. */
export function slotsOf(box: BoxPicture, takes: readonly KitTakeView[], meant: number | null): Slot[] {
  const todo = new Set(takes.filter(isOpen).map(({ bag }) => bag));
  const got = new Set(takes.map(({ bag }) => bag));
  const stand = box.bags.map(({ bag, standing }): Slot => {
    if (bag === meant) return 'hit';
    if (todo.has(bag)) return 'todo';
    if (got.has(bag)) return 'got';
    return standing === 'holds' ? 'live' : 'empty';
  });
  return [...stand, ...Array.from({ length: Math.max(0, box.places - stand.length) }, (): Slot => 'free')];
}

export type HandAnswer =
  | { readonly kind: 'right' }
  | { readonly kind: 'unknown'; readonly bag: number }
  | {
      readonly kind: 'wrong';
      readonly bag: number;
      readonly box: string | null;
      readonly depth: Depth | null;
      /** bags from it to the right one in the same box; below zero: nearer to the front */
      readonly apart: number | null;
      /** it is another stop of this kit that is still open */
      readonly also: KitTakeView | null;
    };

/** What a bag in the hand is, when another may be meant. */
export function handAnswer(
  bag: number,
  take: KitTakeView,
  takes: readonly KitTakeView[],
  boxes: readonly BoxPicture[],
  loose: readonly { readonly bag: number }[],
): HandAnswer {
  if (bag === take.bag) return { kind: 'right' };
  const box = boxes.find(({ bags }) => bags.some((one) => one.bag === bag));
  if (!box && !loose.some((one) => one.bag === bag)) return { kind: 'unknown', bag };
  const depth = box ? depthOf(box.bags, bag) : null;
  const right = box && box.name === take.box ? depthOf(box.bags, take.bag) : null;
  const apart = depth && right ? right.rank - depth.rank : null;
  return {
    kind: 'wrong',
    bag,
    box: box?.name ?? null,
    depth,
    apart,
    also: takes.find((one) => one.bag === bag && isOpen(one)) ?? null,
  };
}

/** The latest pick of the kit that is not undone; anybody's. */
export function lastPick(acts: readonly KitAct[]): KitAct | null {
  return acts.find((act) => act.kind === 'picked-for-build' && act.undoes === null && act.undoneBy === null) ?? null;
}

/** The latest thing done with the kit, if it can be taken back. */
export function lastAct(acts: readonly KitAct[], ...kinds: readonly string[]): KitAct | null {
  const last = acts.find(({ undoes, undoneBy }) => undoes === null && undoneBy === null) ?? null;
  return last && kinds.includes(last.kind) ? last : null;
}

/** Who picked this stop, where it was another than one of these acts. */
export function pickedBy(acts: readonly KitAct[], take: KitTakeView, mine: ReadonlySet<string>): KitAct | null {
  const act =
    acts.find(
      (one) => one.kind === 'picked-for-build' && one.undoes === null && one.undoneBy === null && one.takes.includes(take.id),
    ) ?? null;
  return act && !mine.has(act.act) ? act : null;
}

/** A cell of a tray with all that goes into it: bags of one line share its cell. */
export interface TrayCell {
  readonly cell: number;
  readonly takes: readonly KitTakeView[];
  readonly state: 'in' | 'next' | 'waiting';
}
export interface Tray {
  readonly tray: number;
  readonly cells: readonly TrayCell[];
}

export function traysOf(takes: readonly KitTakeView[], next: KitTakeView | null): Tray[] {
  const trays = [...new Set(takes.map(({ tray }) => tray))].toSorted((a, b) => a - b);
  return trays.map((tray) => {
    const own = takes.filter((take) => take.tray === tray);
    const cells = [...new Set(own.map(({ cell }) => cell))].toSorted((a, b) => a - b);
    return {
      tray,
      cells: cells.map((cell): TrayCell => {
        const inIt = own.filter((take) => take.cell === cell);
        const state = inIt.some(({ id }) => id === next?.id) ? 'next' : inIt.some(isOpen) ? 'waiting' : 'in';
        return { cell, takes: inIt, state };
      }),
    };
  });
}

export interface FewerCell {
  readonly where: CellName;
  readonly lies: number;
  readonly planned: number;
}

/** Cells that got fewer than planned, so that boards lack pieces; a spare that is missing is none. */
export function fewerCells(takes: readonly KitTakeView[]): FewerCell[] {
  const sum = (of: readonly KitTakeView[], what: (take: KitTakeView) => number): number =>
    of.reduce((all, take) => all + what(take), 0);
  return traysOf(takes, null)
    .flatMap(({ cells }) => cells)
    .filter(({ takes: own }) => sum(own, lies) < sum(own, ({ planned, spare }) => planned - spare))
    .flatMap(({ takes: own }) => {
      const [first] = own;
      if (!first) return [];
      return [{ where: cellOf(takes, first), lies: sum(own, lies), planned: sum(own, ({ planned }) => planned) }];
    });
}

/** Bags that hold nothing once all that is open is picked. */
export function emptiedBags(takes: readonly KitTakeView[]): number[] {
  const want = new Map<number, { onHand: number; open: number }>();
  for (const take of takes.filter(isOpen)) {
    const so = want.get(take.bag) ?? { onHand: take.onHand, open: 0 };
    want.set(take.bag, { onHand: so.onHand, open: so.open + toTake(take) });
  }
  return [...want].filter(([, { onHand, open }]) => open >= onHand).map(([bag]) => bag);
}

/** What is to be minded with the kit: each caution of its parts once, in the order in which they are said. */
export function cautionsOf(takes: readonly { readonly cautions: readonly Caution[] }[]): Caution[] {
  return CAUTIONS.filter((caution) => takes.some(({ cautions }) => cautions.includes(caution)));
}
