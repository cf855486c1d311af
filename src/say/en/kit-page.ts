/** What the page of a kit says, and what it shares with the phone at the boxes. */
import { counted, figures } from './ui.ts';

/** A cell as it is named; with its tray where the kit has several. */
export interface CellName {
  readonly cell: number;
  readonly tray: number | null;
}

export const sayCell = ({ cell, tray }: CellName): string => (tray === null ? `cell ${cell}` : `cell ${cell} of tray ${tray}`);

export const KIT = {
  reading: 'Reading the kit…',
  phone: 'Carry on with the phone',
  sheet: 'Tray sheet',
  putBack: 'Put everything back',
  giveUp: 'Give the kit up',
  keep: 'No, keep it',
  route: 'Pick route',
  routeWhy: 'as the boxes are stacked, top first',
  tray: (tray: number, trays: number) => (trays > 1 ? `Tray ${tray}` : 'Tray'),
  trayWhy: 'Cells run in soldering order: flat chip parts first, tall parts last.',
  edge: 'This edge towards you. Cell 1 is far left.',
  box: (box: string | null) => (box === null ? 'In no box' : `Box ${box}`),
  columns: { bag: 'Bag', part: 'Part', pieces: 'Pieces', cell: 'Cell', state: 'State' },
  caption: (box: string | null) => (box === null ? 'Bags to pick that stand in no box' : `Bags to pick from box ${box}`),
  next: 'next',
  toPick: 'to pick',
  in: 'in',
  short: 'short',
  empties: 'empties the bag',
  inKit: 'In this kit',
  spareWhy: 'Small chip parts get a spare or two each: they are the ones that jump.',
  after: 'After soldering',
  afterWhy: 'What is left in a cell goes back to the bag on its tag.',
  leftovers: 'Take leftovers back',
  soldered: 'The boards are soldered',
  made: 'Boards made',
  undo: 'Undo',
  undone: 'Taken back; the bags are as before.',
  fewer: 'Fewer or more',
  fewerClose: 'As planned after all',
  skip: 'Skip for now',
  howMany: (where: CellName) => `How many went into ${sayCell(where)}?`,
  ofTray: (tray: number) => `tray ${tray}`,
  howManyHelp: 'Piles add up: 20+18',
  inHand: 'I have them in my hand',
  inHandWhy: 'They are booked, and the bag goes on the count list.',
  here: 'Open it on this screen',
  chosen: 'This stop',
  reserve: 'Promise its bags',
  reserveAnyway: 'Promise what there is',
  open: (address: string) => `On the phone, open ${address}`,
  openHere: 'A phone reaches this lab only once it is open to the network: Devices says how.',
  givenUp: 'What it had',
  givenUpColumns: { bag: 'Bag', part: 'Part', picked: 'Picked', back: 'Went back' },
  undoGivenUp: 'Undo: the kit goes on',
  goesOn: 'The kit goes on; its bags are promised to it again.',
  keys: {
    in: 'in the tray',
    fewer: 'fewer in the bag',
    skip: 'skip for now',
    row: 'bag',
    jump: 'type a bag number to jump to it',
  },
  cautions: {
    cells: 'Lithium cells are in this kit: never solder to a cell, and keep its poles apart.',
    mains: 'Mains parts are in this kit: whoever is qualified for it works on mains.',
    fuses: 'Fuses are in this kit: fit the rating and the speed that the board states.',
    leaded: 'Leaded solder is in this kit: air the room and wash your hands.',
  },
  cautionWhy: 'The rules of your country and your workplace come first.',
} as const;

interface Standing {
  readonly state: string;
  readonly picked: number;
  readonly all: number;
  readonly made: number | null;
  readonly left: number;
  /** pieces that lie in the trays */
  readonly out: number;
  readonly next: { readonly bag: number; readonly box: string | null } | null;
}

/** The page's one sentence. */
export function sayKit({ state, picked, all, made, left, out, next }: Standing): string {
  if (state === 'planned') return 'This kit is planned; no bag is promised to it yet.';
  if (state === 'cancelled')
    return out > 0
      ? `This kit was given up; ${counted(out, 'piece', 'pieces')} did not come back.`
      : 'This kit was given up; everything went back.';
  if (state === 'built') {
    const soldered = `${counted(made ?? 0, 'board is', 'boards are')} soldered.`;
    return left > 0 ? `${soldered} ${counted(left, 'piece', 'pieces')} should be left over.` : soldered;
  }
  if (next)
    return `${figures(picked)} of ${counted(all, 'bag is', 'bags are')} in the tray. Next: bag ${next.bag}${inBox(next.box)}.`;
  if (all === 0) return 'Nothing is to be picked for this kit.';
  return all === 1 ? 'The one bag is in the tray.' : `All ${figures(all)} are in the tray.`;
}

const inBox = (box: string | null): string => (box === null ? '' : ` in box ${box}`);

interface Of {
  readonly name: string;
  readonly board: string | null;
  readonly revision: string | null;
  readonly boards: number;
}

/** `Spring run: Greenhouse node rev 2, 7 boards.`; a kit that is named by its board names it once: `Greenhouse node (2), rev 2, 7 boards.` */
export function sayOf({ name, board, revision, boards }: Of): string {
  const rev = revision === null ? [] : [`rev ${revision}`];
  const many = counted(boards, 'board', 'boards');
  if (board === null || name === board || (/^ \(\d+\)$/.test(name.slice(board.length)) && name.startsWith(board)))
    return `${[name, ...(board === null ? [] : rev), many].join(', ')}.`;
  return `${name}: ${[board, ...rev].join(' ')}, ${many}.`;
}

