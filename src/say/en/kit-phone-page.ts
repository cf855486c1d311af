/** What the phone at the boxes says. */
import { figures } from './ui.ts';

export const PHONE = {
  title: (name: string, boards: number) => `${name}, ${figures(boards)} ${boards === 1 ? 'board' : 'boards'}`,
  close: 'Back to the kit',
  inBox: 'in box',
  noBox: 'in no box',
  take: 'take',
  into: 'into cell',
  ofTray: (tray: number) => `tray ${tray}`,
  after: 'Then',
  sameBox: 'same box',
  nextBox: (box: string | null) => (box === null ? 'in no box' : `box ${box}`),
  last: 'This is the last one.',
  check: 'Is it the right bag?',
  hand: 'Which bag is in your hand?',
  handGo: 'Look it up',
  handWrong: (text: string) => `“${text}” is no number of a bag. Type a whole number from 1.`,
  right: (bag: number) => `Bag ${bag}, the right one.`,
  wrong: 'Wrong bag.',
  thatIs: 'That is',
  rightIs: 'The right one is',
  unknown: (bag: number) => `No bag has the number ${bag}.`,
  unknownWhy: 'Read the label again.',
  also: (cell: number) => `It is for cell ${cell} of this kit: pick it now`,
  backTo: (box: string | null) => (box === null ? 'It stands in no box.' : `Put it back in box ${box}:`),
  closeHand: (bag: number) => `Go on with bag ${bag}`,
  front: (bag: number) => `front ${bag}`,
  back: (bag: number) => `${bag} back`,
  plain: 'Over plain http the browser gives no camera, so type the number; the page can’t be installed either.',
  done: 'All bags are in the tray.',
  doneTo: 'Done: on to soldering',
  notOpen: 'This kit is not being picked.',
  toKit: 'To the kit',
  goOn: 'Go on with the next bag',
} as const;

/** How far the right bag is from the wrong one: `six bags nearer to the front`. */
export function sayApart(apart: number, bag: number): string {
  const far = Math.abs(apart);
  const bags = far === 1 ? 'one bag' : `${figures(far)} bags`;
  return `${bag} stands ${bags} ${apart < 0 ? 'nearer to the front' : 'further back'}.`;
}
