import { counted, figures } from './ui.ts';

/** What the page of all deeds says. */
export const HISTORY_PAGE = {
  page: 'What was done',
  empty: 'Nothing was done yet.',
  emptyWhy: 'What is received, picked, counted and built stands here, with who did it.',
  why: 'The newest stands first. What was done can be taken back once; the ledger keeps both.',
  columns: { when: 'When', what: 'What', bags: 'Bags', who: 'Who', note: 'For', undo: 'Take back' },
  takeBack: 'Take back',
  takenBack: 'taken back',
  older: 'Show older ones',
  reading: 'Reading what was done…',
} as const;

/** `50 deeds are shown, the newest from today 14:05.` */
export function sayHistory(shown: number, all: boolean): string {
  return all ? `${counted(shown, 'thing was', 'things were')} done in this lab.` : `The last ${shown} things that were done.`;
}

/** `taken back: counted` */
export const sayUndoOf = (deed: string): string => `taken back: ${deed}`;

/** `−3` on hand, with its sign */
export const sayChanged = (pieces: number): string => (pieces > 0 ? `+${figures(pieces)}` : figures(pieces));

export function sayMoreBags(more: number): string {
  return `and ${more} more`;
}

/** What was taken back just now. */
export function sayTookBack(deed: string): string {
  return `Taken back: ${deed}.`;
}
