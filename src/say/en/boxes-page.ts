import { counted, figures } from './ui.ts';

/** What the page of boxes says. */
export const BOXES_PAGE = {
  reading: 'Looking at the boxes…',
  none: 'No box stands here yet.',
  noneWhy: 'A box is made with the first bag that names it.',
  receive: 'Take a bag in',
  stands: 'How do they stand?',
  beside: 'side by side',
  stacked: 'in a stack',
  besideHead: 'The boxes, as they stand',
  stackedHead: 'The stack, as it stands',
  front: 'front of each box at left',
  lifts: 'A box under others costs lifts; the walk of a kit knows it.',
  upOf: (box: string) => `Move box ${box} up`,
  downOf: (box: string) => `Move box ${box} down`,
  leftOf: (box: string) => `Move box ${box} to the left`,
  rightOf: (box: string) => `Move box ${box} to the right`,
  to: 'to',
  empty: 'no bag',
  open: (box: string) => `What is in box ${box}`,
  undo: 'Undo',
  arranged: 'The boxes stand anew.',
  unarranged: 'They stand as before.',
  loose: 'Without a box',
  looseWhy: 'Bags whose place is in words, or that have none yet.',
  noPlace: 'no place said',
  exhausted: 'exhausted',
  astray: 'astray',
  close: 'Close',
  columns: { bag: 'Bag', what: 'What it is', code: 'Part code', onHand: 'On hand' },
  nowhere: 'There is no such box.',
  keys: { row: 'look into a box', number: 'look into the box of that bag', close: 'close' },
} as const;

/** `258 bags in 5 boxes. Box E has room for 42 more.` */
export function sayBoxes(bags: number, boxes: number): string {
  return `${counted(bags, 'bag', 'bags')} in ${counted(boxes, 'box', 'boxes')}.`;
}

export function sayRoom(rooms: readonly { readonly name: string; readonly room: number }[]): string {
  const roomiest = rooms.toSorted((a, b) => b.room - a.room)[0];
  if (!roomiest) return '';
  if (roomiest.room === 0) return 'All of them are full; the next bag opens a new box.';
  const others = rooms.filter(({ name, room }) => room > 0 && name !== roomiest.name).reduce((sum, { room }) => sum + room, 0);
  return `Box ${roomiest.name} has room for ${figures(roomiest.room)} more${others > 0 ? `, the others for ${figures(others)} together` : ''}.`;
}

/** `51 of 60 places filled, 9 exhausted` */
export function sayFill(filled: number, places: number, exhausted: number, astray: number): string {
  return [
    `${figures(filled)} of ${figures(Math.max(places, filled))} places filled`,
    exhausted > 0 ? `${figures(exhausted)} exhausted` : '',
    astray > 0 ? `${figures(astray)} astray` : '',
  ]
    .filter(Boolean)
    .join(', ');
}

export function sayBoxPicture(name: string, filled: number, places: number): string {
  return `Box ${name} from above: ${figures(filled)} of ${figures(Math.max(places, filled))} places filled`;
}

export const sayFront = (bag: number | undefined): string => (bag === undefined ? 'front' : `front ${bag}`);
export const sayBack = (bag: number | undefined): string => (bag === undefined ? 'back' : `${bag} back`);
export const sayBoxTitle = (name: string): string => (/^box\b/i.test(name) ? name : `Box ${name}`);
export const sayExhaustedPlaces = (bags: readonly number[]): string =>
  bags.length === 0
    ? 'No place in it is exhausted.'
    : `${counted(bags.length, 'place is', 'places are')} exhausted: the numbers stay with their parts.`;

export const sayNext = (number: number): string => `next number ${number}`;
export const sayShowAll = (more: number): string => `Show ${figures(more)} more`;
