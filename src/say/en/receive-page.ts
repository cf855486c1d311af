/** What the page says where bags are taken in. */
import { ordinal } from './place-words.ts';
import { counted, figures } from './ui.ts';

export const RECEIVE = {
  number: 'Bag number',
  numberHelp: 'The next free one; write it on the bag.',
  numberNew: 'Write it on the bag.',
  numberWrong: (text: string) => `“${text}” is no number of a bag. Type a whole number from 1.`,
  says: 'What it says',
  saysHelp: 'As printed or written, in any notation: 4k7 1% 0805, 0.1u 50v X7R, M3x8',
  saysMissing: 'Type what the bag says, or what is in it.',
  many: 'How many',
  manyHelp: 'Piles add up: 47+31',
  manyMissing: 'Type how many; 0 where it is empty.',
  about: 'How sure is that?',
  counted: 'counted',
  estimate: 'about',
  estimateHelp: 'Of an estimate, plans promise nothing until it is counted.',
  box: 'Box',
  boxHelp: 'Kept for the bags that follow. A box that is not here yet is made.',
  take: (bag: number | null) => (bag === null ? 'Take it in' : `Take in bag ${bag}`),
  doubtsKept: 'It is taken in as read; the doubt is kept with the bag.',
  taken: (bag: number) => `Number ${bag} is on a bag already.`,
  takenHolds: (name: string, box: string | null, onHand: number) =>
    `It holds ${name}, ${figures(onHand)} on hand${box === null ? '' : `, in box ${box}`}.`,
  addTo: (quantity: number, bag: number) => `Add ${figures(quantity)} to bag ${bag}`,
  addToMany: 'To add to it, type how many.',
  nextFree: (bag: number) => `Take number ${bag} instead`,
  next: 'Next bag',
  loose: 'no box yet',
  drawer: 'Where it goes',
  boxAhead: (box: string) => `Box ${box}`,
  boxNew: (box: string) => `Box ${box} is not here yet; it is made with its first bag.`,
  boxFull: (box: string, places: number) =>
    `Box ${box} has ${places} places, and a bag in each. Type another box, or put it in all the same.`,
  front: (bag: number | null) => (bag === null ? 'front' : `front ${bag}`),
  back: (bag: number | null) => (bag === null ? 'back' : `${bag} back`),
  list: 'Bring a list',
  listWhy: 'Many at once: CSV, TSV, text or a Markdown table. Each column is read back before anything is kept.',
  listDrop: 'Drop the list here, or',
  listChoose: 'Choose a list',
  tookIn: 'Taken in here',
  caption: 'Bags that were taken in on this page, the newest first',
  columns: { bag: 'Bag', what: 'What it is', code: 'Part code', box: 'Box', pieces: 'Pieces', undo: 'Take back' },
  added: 'added',
  about50: (count: number) => `about ${figures(count)}`,
  takeBack: (bag: number) => `Take back bag ${bag}`,
  takeBackShort: 'Take it back',
  takenBack: 'taken back',
  nothing: 'Nothing taken in yet.',
  nothingWhy: 'Bags that you take in stand here, each with its way back.',
  keys: { book: 'book and go on to the next', field: 'to what it says' },
} as const;

interface Newest {
  readonly bag: number;
  readonly name: string;
  readonly quantity: number;
  readonly box: string | null;
  readonly about: boolean;
  readonly added: boolean;
}

/** The page's one sentence: what was taken in last, or which bag is next. */
export function sayReceive(newest: Newest | null, next: number | null, box: string): string {
  if (newest) {
    const { bag, name, quantity, about, added } = newest;
    const many = `${about ? 'about ' : ''}${figures(quantity)}`;
    return added ? `${many} added to bag ${bag}: ${name}.` : `Bag ${bag} is in: ${many} of ${name}.`;
  }
  return next === null ? 'Which bag is next?' : `Bag ${next} is next${box ? `, for box ${box}` : ''}.`;
}

/** `12 bags taken in here.` */
export function sayTookIn(bags: number, next: number | null): string {
  const went = bags > 0 ? `${counted(bags, 'bag', 'bags')} taken in here. ` : '';
  return `${went}${bags > 0 && next !== null ? `Bag ${next} is next.` : 'Type what the bag says; it is read back before it is booked.'}`;
}

/** `the 12th of 60, behind 11` */
export function sayWhere(rank: number, places: number, after: number | null): string {
  const behind = after === null ? 'at the front' : `behind ${after}`;
  return `${behind}, ${ordinal(rank)} of ${places}`;
}
