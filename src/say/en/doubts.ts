import type { Doubt, DoubtCode } from '#core/part/doubt.ts';

import { count } from './count.ts';
import { factName } from './fact-name.ts';

type Args = Doubt['args'];

/** Why something is a doubt, and what would settle it. */
export interface DoubtWords {
  readonly why: string;
  readonly settle: string;
}

const SENTENCES = {
  'unit-assumed': (a) => ({
    why: `'${a['text']}' has no unit; it was read in ${a['unit']}.`,
    settle: 'Write the unit with the number, or in the header of the column.',
  }),
  'two-readings': (a) => ({
    why: `'${a['text']}' can be read as ${a['taken']} or as ${a['other']}.`,
    settle: `Write ${a['taken']} or ${a['other']} alone.`,
  }),
  range: (a) => ({
    why: `'${a['text']}' is a range or several values, where one was wanted.`,
    settle: 'Write one value, or one line for each.',
  }),
  'code-assumed': (a) => ({
    why: `'${a['text']}' was read as a printed code, as ${a['taken']}; it may be ${a['other']}.`,
    settle: 'Write the value with its unit.',
  }),
  conflict: (a) => ({
    why: `The row says ${a['taken']}, but ${a['place']} says ${a['other']}.`,
    settle: 'Correct the one that is wrong.',
  }),
  'kind-unclear': (a) => ({
    why: `It was taken for a part of kind ${a['taken']}, but may be ${a['other']}.`,
    settle: 'Name the kind in the description or in a column of its own.',
  }),
  'kind-unknown': (a) => ({
    why: `Nothing in '${a['text']}' says what kind of part it is.`,
    settle: 'Name the kind in the description or in a column of its own.',
  }),
  'size-metric-or-imperial': (a) => ({
    why: `'${a['text']}' is a size both in metric and in imperial; it was taken for ${a['taken']}, and may be ${a['other']}.`,
    settle: 'Write the imperial size, or say metric.',
  }),
  implausible: (a) => ({
    why: `'${a['text']}' was read as ${a['taken']}, which no such part has.`,
    settle: 'Look at the unit and the prefix.',
  }),
  'quantity-not-refs': (a) => ({
    why: `The quantity is ${a['quantity']}, but the line names ${count(a['refs'], 'ref')}.`,
    settle: 'Correct the quantity or the refs.',
  }),
  'quantity-not-whole': (a) => ({
    why: `'${a['text']}' is no whole number of pieces.`,
    settle: 'Write whole pieces, or the unit that is meant.',
  }),
  'quantity-unreadable': (a) => ({ why: `'${a['text']}' says no number.`, settle: 'Count them, and write the number.' }),
  'quantity-estimate': (a) => ({
    why: `'${a['text']}' is no plain count; about ${a['taken']} may be there.`,
    settle: 'Count them, and write the number.',
  }),
  'ref-twice': (a) => ({
    why: `${a['ref']} is named more than once; it was counted once.`,
    settle: 'Leave one, or correct the other.',
  }),
  'ref-unreadable': (a) => ({
    why: `'${a['text']}' is no range that can be followed; it was left out.`,
    settle: 'Write the refs one by one, or the lower one first.',
  }),
  'column-guessed': (a) => ({
    why: `Column ${a['column']} was taken for ${a['taken']} by its cells alone.`,
    settle: 'Give the column a header, or say what it is.',
  }),
  'no-header': () => ({
    why: 'The table has no header; what its columns mean was guessed from their cells.',
    settle: 'Put a header over the table, or say what the columns are.',
  }),
  'quote-unclosed': (a) => ({
    why: `A quote opens in row ${a['row']} and never closes; the row was cut at its delimiters.`,
    settle: 'Close the quote, or take it out.',
  }),
  'encoding-guessed': (a) => ({
    why: `The file does not say its encoding; it was read as ${a['taken']}, and letters such as µ or Ω may be wrong.`,
    settle: 'Save the file as UTF-8.',
  }),
  'cells-uneven': (a) => ({
    why: `Row ${a['row']} has ${a['received']} cells where the header has ${a['expected']}; some were joined again.`,
    settle: 'Put quotes around cells that hold the delimiter.',
  }),
  'bag-number': (a) => ({
    why: `'${a['text']}' is no number of a bag: those are whole, from 1 to ${a['most']}.`,
    settle: 'Correct it, or leave it out: the bag then gets the next free number.',
  }),
  'text-long': (a) => ({
    why: `A cell has ${a['length']} characters; only the first ${a['most']} were read.`,
    settle: 'Shorten the cell to what says the part.',
  }),
  'number-taken': (a) => ({ why: `The number ${a['number']} is taken by another bag.`, settle: 'Give another number.' }),
} satisfies Record<DoubtCode, (args: Args) => DoubtWords>;

/** A doubt in words: `{code: 'ref-twice', args: {ref: 'R1'}}` → why `R1 is named more than once …`, and what would settle it. */
export function doubtText(doubt: Doubt): DoubtWords {
  return SENTENCES[doubt.code](doubt.args);
}

/** A doubt that a bag keeps, whose reason is no longer known. */
export function keptDoubt(field: string): DoubtWords {
  return {
    why: `Its ${factName(field)} was not sure when it came in.`,
    settle: 'Look at the part; if it is another, take it into a bag of its own.',
  };
}
