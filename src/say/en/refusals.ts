import type { Refusal, RefusalCode } from '#core/stock/refusal.ts';
import { sayAgainst } from './because.ts';
import { count } from './count.ts';

type Args = Refusal['args'];

/** What a field must be, by the code word that a check gives. */
const EXPECTED: Readonly<Record<string, string>> = {
  uuid: 'a UUID',
  date: 'a date as YYYY-MM-DD',
  instant: 'an instant with its zone, as 2026-03-01T09:00:00Z',
  name: 'a name',
  'plain-name': 'a name that can be seen and typed, not a dot or two alone',
  'new-revision': 'a revision that the board does not have yet',
  'take-of-build': 'one take of this build, named once',
  'row-of-board': 'a row of the board',
  'demand-of-board': 'what a line of the board asks for',
  'part-or-bag': 'a part, or the number of a bag that is there',
  'quantity-first': 'the quantity first, then the part',
  'plain-figures': 'a whole number in plain figures',
  'near-now': 'an instant since 1970 and no later than a day from now',
  'row-of-file': 'a row of the file',
  'bag-number': 'the number of a bag, whole and from 1',
  role: 'something that a column can hold',
  field: 'a field that can be answered in words',
  text: 'some text',
  kind: 'a kind of part, such as resistor',
  refs: 'refs that can be read, such as R1, R4-R9',
  'yes-or-no': 'yes or no',
  value: 'one value with its unit, such as 4.7 kΩ',
  unit: 'one value with its unit, such as 4.7 kΩ',
  tolerance: 'a tolerance, such as 5 %',
  voltage: 'a voltage, such as 50 V',
  power: 'a power, such as 250 mW',
  current: 'a current, such as 500 mA',
  dielectric: 'a dielectric, such as X7R',
  technology: 'a technology, such as film',
  package: 'a package, such as 0805 or SOT-23',
  partNumber: "the maker's part number",
  maker: 'the name of a maker',
};

const HOME: Readonly<Record<string, string>> = {
  clone: 'it is inside the program, and would be lost with the next copy of it',
  network: 'it is on a network drive, where the locks of the database can not be trusted',
  synchronised: 'another program synchronises it, and would copy a database that is half written',
  'no-disk': 'the system keeps nothing there',
  'not-writable': 'it can not be written to',
};

/** Places that hold something, but no lab that can be used now. */
const NO_LAB: Readonly<Record<string, (folder: string | number | undefined) => string>> = {
  damaged: (folder) =>
    `What is in ${folder} is no lab, or is damaged. Nothing was changed; restore a backup into another folder (BAGATELLE_HOME says which).`,
  'no-answer': (folder) => `No PostgreSQL answers at ${folder}. Is it running, and is the address right?`,
  'not-allowed': (folder) => `PostgreSQL at ${folder} knows no such database or account, or the password is wrong.`,
};

/** Why a number can't be one, by the code word of the reader. */
const IMPOSSIBLE: Readonly<Record<string, string>> = { negative: 'below zero', 'too-large': 'more than anyone has' };

const LATER: Readonly<Record<string, string>> = {
  received: 'received',
  imported: 'imported',
  picked: 'picked',
  returned: 'returned',
  counted: 'counted',
  'picked-for-build': 'picked for a build',
  'leftovers-returned': 'leftovers returned',
  cancelled: 'returned from a cancelled build',
  build: 'promised to a build',
  choice: 'chosen for a board',
};

/** Why a file is no backup that can be restored. */
const BACKUP: Readonly<Record<string, (a: Args) => string>> = {
  head: (a) => `its first line is not that of a backup of Bagatelle${a['text'] ? ` ('${a['text']}')` : ''}`,
  line: (a) => `${a['line'] === undefined ? 'its last line' : `line ${a['line']}`} is no line of a backup ('${a['text']}')`,
  number: (a) => `line ${a['line']} holds a number that no lab has`,
  row: (a) => `a row of '${a['table']}' does not fit into a lab`,
  rows: (a) => `it holds ${count(a['found'], 'row')} of '${a['table']}', and should hold ${a['wanted']}`,
  digest: () => 'it was changed after it was written (its SHA-256 is another)',
  'cut-short': (a) => `it was cut short after line ${a['line']}: its end line is missing`,
  'goes-on': (a) => `it goes on after its end, in line ${a['line']}`,
  unproved: (a) => `what it holds does not prove itself (${a['fault']})`,
};

