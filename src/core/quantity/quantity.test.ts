import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { decimal, fromDigits } from './decimal.ts';
import { plainText } from './plain-text.ts';
import { quantityAt } from './quantity.ts';
import { readRkmOf, writeRkm } from './rkm.ts';
import { writeQuantity } from './write-quantity.ts';

const SEED = { seed: 62063 };

function read(text: string): string {
  const quantity = quantityAt(plainText(text), 0);
  return quantity ? `${quantity.value} ${quantity.unit}` : 'null';
}

void test('notations of one value read equal', () => {
  for (const text of [
    '4.7 kΩ',
    '4,7kΩ',
    '4.7kohm',
    '4.7 K Ohm',
    '4700 Ω',
    '4700R',
    '４．７ｋΩ',
    '4.7 kOhm',
    "4'700 Ω",
    '4 700 ohm',
  ])
    assert.equal(read(text), '47e2 ohm', text);
  for (const text of ['100nF', '100 nf', '0.1uF', '0,1 µF', '.1uF', '0.1UF', '100,000 pF', '0.1 micro farad'])
    assert.equal(read(text), '1e-7 F', text);
});

void test('a letter may stand for the point', () => {
  for (const [text, value] of [
    ['4k7', '47e2'],
    ['2K21', '221e1'],
    ['0R1', '1e-1'],
    ['4n7', '47e-10'],
    ['0u1', '1e-7'],
    ['4M7', '47e5'],
  ] as const)
    assert.equal(read(text).split(' ')[0], value, text);
});

void test('M in capitals is milli with henry and ampere, mega with hertz and ohm', () => {
  assert.equal(read('10MH'), '1e-2 H');
  assert.equal(read('150MA'), '15e-2 A');
  assert.equal(read('16MHZ'), '16e6 Hz');
  assert.equal(read('1MOHM'), '1e6 ohm');
});

void test('a fraction of a watt is exact', () => {
  for (const [text, value] of [
    ['1/4W', '25e-2'],
    ['1/8 W', '125e-3'],
    ['1/10W', '1e-1'],
    ['1/16 W', '625e-4'],
  ] as const)
    assert.equal(read(text), `${value} W`);
});

void test('a comma before three digits is a thousands mark, and the other reading is kept', () => {
  const quantity = quantityAt('1,500pF', 0);
  assert.equal(quantity?.value, '15e-10');
  assert.equal(quantity?.other, '15e-13');
  assert.equal(quantityAt('3.000 MHz', 0)?.value, '3e6');
});

/** Values that occur: down to pF and pH, µΩ and single hertz; no kilofarads. */
const value = (unit: string, min: number, max: number): fc.Arbitrary<{ digits: bigint; exponent: number; unit: string }> =>
  fc.record({ digits: fc.bigInt({ min: 1n, max: 999n }), exponent: fc.integer({ min, max }), unit: fc.constant(unit) });
const values = fc.oneof(value('ohm', -6, 6), value('F', -12, 0), value('H', -12, 0), value('Hz', 0, 6));

void test('what is written for people reads back', () => {
  fc.assert(
    fc.property(values, ({ digits, exponent, unit }) => {
      const value = fromDigits(digits, exponent);
      const back = quantityAt(writeQuantity(value, unit), 0);
      assert.equal(back?.value, value);
      assert.equal(back?.unit, unit);
    }),
    SEED,
  );
});

void test('what is written for part codes reads back', () => {
  fc.assert(
    fc.property(values, ({ digits, exponent, unit }) => {
      const value = fromDigits(digits, exponent);
      assert.equal(readRkmOf(writeRkm(value, unit), unit), value);
    }),
    SEED,
  );
  assert.deepEqual(
    ['4700', '1000', '0.47', '0', '10', '0.005', '3300000'].map((one) => writeRkm(decimal(one), 'ohm')),
    ['4K7', '1K0', 'R47', '0R', '10R', 'R005', '3M3'],
  );
});