export function sayDoneBoxes(boxes: readonly string[]): string {
  return boxes.length === 0
    ? ''
    : `${boxes.length === 1 ? 'Box' : 'Boxes'} ${listed(boxes)} ${boxes.length === 1 ? 'is' : 'are'} done.`;
}

export function sayEmptied(bags: readonly number[]): string {
  if (bags.length === 0) return '';
  const some = bags.slice(0, 4).map(String);
  const rest = bags.length - some.length;
  const which = rest > 0 ? `${some.join(', ')} and ${rest} more` : listed(some);
  return `${bags.length === 1 ? 'Bag' : 'Bags'} ${which} will be empty after this kit.`;
}

export function sayShort(lines: number, pieces: number): string {
  return lines === 0 ? '' : `${counted(pieces, 'piece is', 'pieces are')} short on ${counted(lines, 'line', 'lines')}.`;
}

function listed(words: readonly string[]): string {
  return words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`;
}

export const sayToGo = (stops: number): string => (stops === 0 ? 'nothing to go' : `${figures(stops)} to go`);
export const sayIn = (picked: number, all: number): string => `${figures(picked)} of ${figures(all)} in`;
export const sayRail = (picked: number, all: number): string =>
  `${figures(picked)} of ${counted(all, 'stop', 'stops')} are in the tray`;
export const sayBoxToPick = (stops: number): string => `${counted(stops, 'stop', 'stops')}, front to back`;
export const sayBoxDone = (stops: number): string => `${figures(stops)} picked, box closed`;
export const sayBoxPicture = (box: string, bags: readonly number[]): string =>
  bags.length === 0 ? `Box ${box} from above: nothing more to pick` : `Box ${box} from above: pick ${bags.join(', ')}`;
export const sayWentBack = (back: number): string => `(${figures(back)} went back)`;
export const saySpare = (spare: number): string => (spare === 0 ? '' : `(${figures(spare)} spare)`);
export const sayNeedAndSpare = (take: number, spare: number): string =>
  spare === 0 ? '' : `${figures(take - spare)} and ${figures(spare)} spare.`;

const are = (pieces: number): string => `${figures(pieces)} ${pieces === 1 ? 'is' : 'are'}`;

/** `51 are in cell 1` */
export const sayAreIn = (pieces: number, where: CellName): string => `${are(pieces)} in ${sayCell(where)}`;
/** `All 6 of box A as planned`; where some were skipped, `The other 5 of box A as planned`. */
export function sayAllOfBox(stops: number, open: number, box: string | null): string {
  const some = `${stops < open ? 'The other' : 'All'} ${figures(stops)}`;
  return box === null ? `${some} here as planned` : `${some} of box ${box} as planned`;
}
export const sayPutShort = (pieces: number, where: CellName): string =>
  pieces === 0 ? 'The bag gave nothing' : `${figures(pieces)} in ${sayCell(where)}, the bag gave no more`;
/** `50 are enough`: nothing but spares is missing. */
export const sayEnough = (pieces: number): string => `${are(pieces)} enough`;
export const sayPutSome = (pieces: number, where: CellName): string => `${figures(pieces)} in ${sayCell(where)}, the rest later`;
export const sayPickedSome = (pieces: number, stops: number): string =>
  `${figures(pieces)} went into ${counted(stops, 'cell', 'cells')}.`;
/** `Fewer than planned: cell 6: 4 of 5.` */
export const sayFewer = (
  cells: readonly { readonly where: CellName; readonly lies: number; readonly planned: number }[],
): string =>
  `Fewer than planned: ${cells.map(({ where, lies, planned }) => `${sayCell(where)}: ${figures(lies)} of ${figures(planned)}`).join('; ')}.`;
export const sayPickedNone = (bag: number): string => `Bag ${bag} gave nothing.`;
export const sayUndoPick = (pieces: number, stops: number): string =>
  stops === 1 ? `Undo the last pick (${figures(pieces)})` : `Undo the last pick (${figures(pieces)} in ${figures(stops)} cells)`;
export const sayMeanwhile = (bag: number, who: string): string => `Bag ${bag} was picked meanwhile${who ? ` by ${who}` : ''}.`;
export const sayMade = (made: number): string => `${counted(made, 'board is', 'boards are')} soldered.`;
export const sayFinish = (made: number): string =>
  made === 0 ? 'No board was made' : `${counted(made, 'board is', 'boards are')} soldered`;
export const sayReturned = (pieces: number): string => `${counted(pieces, 'piece', 'pieces')} went back into the bags.`;
export const sayPutBackQuestion = (pieces: number): string =>
  pieces === 0
    ? 'Give this kit up? Its bags are free again.'
    : `Put ${counted(pieces, 'piece', 'pieces')} back into the bags, and give this kit up?`;
export const sayPieces = (pieces: number, spare: number): string =>
  `${counted(pieces, 'piece', 'pieces')}${spare > 0 ? `, ${figures(spare)} of them spare` : ''}.`;

export const sayStillOpen = (stops: number): string => `${counted(stops, 'stop is', 'stops are')} still open.`;
export const sayPromised = (): string => 'Its bags are promised to it now.';
