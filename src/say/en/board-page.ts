/** What the page of one board says. */
import { counted, figures } from './ui.ts';

export const BOARD_PAGE = {
  boardsToBuild: 'Boards to build',
  revision: 'Revision',
  caption: 'Lines of the board against the bags',
  columns: {
    line: 'Line',
    refs: 'Refs',
    asks: 'BOM asks',
    match: 'Match, and why',
    bag: 'Bag',
    holds: 'It holds',
    need: 'Need',
    free: 'Free',
    left: 'Left over',
  },
  fold: { line: 'line', need: 'need', free: 'free', left: 'left over' },
  noRefs: 'no refs',
  waits: 'waits for you',
  noBag: 'none',
  none: '–',
  groups: { later: 'Fit later', unfitted: 'Not fitted', noPart: 'Not a part' },
  groupsWhy: {
    later: 'left off by hand; press F on one to fit it again',
    unfitted: 'the BOM says so; nothing is taken for them',
    noPart: 'nothing is taken for them',
  },
  verdicts: { exact: 'exact', serves: 'serves', check: 'check', missing: 'missing' },
  accepted: 'accepted',
  keepAsPlanned: (boards: number): string => `Keep ${figures(boards)} as planned`,
  reserveAnyway: 'Reserve what there is',
  planKit: (boards: number): string => (boards > 0 ? `Plan a kit for ${figures(boards)}` : 'Plan a kit'),
  nothingMade: (boards: number): string =>
    `Not one of ${figures(boards)} can be built from what is free beside the kits that are planned, so nothing was reserved.`,
  nothingMadeWay: 'The pieces that are there can be reserved all the same.',
  planAgain: 'Plan again',
  noBoard: (board: string): string => `There is no board “${board}”.`,
  noBoardWhy: 'Was it spelled otherwise? Boards lists all of them.',
  noRevision: (board: string, revision: string): string => `“${board}” has no revision “${revision}”.`,
  newest: 'Open its newest revision',
  toBoards: 'Go to Boards',
  noLines: 'This revision has no lines.',
  noLinesWhy: 'Bring its BOM again on Boards.',
  drawer: 'The chosen line, and how far the lines reach',
  revisionNamed: (revision: string): string => `Revision ${revision}`,
  keys: { row: 'line', accept: 'accept a check', other: 'other bag', later: 'fit later', plan: 'plan the kit' },
} as const;

interface Can {
  readonly board: string;
  readonly boards: number;
  readonly buildable: number;
}

/** The page's one sentence. */
export function sayCanBuild({ board, boards, buildable }: Can): string {
  if (boards === 1) return buildable === 1 ? `${board}: you can build one.` : `${board}: you can’t build one yet.`;
  if (buildable === 0) return `${board}: you can build none of ${figures(boards)}.`;
  return buildable >= boards
    ? `${board}: you can build all ${figures(boards)}.`
    : `${board}: you can build ${figures(buildable)} of ${figures(boards)}.`;
}

export const sayReading = (board: string): string => `${board}: reading its lines…`;
export const sayReckoning = (board: string, boards: number): string =>
  `${board}: working out ${counted(boards, 'board', 'boards')}…`;

/** What a limit is, in words: a bag with what it holds, or a line that no bag answers. */
export interface LimitWords {
  readonly bag: number | null;
  readonly line: number;
  readonly name: string;
  readonly free: number;
  readonly perBoard: number;
  /** a bag stands there, but waits for a check */
  readonly toCheck: boolean;
}

/** `Limited by line 6, 10 µF: 15 free in bag 163, 2 for each board.` */
export function sayLimits(limits: readonly LimitWords[]): string {
  const [first, ...others] = limits;
  if (!first) return '';
  return others.length === 0 ? `Limited by ${sayLimit(first)}.` : `Limited by ${listed(limits.map(sayShortly))}.`;
}

function sayLimit({ bag, line, name, free, perBoard, toCheck }: LimitWords): string {
  const what = `line ${line}, ${name}`;
  if (toCheck) return `${what}: it waits for your check`;
  if (bag === null && free === 0) return `${what}: no bag answers it`;
  return `${what}: ${figures(free)} free${bag === null ? '' : ` in bag ${bag}`}, ${figures(perBoard)} for each board`;
}

const sayShortly = ({ line, name }: LimitWords): string => `line ${line} (${name})`;

/** `a`, `a and b`, `a, b and 3 more` */
function listed(words: readonly string[]): string {
  const shown = words.length > 3 ? [...words.slice(0, 2), `${words.length - 2} more`] : words;
  const last = shown.at(-1) ?? '';
  return shown.length < 2 ? last : `${shown.slice(0, -1).join(', ')} and ${last}`;
}

/** `Two lines wait for your check: then 9 can be built.` */
export function sayOpen({
  checks,
  withChecks,
  buildable,
  later,
}: {
  readonly checks: number;
  readonly withChecks: number;
  readonly buildable: number;
  readonly later: number;
}): string {
  const said: string[] = [];
  // where nothing can be built, what a kit waits for says it
  if (checks > 0 && (buildable > 0 || withChecks > 0)) {
    const more = withChecks > buildable ? `; with ${checks === 1 ? 'it' : 'them'} you can build ${figures(withChecks)}` : '';
    said.push(`${counted(checks, 'line waits', 'lines wait')} for your check${more}.`);
  }
  if (later > 0) said.push(`${counted(later, 'line is', 'lines are')} fitted later.`);
  return said.join(' ');
}

export const SAY_ALONE = 'Reckoned as if no other kit were planned.';
export const SAY_GAP = 'Not proved to be the most: the search was cut off.';

/** What the waiting button waits for. */
export function sayWaits(checks: number, missing: number): string {
  const wants = [
    ...(checks > 0 ? [`accept ${counted(checks, 'check', 'checks')}`] : []),
    ...(missing > 0 ? [`get parts for ${counted(missing, 'line', 'lines')} or fit ${missing === 1 ? 'it' : 'them'} later`] : []),
  ];
  return wants.length > 0 ? `Before a kit: ${wants.join(', and ')}.` : 'Before a kit: get parts.';
}

export const SAY_COUNTS = {
  exact: (n: number): string => `${figures(n)} exact`,
  serves: (n: number): string => `${figures(n)} ${n === 1 ? 'serves' : 'serve'}`,
  accepted: (n: number): string => `${figures(n)} accepted`,
  check: (n: number): string => `${figures(n)} to check`,
  missing: (n: number): string => `${figures(n)} missing`,
} as const;

/** Of a path, its last part: where a BOM lay on somebody's disk says nothing. */
export const fileName = (source: string): string => source.split(/[\\/]/).at(-1) ?? source;

export function sayBom(revision: string, lines: number, source: string | null): string {
  return `Revision ${revision}, ${counted(lines, 'line', 'lines')}${source ? `, from ${fileName(source)}` : ''}`;
}

export const sayShort = (short: number): string => `short ${figures(short)}`;
