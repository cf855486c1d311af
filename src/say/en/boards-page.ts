/** What the list of boards says. */
import { counted, figures } from './ui.ts';

export const BOARDS_PAGE = {
  reading: 'Reading the boards…',
  none: 'No board is kept yet.',
  noneWhy: 'A board is a BOM that the lab has read. Bring one: CSV, TSV, text or a spreadsheet’s export.',
  bring: 'Bring a BOM',
  bringZone: 'A BOM from the clipboard',
  bringLead: 'Drop a BOM here, or anywhere on this page',
  bringing: (name: string): string => `Reading ${name}…`,
  dropHere: 'Let go to read the BOM',
  again: 'Read it again',
  caption: 'Boards, with what can be built now',
  columns: {
    board: 'Board',
    revision: 'Revision',
    lines: 'Lines',
    built: 'Last built',
    open: 'Kits open',
    can: 'Can build',
    limited: 'Limited by',
  },
  fold: { lines: 'lines', built: 'last built', can: 'can build', limited: 'limited by' },
  groups: { open: 'With a kit open', built: 'Built before', never: 'Never built' },
  never: 'never',
  cannot: 'none',
  waiting: '…',
  line: 'line',
  moreLimits: (more: number): string => `and ${more} more`,
  keys: { row: 'board', open: 'open its lines' },
  drawer: 'The chosen board',
  chosen: 'Chosen board',
  openLines: 'Open its lines',
  goOn: (name: string): string => `Go on with ${name}`,
  revisions: 'Revisions',
  revisionsCaption: (board: string): string => `Revisions of ${board}`,
  revisionColumns: { revision: 'Revision', since: 'Since', lines: 'Lines', source: 'From' },
  builds: 'Boards built, by kit',
  noBuilds: 'No kit was made for it yet.',
  state: { planned: 'planned', reserved: 'reserved', picking: 'under way' },
} as const;

/** The page's one sentence. */
export function sayBoards(all: number, can: number | null): string {
  if (all === 0) return BOARDS_PAGE.none;
  if (can === null) return `${counted(all, 'board', 'boards')}.`;
  if (can === 0) return all === 1 ? 'It can’t be built now.' : `None of the ${figures(all)} boards can be built now.`;
  return can === all
    ? `${all === 1 ? 'The one board' : `All ${figures(all)} boards`} can be built now.`
    : `${figures(can)} of ${counted(all, 'board', 'boards')} can be built now.`;
}

export const SAY_WORKING_OUT = 'Working out how many of each can be built…';
export const SAY_EACH_ALONE = 'Each reckoned alone, from what is free.';

/** `3, or more` */
export const sayBuildable = (boards: number, most: boolean): string => `${figures(boards)}${most ? ' or more' : ''}`;

export const sayRevision = (name: string): string => `rev ${name}`;

export const sayKits = (name: string, boards: number): string => `${name} (${figures(boards)})`;
