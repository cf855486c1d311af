/** What the page says that reads a list or a BOM back before anything of it is kept. */
import { counted, figures } from './ui.ts';

export const DRAFT = {
  another: 'Another file',
  nothingKept: {
    list: 'No bag is made before you say so; what you told of it is kept under Receive until you come back.',
    bom: 'No board is kept before you say so; what you told of it is kept under Boards until you come back.',
  },
  columns: 'What each column holds',
  columnsHelp: 'read from what stands in it; change it here',
  fileLabel: 'The file, its first lines',
  fileCaption: 'Columns of the file, what each was taken for, and its first lines',
  columnHolds: (column: number, header: string) =>
    header ? `Column ${column}, headed “${header}”, holds` : `Column ${column} holds`,
  columnNameless: (column: number) => `column ${column}`,
  moreLines: (count: number) => counted(count, 'more line', 'more lines'),
  sure: { sure: 'sure', likely: 'likely', check: 'check', told: 'as you said', kept: 'kept' },
  rowsCaption: 'Lines as they were read',
  line: 'Line',
  refs: 'Refs',
  bag: 'Bag',
  read: 'Written, and how it was read',
  each: 'On a board',
  pieces: 'Pieces',
  box: 'Box',
  reading: 'Reading',
  noBox: 'no box',
  uncounted: 'to count',
  notFitted: 'not fitted',
  clear: 'clear',
  check: 'check',
  unread: 'not read',
  told: 'as you said',
  out: 'left out',
  noPart: 'no part',
  say: 'Say what it is',
  sayWhole: 'Say the part anew',
  readAs: 'Read as',
  about: (count: number) => `about ${figures(count)}`,
  chooseLine: (row: number) => `Line ${row}`,
  sayKeep: 'That is it',
  sayClose: 'Close',
  leaveOut: 'Leave the line out',
  takeIn: 'Take it in again',
  askAgain: 'Ask again',
  youSaid: (text: string | null) => (text === null ? 'You said: right as it was read.' : `You said: ${text}.`),
  whichBoard: 'Which board is it?',
  board: 'Board',
  boardKnown: 'This board is here already; the file becomes its next revision.',
  boardNew: 'A new board.',
  revision: 'Revision',
  revisionHelp: 'Left empty, it gets the next number.',
  where: 'Where do they go?',
  boxField: 'Box for lines that name none',
  boxHelp: 'A box that is not here yet is made.',
  makes: 'What it makes',
  bags: 'Bags',
  numbers: 'Numbers',
  onHand: 'Pieces',
  open: 'Doubts open',
  openMayStay: 'Doubts may stay open, but for a number that is taken: each is kept with its bag, and asked again there.',
  openMayStayBom: 'Doubts may stay open: each is kept with its line, and asked again on the board.',
  boardMissing: 'Give the board a name first.',
  keys: { row: 'line', next: 'next doubt', say: 'say what it is', out: 'leave the line out, or take it in', keep: 'keep' },
  takeBack: 'Take it back',
  find: 'Find a part',
  openTitle: 'Read, and not kept yet',
  openDrop: 'Throw away',
  openDropNamed: (name: string) => `Throw away “${name}”`,
  madeTitle: 'What to write on which bag',
  madeBag: 'Bag',
  madeWhat: 'What it is',
  madeWhy: 'To look at',
  boxes: 'Look at the boxes',
  keptWhy: 'Doubts that stayed open stand with their bags. The latest act can be taken back while nothing else touched its bags.',
  takenBack: (bags: number) => `${counted(bags, 'bag is', 'bags are')} taken back.`,
  takenBackWhy: 'Nothing of the list is in the lab now. Its numbers are free again. Bring it once more when you like.',
  reading0: 'Reading the file…',
  wasKept: 'This file was kept already.',
  gone: 'This file is not being read any more.',
  goneWhy: 'It was kept, or is older than this lab remembers. Bring it again.',
  bring: 'Bring a list',
} as const;

/** The button that opens the field for an answer in words. */
export function saySay(field: string): string {
  if (field === 'quantity') return 'Say how many';
  return field === 'bag' ? 'Give another number' : DRAFT.say;
}

export function saySayField(field: string): string {
  if (field === 'quantity') return 'How many, or about how many';
  if (field === 'bag') return 'Number for the bag';
  return field === 'part' ? 'What it is' : 'What should stand there';
}

interface ReadBack {
  readonly quantity: number | null;
  readonly about: boolean;
  readonly bag: number | null;
  readonly said: { readonly name: string; readonly rest: string };
}

/** How an answer was read: `Read as 4.7 kΩ ±1 %, resistor 0805.`; empty where the answer says it itself. */
export function sayReadAs(field: string, { quantity, about, bag, said }: ReadBack): string {
  if (field === 'quantity')
    return quantity === null
      ? ''
      : about
        ? `Read as about ${figures(quantity)}, to be counted.`
        : `Read as ${figures(quantity)}.`;
  if (field === 'bag') return bag === null ? '' : `Read as number ${bag}.`;
  if (['fitted', 'refs', 'location', 'box', 'place', 'supplier', 'row'].includes(field)) return '';
  return `Read as ${[said.name, said.rest].filter(Boolean).join(', ')}.`;
}

