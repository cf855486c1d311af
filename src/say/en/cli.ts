import { deedName } from './acts.ts';
import { count } from './count.ts';

interface Held {
  bag: number;
  onHand: number;
  free: number;
}

const SOME = 6;

function limits(limitedBy: Kit['limitedBy']): string {
  const named = limitedBy.slice(0, SOME).map((limit) => ('bag' in limit ? `bag ${limit.bag}` : `row ${limit.line}`));
  return `${named.join(', ')}${limitedBy.length > SOME ? ` and ${limitedBy.length - SOME} more` : ''}`;
}

interface Kit {
  boards: number;
  buildable: number;
  buildableWithChecks: number;
  limitedBy: readonly ({ bag: number; reaches: number } | { line: number; reaches: number })[];
  proof: string;
  gap: number;
}

interface Gets {
  name: string;
  boards: number;
  due: string | null;
  buildable: number;
  short: number;
}

interface Build {
  build: string;
  name: string;
  boards: number;
  state: string;
  board: string | null;
  revision: string | null;
  short: number;
}

const left = (onHand: number, free: number): string => `${onHand} on hand, ${free} free.`;
const signed = (difference: number): string => (difference > 0 ? `+${difference}` : `−${-difference}`);

/** What the command line says about itself; sentences about stock are in the other files of this folder. */
const CLI = {
  'unknown-command': ({ command, near }: { command: string; near: string }) =>
    `There is no command '${command}'.${near ? ` Did you mean '${near}'?` : ''} 'bagatelle help' lists them all.`,
  'unknown-option': ({ option, near }: { option: string; near: string }) =>
    `There is no option ${option} here.${near ? ` Did you mean ${near}?` : ''}`,
  'option-takes-nothing': ({ option, value }: { option: string; value: string }) =>
    `${option} is a switch and takes no value, but got '${value}'.`,
  'option-wants-value': ({ option, value }: { option: string; value: string }) =>
    `${option} wants a value after it: ${option} ${value}`,
  'words-missing': ({ what }: { what: string }) => `Something is missing: ${what}.`,
  'words-too-many': ({ word }: { word: string }) => `Don't know what '${word}' is for here.`,
  usage: ({ usage, name }: { usage: string; name: string }) => `Usage: ${usage}   (more: bagatelle ${name} --help)`,
  fault: ({ error }: { error: string }) =>
    `This is a fault of Bagatelle, not of your input: ${error}\nNothing half done was kept. Please report it with the command you ran; BAGATELLE_DEBUG=1 shows the details to add.`,
  'head-usage': () => 'Usage',
  'head-options': () => 'Options',
  'head-example': () => 'Example',
  'help-option': () => 'this help',
  intro: () =>
    'Bagatelle keeps the consumables of a small electronics lab: numbered bags, BOMs turned into kits, quantities that stay honest.',
  'help-more': () => "'bagatelle COMMAND --help' shows how one is used, with an example.",
  'help-ends': () =>
    'Exit status: 0 done · 1 could not, nothing changed · 2 wrong usage. Data goes to stdout, messages to stderr; --json gives JSON Lines.',
  'help-home': ({ home }: { home: string }) => `Data folder: ${home} (BAGATELLE_HOME says another; DATABASE_URL a PostgreSQL).`,
  'did-repeat': () => 'This was done before under the same id; nothing was done twice.',
  picked: ({ bag, quantity, corrected, onHand, free }: Held & { quantity: number; corrected: number }) =>
    `Picked ${quantity} from bag ${bag}${corrected ? ` (${corrected} more than the record knew; it is on the count list)` : ''}. ${left(onHand, free)}`,
  returned: ({ bag, quantity, onHand, free }: Held & { quantity: number }) =>
    `Returned ${quantity} to bag ${bag}. ${left(onHand, free)}`,
  counted: ({ bag, total, difference, onHand, free }: Held & { total: number; difference: number }) =>
    `Counted ${total} in bag ${bag}${difference === 0 ? ', as the record said' : ` (${signed(difference)})`}. ${left(onHand, free)}`,
  received: ({ bag, onHand, free }: Held) => `Bag ${bag}: ${left(onHand, free)}`,
  'one-line-for-bag': () => '--bag names one bag, so it goes with one line.',
  'nothing-found': ({ words }: { words: string }) => `No bag answers '${words}'.`,
  'no-marking': ({ words }: { words: string }) =>
    `No marking is known for '${words}'. Say the value with its unit, and the tolerance.`,
  'no-such-look': ({ look }: { look: string }) => `--on wants bands, chip, capacitor, can or coil, but got '${look}'.`,
  'set-aside': ({ bag, state, before }: { bag: number; state: string; before: string }) =>
    `Bag ${bag} is ${state} now (was ${before}).`,
  undone: ({ kind, bags }: { kind: string; bags: string }) =>
    `Taken back: ${deedName(kind)}.${bags ? ` ${bags.includes(', ') ? 'Bags' : 'Bag'} ${bags}.` : ''}`,
  'bag-head': ({
    bag,
    code,
    text,
    box,
    place,
    state,
  }: {
    bag: number;
    code: string;
    text: string;
    box: string | null;
    place: string | null;
    state: string;
  }) =>
    `Bag ${bag}  ${code}  ${text === code ? '' : text}\n${box === null ? 'no box' : `box ${box}`}${place === null ? '' : `, place ${place}`}${state === 'sound' ? '' : `, ${state}`}`,
  'bag-holds': ({
    onHand,
    sure,
    reserved,
    free,
    toCount,
  }: {
    onHand: number;
    sure: number;
    reserved: number;
    free: number;
    toCount: boolean;
  }) =>
    `${onHand} on hand${sure < onHand ? `, ${sure} of them sure` : ''}, ${reserved} reserved, ${free} free${toCount ? '. To be counted.' : ''}`,
  doubt: ({ row, field, why, settle }: { row: number; field: string; why: string; settle: string }) =>
    `row ${row}, ${field}: ${why} ${settle}`,
  'line-doubt': ({ line, why, settle }: { line: string; why: string; settle: string }) => `'${line}': ${why} ${settle}`,
  'columns-taken': ({ columns }: { columns: string }) =>
    `Columns: ${columns}. Where this is wrong: --columns "2=value,3=footprint"; stock lists have bag (its number), box and place.`,
  'columns-unreadable': ({ word, roles }: { word: string; roles: string }) =>
    `'${word}' does not say what columns mean. Write "2=value,3=footprint"; a column can be: ${roles}.`,
  'row-doubts': ({ row, doubts }: { row: number; doubts: string }) => `row ${row}: ${doubts}`,
  'import-doubts': ({ rows }: { rows: number }) =>
    `${rows} ${rows === 1 ? 'row was' : 'rows were'} read with a doubt; --dry-run shows them, and what each column was taken for.`,
  importing: ({ rows }: { rows: number }) => `importing ${count(rows, 'row')}`,
  imported: ({
    bags,
    parts,
    pieces,
    first,
    last,
    skipped,
  }: {
    bags: number;
    parts: number;
    pieces: number;
    first: number | null;
    last: number | null;
    skipped: number;
  }) =>
    `${count(bags, 'bag')} made (${first === last ? first : `${first}–${last}`}), ${count(parts, 'different part')}, ${count(pieces, 'piece')}${skipped ? `; ${count(skipped, 'row was', 'rows were')} no part` : ''}.`,
  'import-duplicate': ({ row, of }: { row: number; of: number }) =>
    `row ${row}: the same part as row ${of}; it gets a bag of its own.`,
  'import-skipped': ({ row }: { row: number }) => `row ${row}: not a part; it gets no bag.`,
  'import-dry': ({ bags }: { bags: number }) => `${count(bags, 'bag')} would be made. Nothing was written.`,
  planning: () => 'planning',
  'match-sum': ({
    exact,
    serves,
    check,
    missing,
    short,
  }: {
    exact: number;
    serves: number;
    check: number;
    missing: number;
    short: number;
  }) =>
    `${exact} exact, ${serves} ${serves === 1 ? 'serves' : 'serve'}, ${check} to check, ${missing} missing; ${short === 0 ? 'nothing short' : `${count(short, 'line')} short`}.`,
  reserved: ({ name, build, act }: { name: string; build: string; act: string }) =>
    `Build '${name}' (${build}) is reserved. Its walk: bagatelle builds ${build}. Take it back with: bagatelle undo ${act}`,
  'kit-sum': ({ boards, buildable, buildableWithChecks, limitedBy, proof, gap }: Kit) =>
    [
      `${buildable} of ${count(boards, 'board')} can be built.`,
      ...(buildableWithChecks > buildable ? [`${buildableWithChecks} if the open checks were accepted.`] : []),
      ...(limitedBy.length ? [`Limited by ${limits(limitedBy)}.`] : []),
      ...(proof === 'gap' ? [`The plan may be up to ${Math.ceil(gap * 100)} % from the best one.`] : []),
    ].join(' '),
  'kept-planned': ({ name, build, act }: { name: string; build: string; act: string }) =>
    `Build '${name}' (${build}) is kept as planned; nothing is promised to it yet. Promise it its bags: bagatelle kit --build ${build} --reserve. Take it back with: bagatelle undo ${act}`,
  'keep-alone': () => '--keep keeps a BOM as a planned build without a promise; it goes with neither --reserve nor --build.',
  'none-planned': () => 'No build is planned. Keep one: bagatelle kit BOM --boards N --keep',
  'others-head': () => 'Planned beside it, the first served first:',
  'build-gets': ({ name, boards, due, buildable, short }: Gets) =>
    `${name}, ${boards} ${boards === 1 ? 'board' : 'boards'}${due === null ? '' : `, due ${due}`}: ${buildable} of ${boards}${short ? `, ${short} ${short === 1 ? 'piece' : 'pieces'} short` : ''}`,
  'picked-kit': ({ name, picked, open }: { name: string; picked: number; open: number }) =>
    `Picked ${count(picked, 'piece')} for '${name}'. ${open === 0 ? 'The kit is complete.' : `${count(open, 'stop is', 'stops are')} still open.`}`,
  'returned-kit': ({ name, returned }: { name: string; returned: number }) =>
    `Returned ${count(returned, 'piece')} of '${name}' to ${returned === 1 ? 'its bag' : 'their bags'}.`,
  'nothing-picked': () => 'Nothing was picked for this build yet.',
  'build-head': ({ build, name, boards, state, board, revision, short }: Build) =>
    `Build ${build}  '${name}'  ${count(boards, 'board')}, ${state}${board === null ? '' : `, of board ${board} ${revision ?? ''}`}${short ? `, ${count(short, 'piece')} short` : ''}`,
  'head-route': () => '\nThe walk',
  'head-trays': () => '\nThe trays',
  finish: ({ name, made }: { name: string; made: number }) =>
    `'${name}': ${count(made, 'board')} made. What is left in the trays may come back: bagatelle return --build '${name}'`,
  cancel: ({ name, returned }: { name: string; returned: number }) =>
    `'${name}' is given up; ${returned === 0 ? 'nothing had been picked' : `${count(returned, 'piece')} went back to ${returned === 1 ? 'its bag' : 'their bags'}`}.`,
  'board-saved': ({ board, revision, lines }: { board: string; revision: string; lines: number }) =>
    `Board '${board}', revision ${revision}: ${count(lines, 'line')} kept.`,
  later: ({ board, row, later }: { board: string; row: number; later: boolean }) =>
    later
      ? `Row ${row} of '${board}' is left off for now: plans take nothing for it. --fit puts it back.`
      : `Row ${row} of '${board}' is fitted again.`,
  chosen: ({ board, row, bag }: { board: string; row: number; bag: number | null }) =>
    bag === null
      ? `Row ${row} of '${board}' is no longer answered by a bag chosen by hand.`
      : `Bag ${bag} is taken for row ${row} of '${board}', and for the same demand in later revisions.`,
  'line-head': ({
    row,
    refs,
    text,
    need,
    fitted,
    later,
  }: {
    row: number;
    refs: string;
    text: string;
    need: number;
    fitted: boolean;
    later: boolean;
  }) =>
    `Row ${row}${refs ? `, ${refs}` : ''}: ${text}. ${fitted ? `${need} needed.` : later ? 'Left off for now.' : 'Not fitted on this board.'}`,
  'line-bag': ({ bag, verdict, code, free }: { bag: number; verdict: string; code: string; free: number }) =>
    `  bag ${bag}  ${code}  ${verdict}, ${free} free`,
  'no-acts': () => 'Nothing was done in this lab yet.',
  checking: () => 'checking',
  'check-good': () => 'The lab is sound: on hand is the sum of the movements in every bag.',
  'check-bad': ({ faults }: { faults: number }) =>
    `${count(faults, 'fault')} found. Keep this data folder as it is, and restore the last good backup into another.`,
  'lab-fault': ({ code, args }: { code: string; args: string }) => `${code} ${args}`,
  'backing-up': () => 'writing the backup',
  'backed-up': ({ file, rows }: { file: string; rows: number }) => `${file} holds the whole lab (${count(rows, 'row')}).`,
  restoring: () => 'restoring',
  restored: ({ file }: { file: string }) => `The lab of ${file} is restored, and is sound.`,
  exported: ({ file, bags }: { file: string; bags: number }) => `${file} holds ${count(bags, 'bag')}.`,
  filling: () => 'filling the demo lab',
  'demo-filled': ({ where }: { where: string }) =>
    `The demo lab is in ${where}. Look into it: bagatelle find 100n, bagatelle boards, bagatelle serve --open`,
  serving: ({ url }: { url: string }) => `The lab is open at ${url}   (Ctrl+C closes it)`,
  'serve-read-only': ({ where }: { where: string }) =>
    `${where} can't be written to: this lab can be looked at, but nothing in it can be changed.`,
  stopped: () => 'The lab is closed.',
  'serve-invite': ({ url }: { url: string }) =>
    `A phone in this network is paired at ${url}   (the code lets one device in, within ten minutes; Devices in the pages gives another)`,
  'serve-no-network': () =>
    'This machine has no address in a network now: nobody else can reach the lab. Join a network, then open Devices in the pages.',
  'serve-fault': ({ fault, port }: { fault: 'port-taken' | 'port-refused'; port: number }) =>
    ({
      'port-taken': `Port ${port} is taken by another program, perhaps by a lab that is open already. Close that one, or choose another: bagatelle serve --port ${port + 1}`,
      'port-refused': `This account may not listen on port ${port}. Choose one above 1023: bagatelle serve --port 4242`,
    })[fault],
  'way-on': ({ option }: { option: string }) => `(${option} says so.)`,
  act: ({ act }: { act: string }) => `Act ${act}. Take it back with: bagatelle undo ${act}`,
} as const;

type Texts = typeof CLI;

/** The sentence of a code, with its arguments. */
export function cliText<K extends keyof Texts>(code: K, ...args: Parameters<Texts[K]>): string {
  // as: the arguments are typed by the code on the way in; the union of functions can't be called as such
  return (CLI[code] as (...args: readonly unknown[]) => string)(...args);
}
