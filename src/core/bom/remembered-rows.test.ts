import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import type { PlainTable } from './plain-table.ts';
import type { ColumnRole } from './columns.ts';
import { readTables } from './read-table.ts';

const HEADER = ['Refs', 'Value', 'Package', 'Description', 'Qty'];
const TOLD = new Map<string, ColumnRole>([
  ['1', 'refs'],
  ['2', 'value'],
  ['3', 'package'],
  ['4', 'description'],
  ['5', 'quantity'],
]);
const row = fc.tuple(
  fc.constantFrom('R1', 'C1', 'L1', 'U1', 'R1, R2', ''),
  fc.constantFrom('10k', '100n', '10u', '4k7', 'BC547', '47', ''),
  fc.constantFrom('0805', 'SOT-23', ''),
  fc.constantFrom('resistor 1%', 'capacitor X7R 50V', 'LED red', '10k resistor', ''),
  fc.constantFrom('1', '2', '7'),
);

function parts(rows: readonly (readonly string[])[]): unknown[] {
  const cells = [HEADER, ...rows];
  const table: PlainTable = {
    form: 'delimited',
    titles: [],
    headed: true,
    rows: cells.map((one, at) => ({ row: at + 1, cells: [...one] })),
  };
  const read = readTables([table], { told: TOLD });
  assert.ok(read.ok);
  return read.value.rows.map((one) => ({ ...one, row: 0 }));
}

void test('a row among many, like or unlike, is read as it is alone', () => {
  fc.assert(
    fc.property(fc.array(row, { minLength: 1, maxLength: 12 }), (rows) => {
      assert.deepEqual(
        parts([...rows, ...rows]),
        [...rows, ...rows].flatMap((one) => parts([one])),
      );
    }),
    { seed: 5000, numRuns: 150 },
  );
});
