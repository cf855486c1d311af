import assert from 'node:assert/strict';
import { test } from 'node:test';
import type { DraftRow } from '#api/drafts.ts';
import {
  afterAnswer,
  afterOut,
  asTold,
  besideRow,
  fieldToSay,
  groupsOf,
  nextDoubt,
  numbersOf,
  refusalAt,
  sampleRows,
  shownOf,
} from './draft.ts';

const doubt = { field: 'value', why: 'w', settle: 's', answers: [], right: null, stops: false };
const row = (number: number, changed: Partial<DraftRow> = {}): DraftRow => ({
  row: number,
  refs: [],
  quantity: 1,
  about: false,
  fitted: true,
  kind: 'resistor',
  text: '4k7',
  said: { name: '', rest: '' },
  gloss: [],
  bag: number,
  box: null,
  place: null,
  out: false,
  part: true,
  doubts: [],
  answers: [],
  ...changed,
});

void test('rows with doubts stand first, then what was told; a row that is left out asks nothing', () => {
  const rows = [
    row(2),
    row(3, { doubts: [doubt], out: true }),
    row(4, { doubts: [doubt] }),
    row(5, { answers: [{ row: 5, field: 'value', text: 'x' }] }),
    row(6, { part: false }),
  ];
  assert.deepEqual(
    groupsOf(rows).map(({ group, rows }) => [group, rows.map((one) => one.row)]),
    [
      ['doubts', [4]],
      ['told', [5]],
      ['clear', [2]],
      ['none', [6]],
      ['out', [3]],
    ],
  );
});

void test('the next doubt is the one below, from the first again at the end, and never the same', () => {
  const rows = [row(2, { doubts: [doubt] }), row(3), row(4, { doubts: [doubt] })];
  assert.equal(nextDoubt(rows, null), 2);
  assert.equal(nextDoubt(rows, 2), 4);
  assert.equal(nextDoubt(rows, 4), 2);
  assert.equal(nextDoubt([row(2, { doubts: [doubt] })], 2), null);
});

void test('after an answer a row with another doubt keeps the eye', () => {
  const rows = [row(2, { doubts: [doubt, { ...doubt, field: 'package' }] }), row(3, { doubts: [doubt] })];
  assert.equal(afterAnswer(rows, 2), 2);
  assert.equal(afterAnswer(rows, 3), 2);
});

void test('a row without doubts keeps the eye, whatever is said of it or left out', () => {
  const rows = [row(2), row(3, { doubts: [doubt] })];
  assert.deepEqual([afterAnswer(rows, 2), afterOut(rows, 2), afterOut(rows, 3)], [2, 2, null]);
  assert.deepEqual(rows.map(fieldToSay), ['part', 'value']);
});

void test('what stops the file stands before other doubts, and is the next', () => {
  const rows = [row(2, { doubts: [doubt] }), row(3, { doubts: [{ ...doubt, field: 'bag', stops: true }] }), row(4)];
  assert.deepEqual(
    groupsOf(rows)[0]?.rows.map((one) => one.row),
    [3, 2],
  );
  assert.deepEqual([nextDoubt(rows, null), nextDoubt(rows, 3), nextDoubt(rows, 2)], [3, 2, 3]);
});

void test('up and down walk all shown rows as they stand, and stay at the ends', () => {
  const rows = [...Array.from({ length: 8 }, (_, at) => row(at + 1)), row(9, { doubts: [doubt] }), row(10, { out: true })];
  const at = (on: number | null) => ({ on, show: null });
  assert.deepEqual([besideRow(rows, at(null), 1), besideRow(rows, at(null), -1)], [9, 10]);
  assert.deepEqual([besideRow(rows, at(9), 1), besideRow(rows, at(6), 1), besideRow(rows, at(10), 1)], [1, 10, 10]);
  assert.deepEqual([besideRow(rows, at(9), -1), besideRow(rows, at(1), -1)], [9, 9]);
});

void test('a refusal stands at the field that was typed in, and nowhere else', () => {
  const problem = { type: '', title: '', status: 422, detail: 'no', code: 'not-valid', row: 2, field: 'quantity' };
  const trouble = { kind: 'refused', problem } as const;
  assert.equal(refusalAt(trouble, { row: 2, field: 'quantity' }), 'no');
  assert.equal(refusalAt(trouble, { row: 2, field: 'value' }), null);
  assert.equal(refusalAt(trouble, { row: 3, field: 'quantity' }), null);
  assert.equal(refusalAt({ kind: 'away' }, { row: 2, field: 'quantity' }), null);
  assert.equal(refusalAt(trouble, null), null);
});

void test('six clear rows are shown at first, then as many as were asked for', () => {
  const group = { group: 'clear', rows: Array.from({ length: 60 }, (_, at) => row(at + 1)) } as const;
  assert.deepEqual([shownOf(group, null), shownOf(group, 56), shownOf(group, 900)], [6, 56, 60]);
});

void test('numbers of the bags to be made are said from the first to the last', () => {
  assert.equal(numbersOf({ first: 7, last: 9 }), '7–9');
  assert.equal(numbersOf({ first: 7, last: 7 }), '7');
  assert.equal(numbersOf(null), '');
});

void test('the first lines of the file are put together from their columns', () => {
  const column = { column: 1, header: '', role: 'refs', sure: 'sure', evidence: '' } as const;
  const columns = [
    { ...column, samples: ['R1', 'R2'] },
    { ...column, column: 2, samples: ['4k7'] },
  ];
  assert.deepEqual(sampleRows({ columns }), [
    ['R1', '4k7'],
    ['R2', ''],
  ]);
});

void test('rows stand as they were told before the draft holds it; one that is being typed stays until then', () => {
  const rows = [row(2, { doubts: [doubt] }), row(3, { doubts: [doubt] }), row(4)];
  const held = { answers: [{ row: 2, field: 'value', text: '4.7 nF' }], out: [{ row: 4, out: true }] };
  assert.deepEqual(
    asTold(rows, held, null).map((one) => [one.doubts.length, one.answers.length, one.out]),
    [
      [0, 1, false],
      [1, 0, false],
      [0, 0, true],
    ],
  );
  assert.deepEqual(asTold(rows, held, { row: 2, field: 'value' })[0]?.doubts, [doubt]);
  assert.equal(asTold(rows, { box: 'A' }, null), rows);
});
