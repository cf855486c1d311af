import assert from 'node:assert/strict';
import { test } from 'node:test';
import * as fc from 'fast-check';
import Papa from 'papaparse';
import { readDelimited } from './delimited.ts';

const cells = (text: string, delimiter = ','): (readonly string[])[] =>
  readDelimited(text.split('\n'), delimiter).map((row) => row.cells);

void test('cells are cut at the delimiter, quotes guard it and line ends, doubled quotes are one (RFC 4180, 2.5 to 2.7)', () => {
  assert.deepEqual(cells('aaa,"b\nbb","c""c"\nx,,'), [
    ['aaa', 'b\nbb', 'c"c'],
    ['x', '', ''],
  ]);
});

void test('a record has the physical line where it starts, quoted line ends counted', () => {
  assert.deepEqual(
    readDelimited(['a,b', '"x', 'y",1', 'c,d'], ',').map((row) => row.row),
    [1, 2, 4],
  );
});

void test('blanks around a quoted cell are dropped, a quote inside an unquoted cell is literal', () => {
  assert.deepEqual(cells('R1, "10k, 1%" ,3.5" disk'), [['R1', '10k, 1%', '3.5" disk']]);
});

void test('a quote that never closes spoils its own line alone', () => {
  const rows = readDelimited(['Ref,Value', 'R1,"10k', 'R2,22k', 'R3,"33k"'], ',');
  assert.deepEqual(
    rows.map((row) => row.cells),
    [
      ['Ref', 'Value'],
      ['R1', '10k'],
      ['R2', '22k'],
      ['R3', '33k'],
    ],
  );
  assert.deepEqual(
    rows.map((row) => row.unclosed ?? false),
    [false, true, false, false],
  );
});

void test('a quote closed in the wrong place spoils its own line alone', () => {
  const rows = readDelimited(['"R1"x,10k', 'R2,22k'], ',');
  assert.equal(rows[0]?.unclosed, true);
  assert.deepEqual(rows[1]?.cells, ['R2', '22k']);
});

const delimiter = fc.constantFrom(',', ';', '\t', '|');
const cell = fc.string({ unit: fc.constantFrom('a', 'Ω', '1', ' ', '"', ',', ';', '\t', '|', '\n', '.'), maxLength: 8 });
const table = fc.array(fc.array(cell, { minLength: 2, maxLength: 5 }), { minLength: 1, maxLength: 6 });

void test('law: a table written with any delimiter reads back the same cells', () => {
  fc.assert(
    fc.property(table, delimiter, (rows, mark) => {
      const text = rows.map((row) => row.map((one) => `"${one.replaceAll('"', '""')}"`).join(mark)).join('\n');
      assert.deepEqual(cells(text, mark), rows);
    }),
    { seed: 20_250_101 },
  );
});

void test('outside check: what papaparse writes is read as the same cells', () => {
  fc.assert(
    fc.property(table, delimiter, (rows, mark) => {
      const text = Papa.unparse(rows, { delimiter: mark, newline: '\n' });
      assert.deepEqual(cells(text, mark), rows);
    }),
    { seed: 20_250_102 },
  );
});
