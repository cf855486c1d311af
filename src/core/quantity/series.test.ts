import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { compare, decimal, fromDigits, subtract, type Decimal } from './decimal.ts';
import { membersIn, neighbours, SERIES, seriesOf } from './series.ts';

const SEED = { seed: 60063 };
const values = fc
  .tuple(fc.bigInt({ min: 1n, max: 10n ** 9n }), fc.integer({ min: -20, max: 12 }))
  .map(([digits, exponent]) => fromDigits(digits, exponent));
const size = (value: Decimal): Decimal => (compare(value, decimal(0)) < 0 ? subtract(decimal(0), value) : value);

// IEC 60063:2015, lists; the whole of them is compared in outside/iec-60063
void test('a value names every series that has it, in any decade', () => {
  for (const [value, series] of [
    ['4700', 'E3 E6 E12 E24 E192'],
    ['4.7e-12', 'E3 E6 E12 E24 E192'],
    ['9090', 'E48 E96 E192'],
    ['0.00909', 'E48 E96 E192'],
    ['9100', 'E24'],
    ['1', 'E3 E6 E12 E24 E48 E96 E192'],
    ['9.2e6', 'E192'],
    ['9.19e6', ''],
    ['12345', ''],
    ['0', ''],
    ['-4700', ''],
  ] as const)
    assert.equal(seriesOf(decimal(value)).join(' '), series, value);
});

// nearest values recomputed by hand from the lists; the two ties are the rule of `neighbours`
void test('the neighbours of a value, over the end of a decade too', () => {
  for (const [value, series, below, above, nearest, deviation] of [
    ['4700', 'E24', '4300', '5100', '4700', '0'],
    ['97e3', 'E24', '91e3', '100e3', '100e3', '0.030928'],
    ['12345', 'E24', '12e3', '13e3', '12e3', '-0.027947'],
    ['12345', 'E96', '12.1e3', '12.4e3', '12.4e3', '0.004455'],
    ['9200', 'E96', '9090', '9310', '9310', '0.011957'],
    ['1050', 'E24', '1000', '1100', '1100', '0.047619'],
    ['1', 'E3', '0.47', '2.2', '1', '0'],
    ['9.99e-12', 'E192', '9.88e-12', '10e-12', '10e-12', '0.001001'],
  ] as const) {
    const found = neighbours(decimal(value), series);
    assert.deepEqual(
      found,
      { below: decimal(below), above: decimal(above), nearest: decimal(nearest), deviation: decimal(deviation) },
      `${value} in ${series}`,
    );
  }
  assert.equal(neighbours(decimal(0), 'E24'), null);
  assert.equal(neighbours(decimal(-1), 'E24'), null);
});

void test('neighbours are members around the value, and none lies between', () => {
  fc.assert(
    fc.property(values, fc.constantFrom(...SERIES), (value, series) => {
      const found = neighbours(value, series);
      assert.ok(found);
      const { below, above, nearest } = found;
      for (const one of [below, above, nearest]) assert.ok(seriesOf(one).includes(series));
      assert.ok(compare(below, value) < 0 && compare(value, above) < 0);
      assert.equal(nearest === value, seriesOf(value).includes(series));
      assert.equal(neighbours(below, series)?.above, nearest === value ? value : above);
      for (const other of [below, above]) assert.ok(compare(size(subtract(nearest, value)), size(subtract(other, value))) <= 0);
    }),
    SEED,
  );
});

void test('a power of ten changes nothing but the decade', () => {
  fc.assert(
    fc.property(fc.integer({ min: 100, max: 999 }), fc.integer({ min: -15, max: 12 }), (figures, power) => {
      assert.deepEqual(seriesOf(fromDigits(BigInt(figures), power)), seriesOf(fromDigits(BigInt(figures), 0)));
    }),
    SEED,
  );
});

void test('each series holds the coarser ones of its sort', () => {
  for (const [coarse, fine] of [
    ['E3', 'E6'],
    ['E6', 'E12'],
    ['E12', 'E24'],
    ['E48', 'E96'],
    ['E96', 'E192'],
  ] as const)
    for (const member of membersIn(coarse)) assert.ok(membersIn(fine).includes(member), `${member} of ${coarse} in ${fine}`);
});
