/** What the drawer of one line of a board says, and how far the lines reach. */
import { counted, figures } from './ui.ts';

export const BOARD_LINE = {
  back: 'Back to the lines',
  reading: 'Reading the line…',
  says: 'The BOM says',
  readAs: 'read as',
  points: { point: 'Point', asks: 'BOM asks', verdict: 'Verdict' },
  notGiven: 'not given',
  bag: (bag: number): string => `Bag ${bag}`,
  caption: (row: number, bag: number): string => `What line ${row} asks and what bag ${bag} is`,
  nothing: 'No bag comes near it.',
  nothingWay: 'Choose any bag by its number, or fit the line later.',
  why: 'Why',
  doubts: 'In doubt on the line',
  accept: (bag: number): string => `Accept bag ${bag}`,
  takeInstead: (bag: number): string => `Take bag ${bag}`,
  takeAnyway: (bag: number): string => `Take bag ${bag} all the same`,
  otherBag: 'Other bag',
  hideOthers: 'Not this bag',
  takeBack: 'Take the choice back',
  later: 'Fit later',
  again: 'Fit again',
  reason: 'Why it is taken all the same',
  reasonHelp: 'Kept with the choice and shown on this line',
  reasonWanted: 'It does not serve by the facts. Say why first.',
  others: 'Other bags',
  othersCaption: (row: number): string => `Other bags for line ${row}`,
  noOthers: 'No other bag answers it or comes near.',
  byNumber: 'Bag by its number',
  byNumberHelp: 'Any bag; it is put beside the line before you take it',
  look: 'Look at it',
  noSuchNumber: (text: string): string => `“${text}” is no bag number. Type the number on the bag.`,
  free: 'Free',
  holds: 'It holds',
  chosen: 'chosen',
  undo: 'Undo',
  undone: 'Taken back. It stands as before.',
  notFitted: 'The BOM leaves it off; nothing is taken for it.',
  reach: 'How many boards each line reaches',
  reachNone: 'No line needs a part.',
  toReach: (boards: number): string => `To reach ${figures(boards)}`,
  toReachCaption: (boards: number): string => `What lacks for ${counted(boards, 'board', 'boards')}`,
} as const;

/** The first two reasons; the drawer of the bag beside the line has them all. */
export function sayFirstReasons(because: readonly string[]): string {
  const more = because.length - 2;
  return because.slice(0, 2).join('; ') + (more > 0 ? `; and ${more} more` : '');
}

export const sayLine = (row: number, refs: string): string => (refs === '' ? `Line ${row}` : `Line ${row}: ${refs}`);

type Done =
  | { readonly kind: 'accepted' | 'taken'; readonly bag: number; readonly row: number }
  | { readonly kind: 'freed' | 'later' | 'again'; readonly row: number };

/** What was just done, for the note that offers to undo it. */
export function sayDone(done: Done): string {
  switch (done.kind) {
    case 'accepted':
      return `Bag ${done.bag} is accepted for line ${done.row}.`;
    case 'taken':
      return `Bag ${done.bag} is taken for line ${done.row}.`;
    case 'freed':
      return `The choice for line ${done.row} is taken back.`;
    case 'later':
      return `Line ${done.row} is fitted later.`;
    default:
      return `Line ${done.row} is fitted again.`;
  }
}

/** Under the bars: what the upright is, and how far the rest reaches. */
export function sayReach(boards: number, rest: number | null, hatched: boolean): string {
  return [
    `The upright line is the ${figures(boards)} you asked for.`,
    ...(hatched ? ['Hatched: stops short of it.'] : []),
    ...(rest === null ? [] : [`Every other line reaches ${figures(rest)} or more.`]),
  ].join(' ');
}

/** Under what lacks, where not all of it is shown. */
export const sayMoreLacks = (more: number): string =>
  `${counted(more, 'more line is', 'more lines are')} short; the table has all of them.`;
