import assert from 'node:assert/strict';
import { test } from 'node:test';
import type { Outcome } from '#core/stock/refusal.ts';
import { answered, type RowAnswer } from './answered.ts';
import type { ReadRow } from './bom.ts';
import { perBoardOf } from './per-board.ts';
import type { RoleCell } from './row-cells.ts';
import { readTables } from './read-table.ts';

interface Read {
  readonly row: ReadRow;
  readonly cells: readonly RoleCell[] | undefined;
}

/** The first row under a header, as the reader gives it. */
function read(header: string, line: string): Read {
  const rows = [header, line].map((text, at) => ({
    row: at + 1,
    cells: text.split('|').map((cell) => cell.trim()),
    unclosed: false,
  }));
  const reading = readTables([{ form: 'delimited', rows, titles: [], headed: false }]);
  assert.ok(reading.ok);
  const [row] = reading.value.rows;
  assert.ok(row);
  return { row, cells: reading.value.cells.get(row.row) };
}

const answer = ({ row, cells }: Read, ...answers: readonly (readonly [field: string, text: string | null])[]): Outcome<ReadRow> =>
  answered(
    row,
    answers.map(([field, text]): RowAnswer => ({ row: row.row, field, text })),
    cells,
  );

function told(of: Read, ...answers: readonly (readonly [field: string, text: string | null])[]): ReadRow {
  const outcome = answer(of, ...answers);
  assert.ok(outcome.ok, JSON.stringify(outcome));
  return outcome.value;
}

const refused = (of: Read, field: string, text: string): unknown => {
  const outcome = answer(of, [field, text]);
  return outcome.ok ? null : [outcome.refusal.code, outcome.refusal.args['row'], outcome.refusal.args['field']];
};
const fact = (row: ReadRow, key: keyof ReadRow['part']['facts']): string | undefined => row.part.facts[key]?.value;
const fields = (row: ReadRow): string[] => row.doubts.map(({ field }) => field);

const BARE = read('Ref | Value | Footprint | Qty', 'C1 | 4.7 | C_0805 | 1');
const COUNT = read('Ref | Value | Footprint | Qty', 'R1,R2 | 4k7 1% | R_0805 | 3');
const ABOUT = read('Bag | Description | Qty', '7 | 4k7 1% 0805 resistor | about 50');

void test('a value that is told stands, and nothing is in doubt about it; the rest stays as it was read', () => {
  assert.deepEqual(fields(BARE.row), ['value']);
  const nano = told(BARE, ['value', '4.7 nF']);
  assert.deepEqual([fact(nano, 'value'), fact(nano, 'package'), fields(nano)], ['47e-10', '0805', []]);
  assert.equal(fact(told(BARE, ['value', 'nF']), 'value'), '47e-10', 'a unit alone goes with the number that lacked it');
  const right = told(BARE, ['value', null]);
  assert.deepEqual([right.part, fields(right)], [BARE.row.part, []]);
});

void test('an answer that says nothing of its field, or may mean two things, is refused by row and field', () => {
  for (const [field, text] of [
    ['value', 'blue'],
    ['value', '4.7 kΩ'],
    ['value', '100R'],
    ['quantity', 'few'],
    ['quantity', '2.5'],
    ['quantity', '-3'],
    ['fitted', 'perhaps'],
    ['kind', 'zzz'],
    ['refs', 'R9-R2'],
    ['bag', '0'],
    ['bag', 'tin'],
    ['row', 'x'],
    ['colour', 'x'],
  ] as const)
    assert.deepEqual(refused(BARE, field, text), ['not-valid', 2, field], `${field} ${text}`);
});