/** Why an act can't be taken back, by the code word of the undo. */
const NOT_UNDOABLE: Readonly<Record<string, (a: Args) => string>> = {
  'is-undo': () => 'it takes another act back itself. Do the first one again instead',
  touched: (a) => `its bags were used since (${words(a['by'])}; ${bagWords(a['bags'])}). Undo that first`,
  'has-builds': (a) => `builds stand on it: ${a['builds']}`,
  'changed-since': () => 'it was changed again since. Undo the later change first',
  'returned-since': () => 'some of it was returned since. Undo the return first',
  'build-went-on': (a) => `the build '${a['build']}' is ${a['state']} by now. Undo the later steps first`,
};

/** `picked:-5, returned:2` → `picked −5, returned +2`. */
function words(list: string | number | undefined): string {
  return String(list ?? '')
    .split(', ')
    .map((item) => {
      const [kind = '', delta] = item.split(':');
      const said = LATER[kind] ?? kind;
      return delta === undefined ? said : `${said} ${signed(Number(delta))}`;
    })
    .join(', ');
}

function signed(value: number): string {
  return value < 0 ? `−${-value}` : `+${value}`;
}

function bagWords(bags: string | number | undefined): string {
  const text = String(bags ?? '');
  return text.includes(',') ? `bags ${text}` : `bag ${text}`;
}

/** The way on from the state of a build that does not fit. */
const NEXT: Readonly<Record<string, string>> = {
  planned: ' Reserve it first.',
  built: ' If the boards are not made, take that back first.',
  cancelled: ' Take back that it was given up, or plan a new one.',
};

function cellWords(a: Args): string {
  return `cell ${a['cell']} of tray ${a['tray']}`;
}

function inRow(a: Args): string {
  return a['row'] === undefined ? '' : ` (row ${a['row']})`;
}

/** The bags of a stale plan, each with what it has and what was planned: lists of equal length, as the refusal carries them. */
function staleBags(a: Args): string {
  const [bags, planned, free] = [a['bags'], a['planned'], a['free']].map((list) => String(list ?? '').split(', '));
  return (bags ?? [])
    .map((bag, at) => (planned?.[at] ? `bag ${bag} has ${free?.[at]} free, ${planned[at]} planned` : `bag ${bag}`))
    .join('; ');
}

function impossibleCell(a: Args): string {
  return `row ${a['row']}, column ${a['column']}: '${a['text']}' can't be a quantity: it is ${IMPOSSIBLE[String(a['why'])] ?? a['why']}`;
}

function tooManyRefs(a: Args): string {
  return `row ${a['row']}, column ${a['column']}: '${a['text']}' names more than ${a['most']} refs`;
}

/** A line for each cell, from the lines that the refusal carries: row, column, code, text, why. */
function cellLines(a: Args): string {
  return String(a['cells'] ?? '')
    .split('\n')
    .map((line) => {
      const [row = '', column = '', code, text = '', why = ''] = line.split('\t');
      return `  ${code === 'too-many-refs' ? tooManyRefs({ row, column, text, most: why }) : impossibleCell({ row, column, text, why })}`;
    })
    .join('\n');
}

/** What a kept file became: `3 bags, 12 to 14`. */
function becameWords(a: Args): string {
  if (a['became'] === 'board') return `board '${a['board']}', revision ${a['revision']}`;
  return `${count(a['bags'], 'bag')}, ${a['first'] === a['last'] ? `number ${a['first']}` : `${a['first']} to ${a['last']}`}`;
}

