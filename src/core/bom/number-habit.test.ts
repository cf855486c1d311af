import assert from 'node:assert/strict';
import { test } from 'node:test';
import type { ColumnGuess, ColumnRole } from './columns.ts';
import { eitherWay, habitOf, plainNumbers } from './number-habit.ts';

const columns = (...roles: ColumnRole[]): ColumnGuess[] =>
  roles.map((role, at) => ({ column: at + 1, header: role, role, evidence: 'header', confidence: 1 }));
const habit = (role: ColumnRole, ...cells: string[]) => habitOf(cells.map((cell) => ({ cells: [cell], columns: columns(role) })));

void test('the habit is that of most decimals; names of parts and dates show none', () => {
  assert.equal(habit('value', '4,7 µF', '1.000 µF', '0,1 µF'), 'comma');
  assert.equal(habit('price', '0.10', '1,000.50'), 'point');
  assert.equal(habit('value', '1.000 µF', '100 n'), null);
  assert.equal(habit('refs', 'R1,2'), null);
  assert.equal(habit('description', 'made 12.03.2025'), null);
});

void test('numbers are rewritten by the habit; frequencies keep their three places', () => {
  assert.deepEqual(
    ['1.000 µF', '4,7 µF', '1.234,5', '16.000 MHz', '32.768 kHz', 'BC547B'].map((text) => plainNumbers(text, 'comma')),
    ['1000 µF', '4.7 µF', '1234.5', '16.000 MHz', '32.768 kHz', 'BC547B'],
  );
  assert.deepEqual(
    ['1,000 pF', '4.7 µF'].map((text) => plainNumbers(text, 'point')),
    ['1000 pF', '4.7 µF'],
  );
  assert.equal(plainNumbers('1.000', null), '1.000');
});

void test('without a habit a point before three figures is read either way', () => {
  assert.deepEqual(eitherWay('1.000 µF'), { text: '1.000', taken: '1', other: '1000' });
  for (const text of ['0.001 µF', '16.000 MHz', '4.70', '1.0005']) assert.equal(eitherWay(text), null, text);
});
