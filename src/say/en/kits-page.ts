import { counted, figures } from './ui.ts';

/** What the list of kits, and the sheet for the trays, say. */
export const KITS_PAGE = {
  reading: 'Reading the kits…',
  page: 'Kits',
  none: 'No kit is open.',
  noneWhy: 'A kit is planned from the lines of a board.',
  plan: 'Plan a kit',
  carryOn: (name: string) => `Carry on with ${name}`,
  groups: { open: 'Open', leftovers: 'Soldered, leftovers not yet taken back', soldered: 'Soldered', closed: 'Given up' },
  groupWhy: { open: 'the most urgent first', leftovers: '', soldered: 'the newest first', closed: '' },
  columns: { kit: 'Kit', board: 'Boards', state: 'State', since: 'Since', know: 'What to know', cells: 'Picked' },
  states: {
    planned: 'planned',
    reserved: 'to pick',
    picking: 'picking',
    built: 'soldered',
    cancelled: 'given up',
    undone: 'taken back',
  },
  leftovers: 'Take leftovers back',
  planKeeps: 'no bag is promised to it yet',
  due: (day: string) => `wanted by ${day}`,
  keys: { row: 'kit', open: 'open' },
  sheet: 'Tray sheet',
  sheetWhy: 'Lay the printed tray under the cells, or cut it up. The bar must measure 100 mm: print at full size.',
  print: 'Print',
  back: 'Back to the kit',
  bar: '100 mm',
  route: 'The walk',
  soldering: 'Cells run in soldering order. This edge towards you, cell 1 is far left.',
  columnsRoute: { bag: 'Bag', what: 'What it is', take: 'Take', cell: 'Cell', done: 'In' },
  nothing: 'This kit has no cells yet.',
  nothingWhy: 'Promise its bags first; then each gets its cell.',
} as const;

/** `Two kits are open: …` */
export function sayKits(open: readonly { readonly name: string; readonly state: string }[], soldered: number): string {
  const picking = open.filter(({ state }) => state === 'picking');
  if (open.length === 0) return soldered > 0 ? 'No kit is open.' : KITS_PAGE.none;
  const [one] = picking.length > 0 ? picking : open;
  const which = picking.length > 0 ? `${one?.name ?? ''} is being picked` : `${one?.name ?? ''} comes first`;
  return open.length === 1 ? `One kit is open: ${which}.` : `${figures(open.length)} kits are open: ${which}.`;
}

export function sayMadeOf(made: number | null, boards: number): string {
  if (made === null) return counted(boards, 'board', 'boards');
  return made === boards ? counted(boards, 'board', 'boards') : `${figures(made)} of ${counted(boards, 'board', 'boards')}`;
}

/** `29 of 31` */
export const sayPicked = (picked: number, all: number): string => (all === 0 ? '' : `${figures(picked)} of ${figures(all)}`);
export const sayLeft = (left: number): string => `${counted(left, 'piece lies', 'pieces lie')} in its cells`;
export const sayBack = (returned: number): string => (returned === 0 ? '' : `${counted(returned, 'piece', 'pieces')} came back`);
export const sayShortPieces = (short: number): string => (short === 0 ? '' : `${counted(short, 'piece', 'pieces')} short`);
export const saySheetTitle = (name: string, boards: number): string => `${name}: ${counted(boards, 'board', 'boards')}`;
export const sayTrayOf = (tray: number, trays: number): string => (trays === 1 ? 'Tray' : `Tray ${tray} of ${trays}`);
