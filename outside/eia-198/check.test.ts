import assert from 'node:assert/strict';
import { test } from 'node:test';
import { readMarking } from '#core/part/marking/read-marking.ts';
import { decimal, fromDigits, multiply } from '#core/quantity/decimal.ts';
import { readVoltageCode, writeVoltageCode } from '#core/quantity/mark.ts';
import { rowsOf } from '../rows-of.ts';

const rows = (name: string): string[][] => rowsOf(import.meta.url, name);

void test('each letter with each power of ten reads to its capacitance', () => {
  for (const [letter = '', figures = ''] of rows('letters'))
    for (const power of [0, 1, 2, 3, 4, 5, 6, 9]) {
      const value = multiply(decimal(figures), fromDigits(1n, (power === 9 ? -1 : power) - 12));
      const { readings } = readMarking(`${letter}${power}`, { look: 'capacitor' });
      assert.equal(readings.find(({ notation }) => notation === 'eia-198')?.facts.value?.value, value, `${letter}${power}`);
    }
});

void test('examples: A5 is 100 nF, S3 4.7 nF, N4 33 nF, J9 0.22 pF', () => {
  // computed from the table
  const read = (mark: string): number => Number(readMarking(mark, { look: 'capacitor' }).readings[0]?.facts.value?.value);
  assert.deepEqual(['A5', 'S3', 'N4', 'J9'].map(read), [1e-7, 4.7e-9, 3.3e-8, 2.2e-13]);
});

void test('each voltage code reads and is written, and stands in front of a capacitance or behind it', () => {
  for (const [code = '', volts = ''] of rows('voltage')) {
    assert.equal(readVoltageCode(code), decimal(volts), code);
    assert.equal(writeVoltageCode(decimal(volts)), code);
    for (const mark of [`${code}104K`, `104K${code}`])
      assert.equal(readMarking(mark, { look: 'capacitor' }).readings[0]?.facts.voltage?.value, decimal(volts), mark);
  }
});