interface Counts {
  readonly is: 'list' | 'bom';
  readonly lines: number;
  /** lines that wait for a word */
  readonly doubted: number;
  readonly board: string | null;
  readonly revision: string | null;
}

/** ` rev 3`, which never breaks before its number */
const rev = (revision: string | null): string => (revision === null ? '' : ` rev\u00a0${revision}`);

const SMALL = ['No', 'One', 'Two', 'Three', 'Four', 'Five', 'Six', 'Seven', 'Eight', 'Nine', 'Ten', 'Eleven', 'Twelve'];

/** `21 lines read as Tide logger rev 3. Four need a word from you.` */
export function sayRead({ is, lines, doubted, board, revision }: Counts): string {
  const what = is === 'list' || board === null ? '' : ` as ${board}${rev(revision)}`;
  const word =
    doubted === 0
      ? 'None needs a word from you.'
      : `${SMALL[doubted] ?? figures(doubted)} ${doubted === 1 ? 'needs' : 'need'} a word from you.`;
  return `${counted(lines, 'line', 'lines')} read${what}. ${word}`;
}

/** The file: `From “stock.csv”, 1.4 kB, parted by semicolons. No bag is made before you say so; …` */
export function sayFile(name: string, bytes: number, notes: readonly string[], is: 'list' | 'bom'): string {
  const size = bytes < 1000 ? counted(bytes, 'byte', 'bytes') : `${(bytes / 1000).toFixed(bytes < 10_000 ? 1 : 0)}\u202fkB`;
  const known = notes.map((note) => (/[.?]$/.test(note) ? note : `${note}.`));
  return [`From “${name}”, ${size}.`, ...known, DRAFT.nothingKept[is]].join(' ');
}

/** The one act: `Make 212 bags`, `Keep as Tide logger rev 3`. */
export function sayKeep(is: 'list' | 'bom', bags: number, board: string | null, revision: string | null): string {
  if (is === 'list') return `Make ${counted(bags, 'bag', 'bags')}`;
  return `Keep as ${board ?? 'a board'}${rev(revision)}`;
}

export function sayGroup(group: 'doubts' | 'told' | 'clear' | 'none' | 'out', count: number, is: 'list' | 'bom'): string {
  switch (group) {
    case 'doubts':
      return count === 1 ? 'One line with a doubt' : `${SMALL[count] ?? figures(count)} lines with doubts`;
    case 'told':
      return `${figures(count)} settled by you`;
    case 'clear':
      return `${figures(count)} read without doubt`;
    case 'none':
      return is === 'list'
        ? `${counted(count, 'line is', 'lines are')} no part, and ${count === 1 ? 'makes' : 'make'} no bag`
        : `${counted(count, 'line is', 'lines are')} no part, and ${count === 1 ? 'needs' : 'need'} nothing`;
    default:
      return `${figures(count)} left out by you`;
  }
}

export function sayShown(shown: number): string {
  return `${shown} shown`;
}

/** `Show the other 11`, `Show 50 more of 4983` */
export function sayShowMore(step: number, others: number): string {
  return others <= step ? `Show the other ${figures(others)}` : `Show ${figures(step)} more of ${figures(others)}`;
}

/** A BOM became a revision of its board. */
export function sayKeptBoard(board: string, revision: string): string {
  return `${board}${rev(revision)} is kept.`;
}

/** `212 bags were made, 1 to 212, with 18 340 pieces.` */
export function sayMade(made: {
  readonly bags: number;
  readonly pieces: number;
  readonly first: number | null;
  readonly last: number | null;
}): string {
  const { bags, pieces, first, last } = made;
  const numbers = first === null || last === null ? '' : first === last ? `, number ${first}` : `, ${first} to ${last}`;
  return `${counted(bags, 'bag was', 'bags were')} made${numbers}, with ${counted(pieces, 'piece', 'pieces')}.`;
}

/** A file that waits to be kept: `21 lines, brought Tue 24 Nov 18:20`. */
export function sayOpenDraft(rows: number, when: string): string {
  return `${counted(rows, 'line', 'lines')}, brought ${when}`;
}

/** What is to know of a bag that was made: `line 4 had no number`, `2 doubts`; empty where nothing is. */
export function sayMadeBag({
  row,
  numbered,
  doubts,
}: {
  readonly row: number;
  readonly numbered: boolean;
  readonly doubts: number;
}): string {
  return [doubts > 0 ? counted(doubts, 'doubt', 'doubts') : '', numbered ? `line ${row} had no number` : '']
    .filter(Boolean)
    .join(', ');
}

export function sayMoreMade(more: number): string {
  return `and ${counted(more, 'more bag', 'more bags')}, all of them under Boxes`;
}
