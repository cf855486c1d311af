import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { compare, decimal, digitsOf, fromDigits, multiply, parseDecimal, ratio, subtract, toNumber, ZERO } from './decimal.ts';

const SEED = 20261125;
const anyDecimal = fc
  .tuple(fc.bigInt({ min: -(10n ** 18n), max: 10n ** 18n }), fc.integer({ min: -15, max: 15 }))
  .map(([digits, exponent]) => fromDigits(digits, exponent));

void test('one value has one spelling', () => {
  for (const text of ['4700', '4.7e3', '+4700.0', '0.47e4', '00004700']) assert.equal(parseDecimal(text), '47e2');
  assert.equal(decimal('1e-7'), '1e-7');
  for (const text of ['0', '-0', '0.000', '0e9']) assert.equal(parseDecimal(text), ZERO);
});

void test('what is no plain number is null, not a guess', () => {
  for (const text of ['', '.', '4k7', '1,5', '0x10', 'Infinity', 'NaN', '1e', ' 1', '1 '])
    assert.equal(parseDecimal(text), null, text);
  assert.throws(() => decimal('4k7'), /plain number/);
});

void test('a canonical decimal reads back as itself', () => {
  fc.assert(
    fc.property(anyDecimal, (value) => parseDecimal(value) === value),
    { seed: SEED },
  );
});

void test('order and product are those of the exact numbers', () => {
  const scaled = (digits: bigint, exponent: number): bigint => digits * 10n ** BigInt(exponent + 40);
  fc.assert(
    fc.property(anyDecimal, anyDecimal, (a, b) => {
      const [x, y] = [digitsOf(a), digitsOf(b)];
      const difference = scaled(x.digits, x.exponent) - scaled(y.digits, y.exponent);
      assert.equal(compare(a, b), difference < 0n ? -1 : difference > 0n ? 1 : 0);
      assert.equal(multiply(a, b), fromDigits(x.digits * y.digits, x.exponent + y.exponent));
    }),
    { seed: SEED },
  );
});

void test('the double is the nearest one', () => {
  assert.equal(toNumber(decimal('100e-9')), 1e-7);
  assert.equal(toNumber(decimal('0.1')), 0.1);
});

void test('a difference is exact, and added again gives the first', () => {
  assert.equal(subtract(decimal('0.3'), decimal('0.1')), '2e-1');
  fc.assert(
    fc.property(anyDecimal, anyDecimal, (a, b) => {
      assert.equal(subtract(a, subtract(ZERO, b)), subtract(b, subtract(ZERO, a)));
      assert.equal(subtract(subtract(a, b), a), subtract(ZERO, b));
    }),
    { seed: SEED },
  );
});

void test('a ratio is rounded to the places asked for, halves away from zero', () => {
  for (const [a, b, places, rounded] of [
    ['1', '3', 4, '0.3333'],
    ['2', '3', 4, '0.6667'],
    ['-1', '8', 2, '-0.13'],
    ['1', '-8', 2, '-0.13'],
    ['1e9', '1e-3', 0, '1e12'],
    ['0', '7', 3, '0'],
  ] as const)
    assert.equal(ratio(decimal(a), decimal(b), places), decimal(rounded), `${a} / ${b}`);
});
