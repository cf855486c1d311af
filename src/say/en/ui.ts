/** What the widgets and the frame of every page say. */
import type { SumReading } from '#core/quantity/sum.ts';

export const UI = {
  bag: 'bag ',
  cell: 'cell ',
  readAs: 'Read as: ',
  name: 'Bagatelle',
  skip: 'Skip to the work',
  jobs: 'Jobs',
  more: 'More',
  moreJobs: 'More jobs',
  find: 'Find',
  receive: 'Receive',
  boards: 'Boards',
  kits: 'Kits',
  boxes: 'Boxes',
  stray: 'A stray part',
  history: 'What was done',
  devices: 'Devices',
  keys: 'Keys',
  findOrScan: 'Find',
  tryAgain: 'Try again',
  close: 'Close',
  away: 'The lab does not answer.',
  awayKept: 'What you typed is kept in this window. Try again when it is back.',
  firstBooked:
    'What you sent before had arrived and is booked; this change is not. Look at what stands there now, then do what is still to do.',
  offline: 'The lab machine can’t be heard.',
  offlineKept: 'What you see is from before. Nothing that you typed is lost; the page goes on by itself.',
  demo: 'Demo lab',
  reading: 'Reading…',
  noPage: 'There is no such page.',
  noPageWay: 'Go to Find',
  less: 'Fewer',
  moreOf: 'More',
  fault: 'This page broke off.',
  faultWay: 'Nothing in the lab has changed by it. Load the page again.',
  reload: 'Load again',
} as const;

/** `47 + 31 + 12 = 90` */
export function saySum(terms: readonly number[], total: number): string {
  const written = terms
    .map((term, at) => `${at === 0 ? (term < 0 ? '−' : '') : term < 0 ? ' − ' : ' + '}${figures(Math.abs(term))}`)
    .join('');
  return `${written} = ${figures(total)}`;
}

type WrongSum = Extract<SumReading, { kind: 'wrong' }>['why'];

/** What is wrong with a typed count, and what to type. */
export function saySumWrong(piece: string, why: WrongSum): string {
  switch (why) {
    case 'letter':
      return letterO(piece) ?? `“${piece}” is no whole number. Type figures, or piles with a plus: 47+31.`;
    case 'fraction':
      return `“${piece}” may be a fraction. Type whole pieces, without a point or comma.`;
    case 'below-zero':
      return 'That is less than none. Type what is there.';
    case 'large':
      return 'That is more than a bag can hold.';
    default:
      return piece === '' ? 'A number is missing beside the plus or minus.' : `“${piece}”: put a plus between two piles.`;
  }
}

function letterO(piece: string): string | null {
  const meant = piece.replaceAll(/o/gi, '0').replaceAll(/[li]/gi, '1');
  return /^\d+$/.test(meant) && /[oli]/i.test(piece) ? `“${piece}” has a letter in it. Type ${meant}.` : null;
}

/** Thousands stand apart by a narrow space, from five figures on. */
export function figures(number: number): string {
  const text = String(Math.abs(number));
  const apart = text.length > 4 ? text.replaceAll(/\B(?=(\d{3})+$)/g, '\u202f') : text;
  return number < 0 ? `\u2212${apart}` : apart;
}

/** `1 bag`, `12 bags` */
export function counted(count: number, one: string, many: string): string {
  return `${figures(count)} ${count === 1 ? one : many}`;
}
