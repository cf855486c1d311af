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

/** IEC 60062 for letters, the SI brochure for prefixes; the habits of the trade are common practice, no source. */
const WRITTEN: readonly (readonly [rule: string, reading: string, ...texts: string[]])[] = [
  ['both ohm signs, U+2126 and U+03A9, and the one in a square', '47e2 ohm', '4.7k\u2126', '4.7 k\u03a9', '4.7\u33c0'],
  ['both micro signs, U+00B5 and U+03BC, and u', '1e-5 F', '10 \u00b5F', '10\u03bcF', '10uF', '10 UF', '10\u338c'],
  ['ohm in letters', '1e1 ohm', '10 ohm', '10 ohms', '10 Ohm', '10 OHMS', '10R', '10 R', '10\u03a9'],
  ['decimal comma', '15e-4 H', '1,5 mH', '1,5mH', '1.5 mH'],
  [
    'thousands marks',
    '1e6 ohm',
    '1 000 000 ohm',
    "1'000'000 \u03a9",
    '1,000,000 ohm',
    '1.000.000 ohm',
    '1\u202f000\u202f000 \u03a9',
  ],
  ['two marks say which is which', '12345e-1 ohm', '1.234,5 ohm', '1,234.5 ohm', "1'234.5 ohm", '1 234,5 ohm'],
  ['powers of ten', '1e-7 F', '1e-7 F', '1E-07F', '100e-9 F', '1.00E-7 F', '0.1e-6F'],
  ['fractions of a watt', '25e-2 W', '1/4W', '1/4 W', '1/4 watt', '\u00bcW', '\u00bc W', '1\u20444 W', '0.25W', '250mW', '250MW'],
  ['zero ohms', '0e0 ohm', '0R', '0 R', '0\u03a9', '0 ohm', '0R0', '0.0R'],
  ['prefixes in words', '5e-2 A', '50 milliamp', '50 milli amps', '50 mA', '50MA'],
  ['prefixes from femto to tera', '2e-15 F', '2 fF'],
  ['tera', '1e12 ohm', '1 Tohm', '1T\u03a9'],
];

void test('each habit of writing is read', () => {
  for (const [rule, reading, ...texts] of WRITTEN)
    for (const text of texts) assert.equal(read(text), reading, `${rule}: ${text}`);
});

void test('what has no lower case and may be milli or micro keeps the other reading', () => {
  assert.deepEqual([quantityAt('0.1MF', 0)?.value, quantityAt('0.1MF', 0)?.other], ['1e-7', '1e-4']);
  assert.equal(quantityAt('0.1MFD', 0)?.other, null, 'MFD is the old word for microfarad');
  assert.equal(quantityAt('10MH', 0)?.other, null);
});

void test('a capital E after whole figures is ohms, unless two figures follow', () => {
  assert.deepEqual([read('10E-5%'), read('4E7'), read('1E-07')], ['1e1 null', '47e-1 null', '1e-7 null']);
});

void test('± stands apart from the number', () => {
  for (const text of ['±5%', '± 5 %', '+/-5%', '+-5 %', '+/- 5%']) {
    assert.equal(read(text), '5e-2 fraction', text);
    assert.match(quantityAt(text, 0)?.sign ?? '', /^(?:±|\+\/?-)$/);
  }
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