void test('pieces that are told for a board hold whatever its refs count; refs that are told are counted anew', () => {
  assert.deepEqual([fields(COUNT.row), perBoardOf(COUNT.row)], [['quantity'], 2]);
  for (const pieces of [2, 3]) {
    const row = told(COUNT, ['quantity', String(pieces)]);
    assert.deepEqual([fields(row), perBoardOf(row)], [[], pieces]);
  }
  const right = told(COUNT, ['quantity', null]);
  assert.deepEqual([fields(right), right.quantity, perBoardOf(right)], [[], 3, 2]);
  const more = told(COUNT, ['refs', 'R1-R3']);
  assert.deepEqual([fields(more), perBoardOf(more)], [[], 3]);
  assert.deepEqual(fields(told(COUNT, ['refs', 'R1-R4'])), ['quantity']);
});

void test('an estimate that is right stays an estimate; one that was counted is a count', () => {
  const about = told(ABOUT, ['quantity', null]);
  assert.deepEqual([about.quantity, about.estimate, fields(about)], [null, 50, []]);
  const counted = told(ABOUT, ['quantity', null], ['quantity', '52']);
  assert.deepEqual([counted.quantity, counted.estimate, fields(counted)], [52, undefined, []]);
});

void test('another kind reads the row anew, keeps what it can have, and takes what else was told in any order', () => {
  const strange = read('Ref | Value | Package | Qty', 'X1 | 100n 50V | 0805 | 1');
  for (const answers of [
    [
      ['kind', 'capacitor'],
      ['voltage', '25'],
    ],
    [
      ['voltage', '25'],
      ['kind', 'capacitor'],
    ],
  ] as const) {
    const row = told(strange, ...answers);
    assert.deepEqual(
      [row.part.kind, fact(row, 'value'), fact(row, 'voltage'), fact(row, 'package')],
      ['capacitor', '1e-7', '25e0', '0805'],
    );
    assert.ok(!fields(row).includes('kind'));
  }
  assert.equal(told(BARE, ['kind', 'Widerstand']).part.kind, 'resistor');
});

void test('words that say more than was asked are taken whole: what is told wins, what they leave open stays as it was read', () => {
  const strange = read('Bag | Description | Voltage | Qty', '33 | 33; what is this | 50 V | 20');
  assert.ok(fields(strange.row).includes('kind'));
  const all = told(strange, ['kind', '33 ohm 0805 resistor']);
  assert.deepEqual(
    [all.part.kind, fact(all, 'value'), fact(all, 'package'), fact(all, 'voltage'), all.part.text, fields(all)],
    ['resistor', '33e0', '0805', '5e1', '33 ohm 0805 resistor', []],
  );
  const more = told(BARE, ['value', '4.7 nF 50 V 0603']);
  assert.deepEqual(
    [fact(more, 'value'), fact(more, 'voltage'), fact(more, 'package'), fields(more)],
    ['47e-10', '5e1', '0603', []],
  );
  const other = told(BARE, ['value', '4.7 µH inductor']);
  assert.deepEqual(
    [other.part.kind, fact(other, 'value'), fact(other, 'package'), fields(other)],
    ['inductor', '47e-7', '0805', []],
  );
  const named = told(strange, ['kind', 'resistor'], ['package', '0805 1%']);
  assert.deepEqual([fact(named, 'package'), fact(named, 'tolerance-high')], ['0805', '1e-2']);
  assert.deepEqual(refused(BARE, 'value', '4.7 V capacitor'), ['not-valid', 2, 'value']);
});

void test('a part that is told as a whole takes the place of all that was read of it', () => {
  const row = told(BARE, ['value', '4.7 nF'], ['part', '10k 1% 0603 resistor']);
  assert.deepEqual(
    [row.part.text, row.part.kind, fact(row, 'value'), fact(row, 'package')],
    ['10k 1% 0603 resistor', 'resistor', '1e4', '0603'],
  );
  const then = told(BARE, ['part', '10k 1% 0603 resistor'], ['package', '0805']);
  assert.equal(fact(then, 'package'), '0805');
});

void test('where a bag goes is told in words, its number in figures', () => {
  const row = told(ABOUT, ['box', 'B'], ['place', 'front'], ['bag', '12']);
  assert.deepEqual([row.box, row.place, row.bag], ['B', 'front', '12']);
});