const SENTENCES = {
  'no-such-bag': (a) => `There is no bag ${a['bag']}.`,
  'no-such-build': (a) => `There is no build '${a['build']}'.`,
  'no-such-board': (a) => `There is no board '${a['board']}' (or not in that revision).`,
  'no-such-act': (a) => `There is no act ${a['act']}.`,
  'no-such-box': (a) => `There is no box '${a['box']}'.`,
  'draft-kept': (a) =>
    `This file was kept already: ${becameWords(a)}.${a['undoneBy'] === undefined ? ' Nothing more is to do.' : ' That was taken back since. Bring the file again.'}`,
  'no-such-draft': () =>
    'This file is not being read any more: it was kept or thrown away, or nobody touched it for 30 days. Bring it again.',
  'draft-changed': (a) =>
    `Something was said of '${a['draft']}' meanwhile. Nothing was kept; look at its lines again, then keep it.`,
  'box-left-out': (a) => `Box '${a['box']}' has no place in this order. Say where it stands as well; nothing was changed.`,
  'box-twice': (a) => `Box '${a['box']}' is named twice in this order. Name it once; nothing was changed.`,
  'not-enough': (a) =>
    `Bag ${a['bag']} ${a['onHand'] === 0 ? 'is empty' : `has ${a['onHand']} on hand`}, ${a['asked']} ${a['asked'] === 1 ? 'was' : 'were'} asked. ${a['onHand'] === 0 ? 'If' : `Take ${a['onHand']} or fewer; or, if`} you hold ${a['asked']} in your hand, say so, and the record is put right.`,
  'in-hand-large': (a) =>
    `Bag ${a['bag']} has ${a['onHand']} on hand, and ${a['asked']} in the hand is far more: it may be a slip. Nothing was booked. If it is so, count the bag first and say that it held ${a['asked']}; then take them out.`,
  'below-zero': (a) =>
    `Bag ${a['bag']} would go below zero: later it was ${words(a['later'])}. Undo that first, or count the bag.`,
  'undone-already': () => 'This was taken back already.',
  'not-undoable': (a) => `This can't be taken back: ${NOT_UNDOABLE[String(a['why'])]?.(a) ?? String(a['why'])}.`,
  'id-reused': (a) => `Id ${a['id']} was used for something else before. Take a new id.`,
  'number-taken': (a) =>
    `Bag number ${a['number']} is taken${inRow(a)}${a['others'] ? `, and so are ${a['others']}` : ''}${Number(a['more'] ?? 0) > 0 ? `, and so are ${a['more']} more` : ''}. A number is never given twice.`,
  'not-whole': (a) => `${a['field']} must be a whole number, not '${a['received']}'${inRow(a)}.`,
  'not-positive': (a) =>
    a['cell'] === undefined
      ? `${a['field']} must be at least 1, not ${a['received']}${inRow(a)}.`
      : `Nothing was taken from bag ${a['bag']} for ${cellWords(a)}. Leave it open, or say that the bag gave no more.`,
  'out-of-range': (a) =>
    a['out'] === undefined
      ? `${a['field']} must be from ${a['least']} to ${a['most']}, not ${a['received']}${inRow(a)}.`
      : `Of bag ${a['bag']}, ${a['out']} ${a['out'] === 1 ? 'is' : 'are'} out in ${cellWords(a)}, so ${a['received']} can't go back. Put back ${a['out']} or fewer; if more lie there, count the bag afterwards.`,
  'not-valid': (a) =>
    `${a['field']} must be ${EXPECTED[String(a['expected'])] ?? a['expected']}${a['received'] === '' ? '' : `, not '${a['received']}'`}${inRow(a)}.`,
  'plan-stale': (a) => `The stock changed since this was planned: ${staleBags(a)}. Nothing was reserved; plan again.`,
  override: (a) =>
    `Bag ${a['bag']} does not serve for row ${a['row']}${sayAgainst(a)}. If you take it all the same, say why; the reason is kept and shown with it.`,
  'nothing-made': (a) =>
    `Not one of ${count(a['boards'], 'board')} can be built from what is free, so nothing was promised. Its lines say what is missing; say so if the pieces are to be promised anyway.`,
  'takes-open': (a) =>
    `${count(a['open'], 'stop')} of '${a['build']}' ${Number(a['open']) === 1 ? 'is' : 'are'} not picked yet (${bagWords(a['bags'])}). Pick what lies on the bench, or say how many of ${count(a['boards'], 'board')} were made; then what is not picked stays in its bags.`,
  'picked-meanwhile': (a) =>
    `Bag ${a['bag']} was picked for ${cellWords(a)} meanwhile: ${a['picked']} ${Number(a['picked']) === 1 ? 'lies' : 'lie'} there, and ${a['saw']} were known here. Nothing was booked. Look into the cell, and take only what it lacks.`,
  'made-unknown': (a) =>
    `${count(a['lines'], 'line')} of '${a['build']}' ${Number(a['lines']) === 1 ? 'is' : 'are'} short, so ${count(a['boards'], 'board')} may not have been made. Say how many were.`,
  'nothing-to-do': () => 'There is nothing to do.',
  'build-state': (a) =>
    `Build '${a['build']}' is ${a['state']}; this can be done only while it is ${String(a['wants']).replaceAll(', ', ' or ')}.${NEXT[String(a['state'])] ?? ''}`,
  'newer-schema': (a) =>
    `This lab was written by a newer Bagatelle (schema ${a['found']}, this one knows ${a['known']}). Nothing was changed; use the newer one.`,
  'bad-home': (a) =>
    NO_LAB[String(a['why'])]?.(a['folder']) ??
    `Data can't be kept in ${a['folder']}: ${HOME[String(a['why'])] ?? a['why']}. Choose another folder with BAGATELLE_HOME.`,
  'not-demo': () =>
    'Only the demo lab may be cleared, and this is not it (or it was cleared already). Nothing was changed. For an empty lab use another data folder (BAGATELLE_HOME says which).',
  'not-empty': () => 'The lab already holds something. Use an empty data folder (BAGATELLE_HOME says which).',
  busy: () => 'Another process has been writing to the lab for a long time. Nothing was changed; try again.',
  'backup-bad': (a) => `This backup can't be restored: ${BACKUP[String(a['why'])]?.(a) ?? a['why']}. Nothing was changed.`,
  'disk-full': () => 'The disk is full: nothing was kept. Free some room and do it again.',
  'disk-read-only': () =>
    "The disk can't be written to: nothing was kept. Is it mounted for reading only, or does the folder belong to another account?",
  'disk-fault': () => 'The disk answered with an error: nothing was kept. Is it full, or has it come loose?',
  'lab-damaged': () =>
    "The records of this lab are damaged on the disk. Keep this data folder as it is ('bagatelle check' says more), and restore the last good backup into another.",
  'several-builds': (a) =>
    `Several builds answer to '${a['build']}'. Say which by its id: ${String(a['builds']).replaceAll(', ', '; ')}.`,
  'file-missing': (a) => `There is no file ${a['file']}, or it can't be read.`,
  'file-empty': (a) => `${a['file']} is empty.`,
  'file-too-slow': (a) =>
    `${a['file']} could not be read within ${a['seconds']} s. Is it the list itself? Try it in parts, or saved as CSV.`,
  'file-no-table': (a) => `${a['file']} is no table${a['why'] ? `: ${a['why']}` : ''}.`,
  'file-binary': (a) => `${a['file']} is no text${a['looksLike'] ? `; it looks like ${a['looksLike']}` : ''}.`,
  'file-too-large': (a) => `${a['file']} is too large: ${a['size']} bytes, at most ${a['most']} are read.`,
  'no-such-column': (a) =>
    `${a['file']} has no column '${a['column']}'. Its columns: ${a['columns'] || 'none that tell of parts'}.`,
  'too-many-columns': (a) =>
    `${a['file']}, row ${a['row']}, column ${a['column']}: the row goes on to here, at most ${a['most']} columns are read.`,
  'cell-too-long': (a) =>
    `${a['file']}, row ${a['row']}, column ${a['column']}: a cell of ${a['length']} characters, at most ${a['most']} are read.`,
  'too-many-refs': (a) => `${a['file']}, ${tooManyRefs(a)}.`,
  'number-impossible': (a) => `${a['file']}, ${impossibleCell(a)}.`,
  'cells-impossible': (a) =>
    `${a['file']}: nothing was read, for these cells:\n${cellLines(a)}${Number(a['more'] ?? 0) > 0 ? `\n  and ${a['more']} more` : ''}`,
} satisfies Record<RefusalCode, (args: Args) => string>;

/** The sentence of a refusal: `{code: 'no-such-bag', args: {bag: 12}}` → `There is no bag 12.` */
export function refusalText(refusal: Refusal): string {
  return SENTENCES[refusal.code](refusal.args);
}
