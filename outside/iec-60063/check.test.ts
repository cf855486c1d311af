import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import { readPart } from '#core/part/read-part.ts';
import { decimal, fromDigits, multiply, ZERO, type Decimal } from '#core/quantity/decimal.ts';
import { quantityAt } from '#core/quantity/quantity.ts';
import { readRkmOf, writeRkm } from '#core/quantity/rkm.ts';
import { membersIn, neighbours, SERIES, seriesOf } from '#core/quantity/series.ts';
import { writeQuantity } from '#core/quantity/write-quantity.ts';

const rows = readFileSync(new URL('./data/eseries.csv', import.meta.url), 'utf8')
  .trim()
  .split(/\r?\n/)
  .slice(1)
  .map((line) => line.split(','));

/** Members of a series from 1 up to 10; the file has them without the point. */
function members(series: string): Decimal[] {
  return rows.filter(([name]) => name === series).map(([, , figures = '']) => decimal(`${figures[0]}.${figures.slice(1)}`));
}

void test('the series have as many members as their names say', () => {
  for (const series of ['E3', 'E6', 'E12', 'E24', 'E48', 'E96', 'E192'])
    assert.equal(members(series).length, Number(series.slice(1)), series);
});

void test('our lists are those of the standard, member by member', () => {
  assert.equal(rows.length, 381);
  for (const series of SERIES)
    assert.deepEqual(
      membersIn(series).map((member) => fromDigits(BigInt(member), -2)),
      members(series),
      series,
    );
});

void test('each value from 100 to 999 names the series that list it, and no other; its neighbours are the members around it', () => {
  for (let figures = 100; figures <= 999; figures++) {
    const value = fromDigits(BigInt(figures), 1);
    const listed = SERIES.filter((series) => members(series).includes(fromDigits(BigInt(figures), -2)));
    assert.deepEqual(seriesOf(value), listed, String(figures));
  }
  for (const series of SERIES) {
    const decades = [-1, 0, 1].flatMap((power) => members(series).map((member) => multiply(member, fromDigits(1n, power))));
    for (let at = 1; at < decades.length - 1; at++) {
      const found = neighbours(decades[at] ?? ZERO, series);
      assert.deepEqual([found?.below, found?.nearest, found?.above], decades.slice(at - 1, at + 2), `${series} ${decades[at]}`);
    }
  }
});

void test('every member reads back from a part code and from its writing for people', () => {
  for (const member of [...members('E24'), ...members('E96'), ...members('E192')]) {
    for (const [unit, from, to] of [
      ['ohm', -1, 7],
      ['F', -12, -4],
      ['H', -9, -3],
    ] as const) {
      for (let power = from; power <= to; power++) {
        const value = multiply(member, fromDigits(1n, power));
        assert.equal(readRkmOf(writeRkm(value, unit), unit), value, writeRkm(value, unit));
        assert.equal(quantityAt(writeQuantity(value, unit), 0)?.value, value, writeQuantity(value, unit));
      }
    }
  }
});

void test('every E96 value of a resistor is read from the value cell in its code', () => {
  for (const member of members('E96')) {
    for (let power = 0; power <= 6; power++) {
      const value = multiply(member, fromDigits(1n, power));
      const code = writeRkm(value, 'ohm');
      assert.equal(readPart('', { refs: ['R1'], fields: { value: code } }).part.facts.value?.value, value, code);
    }
  }
});
