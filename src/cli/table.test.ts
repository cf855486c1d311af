import assert from 'node:assert/strict';
import { test } from 'node:test';
import { cut, tableLines, widthOf } from './table.ts';

void test('a width counts columns of the terminal, not code units', () => {
  assert.equal(widthOf('4.7 kΩ'), 6);
  assert.equal(widthOf('抵抗'), 4);
  assert.equal(widthOf('e\u0301'), 1);
  assert.equal(widthOf('\u001B[1mbold\u001B[22m'), 4);
});

void test('what is cut ends with an ellipsis and keeps to the width', () => {
  assert.equal(cut('capacitor', 5), 'capa…');
  assert.equal(cut('抵抗器', 4), '抵…');
  assert.equal(cut('cap', 5), 'cap');
});

void test('a table keeps its columns in line and each row on one line', () => {
  const rows = [
    { bag: 3, text: 'ceramic\ncapacitor' },
    { bag: 120, text: null },
  ];
  const lines = tableLines(
    rows,
    [
      { head: 'bag', cell: (row) => row.bag, right: true },
      { head: 'part', cell: (row) => row.text, gives: true },
    ],
    80,
  );
  assert.deepEqual(lines, ['bag  part', '  3  ceramic capacitor', '120  –']);
});

void test('the column that gives way shrinks when the terminal is narrow', () => {
  const lines = tableLines([{ text: 'x'.repeat(60) }], [{ head: 'part', cell: (row) => row.text, gives: true }], 20);
  assert.equal(lines[1], `${'x'.repeat(19)}…`);
});
