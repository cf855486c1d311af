/** What the drawer of a bag says. */
import { deedName } from './acts.ts';
import { figures } from './ui.ts';
import { sayBoxName, sayDepth, sayRank, type StandsAt } from './place-words.ts';

export const BAG_DRAWER = {
  back: 'Back to the list',
  reading: (bag: number) => `Reading bag ${bag}…`,
  written: 'Written on it',
  onHand: 'On hand',
  sure: 'Sure of it',
  reservedFor: 'Reserved for',
  free: 'Free',
  alike: 'Same part in',
  usedOn: 'Used on',
  toCount: 'To count',
  toCountWhy: 'its record and the shelf may disagree.',
  pick: 'Pick',
  takeBack: 'Return',
  count: 'Count',
  note: 'Note, if there is something to say',
  howMany: 'How many',
  counted: 'How many are in it',
  sumHelp: 'Piles add up: 47+31+12',
  book: { pick: 'Book the pick', return: 'Book the return', count: 'Book the count' },
  leave: 'Do not book',
  inHand: 'I have them in my hand',
  needed: 'Type how many.',
  movements: 'Movements',
  columns: { day: 'Day', what: 'Movement', pieces: 'Pieces', left: 'Left', for: 'For, by', undo: 'Undo' },
  takenBack: 'undone',
  undo: 'Undo',
  countAgain: 'Count from now',
  keys: { pick: 'pick', back: 'return', count: 'count', undo: 'undo', close: 'close' },
  ofBag: (bag: number) => `Bag ${bag}`,
  noBag: (bag: number) => `There is no bag ${bag}.`,
  noBagWay: 'Look for its part by value, or take it in.',
  takeIn: 'Take a bag in',
  noMovements: 'Nothing was ever booked on it.',
  older: (more: number) => `Show ${more} older`,
} as const;

/** How a bag stands, where that is not just sound. */
const STATES: Readonly<Record<string, { readonly word: string; readonly why: string }>> = {
  astray: { word: 'Astray', why: 'it was looked for and not found; plans leave it out until it turns up.' },
  salvaged: { word: 'Salvaged', why: 'its parts were used before; plans ask before they take them.' },
  mixed: { word: 'Mixed', why: 'it may hold more than one part; plans ask before they take them.' },
  expired: { word: 'Expired', why: 'its shelf life is over; plans ask before they take them.' },
};

export const sayState = (state: string): { readonly word: string; readonly why: string } | null => STATES[state] ?? null;

interface Moved {
  readonly kind: string;
  readonly delta: number;
  readonly onHand: number;
}

/** `picked 3`, `counted 40` */
export function sayMoved({ kind, delta, onHand }: Moved): string {
  return `${deedName(kind)} ${figures(kind === 'counted' ? onHand : Math.abs(delta))}`;
}

export const sayUndo = (moved: Moved, when: string): string => `Undo: ${sayMoved(moved)}, ${when}`;

/** `+3`, `−22`, `0` */
export const saySigned = (delta: number): string => (delta > 0 ? `+${figures(delta)}` : figures(delta));

export const sayMovedMeanwhile = (moved: string): string =>
  `It moved while you counted: ${moved}. The count is booked as of before that.`;

/** `Box B, 54th of 60` */
export const sayStands = (box: string, at: StandsAt): string => `${sayBoxName(box)}, ${sayRank(at)}`;

/** `near the back, after 113` */
export const sayAfter = (at: StandsAt, after: number | null): string =>
  after === null ? sayDepth(at) : `${sayDepth(at)}, after ${after}`;

/** The picture of the box in a sentence. */
export const sayLook = (box: string, bag: number, at: StandsAt): string =>
  `${sayBoxName(box)} from above: bag ${bag} is ${sayRank(at)}, ${sayDepth(at)}`;

export const sayPlaceOf = (box: string | null, place: string | null): string =>
  [box === null ? 'In no box' : sayBoxName(box), place].filter((word) => word !== null).join(', ');
