/** What the page says where leftovers come back. */
import { counted, figures } from './ui.ts';

export const LEFTOVERS = {
  reading: 'Reading what is left over…',
  caption: 'What comes back, cell by cell',
  columns: { cell: 'Cell', refs: 'Refs', what: 'What it is', bag: 'Into bag', came: 'Went in', back: 'Comes back' },
  field: (cell: number, bag: number) => `Pieces from cell ${cell} into bag ${bag}`,
  most: (most: number) => `Only ${figures(most)} went into this cell.`,
  missing: 'Type how many come back; 0 where none does.',
  notSoldered: 'The boards are not booked as soldered yet.',
  notSolderedWhy: 'Say how many were made; then the page knows what should be left over.',
  toKit: 'To the kit',
  others: (cells: number) => `${counted(cells, 'cell', 'cells')} more, from which nothing should be left over`,
  kept: 'What you type stays in this window until it is booked.',
  keys: { take: 'take them back' },
  undo: 'Undo',
  undone: 'Taken back; the pieces lie in the tray again.',
  close: 'The rest was used up or lost: close the kit',
  closed: 'The rest was used up or lost.',
  notOpen: 'There is nothing to take back here.',
} as const;

interface Sum {
  readonly pieces: number;
  readonly bags: number;
}

/** The page's one sentence. */
export function sayLeftovers({ pieces, bags }: Sum, of: number): string {
  if (of === 0) return 'Nothing lies in the tray of this kit.';
  return pieces === 0 ? 'Nothing comes back.' : `${saySum({ pieces, bags })}.`;
}

/** `9 pieces into 6 bags` */
export const saySum = ({ pieces, bags }: Sum): string =>
  `${counted(pieces, 'piece', 'pieces')} into ${counted(bags, 'bag', 'bags')}`;

export const sayTakeBack = (pieces: number): string => `Take ${figures(pieces)} back`;
export const sayExpected = (expected: number): string =>
  expected === 0 ? '' : `${counted(expected, 'piece', 'pieces')} should be left over.`;
