import assert from 'node:assert/strict';
import { test } from 'node:test';
import { readTables } from './read-table.ts';

function rowOf(header: string, ...cells: readonly (readonly string[])[]) {
  const rows = [header.split(','), ...cells].map((row, at) => ({ row: at + 1, cells: row }));
  const read = readTables([{ form: 'delimited', titles: [], headed: false, rows }]);
  assert.ok(read.ok);
  const [row] = read.value.rows;
  assert.ok(row);
  return row;
}

void test('invisible marks change nothing of what a row says', () => {
  const row = rowOf('Ref,Qty,Value,Description', ['R\u200b1', '1', '1\u202e0k\u200b', 'chip \u202eresistor 0805']);
  assert.deepEqual([row.refs, row.part.facts.value?.value, row.part.text], [['R1'], '1e4', '10k chip resistor 0805']);
});

void test('a number in a column of bags that no bag can have is a doubt', () => {
  for (const cell of ['-1', '0', '1.5', '9007199254740993', '1000001', '−3', '1e9'])
    assert.ok(
      rowOf('Bag,Qty,Description', [cell, '5', 'resistor 10k 0805'], ['7', '5', 'resistor 22k 0805']).doubts.some(
        ({ field, code }) => field === 'location' && code === 'bag-number',
      ),
      cell,
    );
  for (const cell of ['1', '007', '1000000', 'A-12', 'tin on the sill', '12, 13'])
    assert.ok(
      !rowOf('Bag,Qty,Description', [cell, '5', 'resistor 10k 0805'], ['7', '5', 'resistor 22k 0805']).doubts.some(
        ({ code }) => code === 'bag-number',
      ),
      cell,
    );
});

void test('of a cell that is longer than a page the beginning is read, with a doubt', () => {
  const row = rowOf('Ref,Qty,Value', ['R1', '1', `4k7 1% 0805 ${'1/4W/'.repeat(1000)}`]);
  assert.equal(row.part.facts.value?.value, '47e2');
  assert.deepEqual(
    row.doubts.filter(({ code }) => code === 'text-long').map(({ field, args }) => [field, args]),
    [['row', { length: 5012, most: 2000 }]],
  );
  assert.ok(!rowOf('Ref,Qty,Value', ['R1', '1', '4k7']).doubts.some(({ code }) => code === 'text-long'));
});
