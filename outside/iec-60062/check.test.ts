import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import { decimal, toNumber } from '#core/quantity/decimal.ts';
import { readFigures, readRkm } from '#core/quantity/mark.ts';
import { leadingRkmAt, quantityAt } from '#core/quantity/quantity.ts';
import { readToleranceLetter, writeToleranceLetter } from '#core/quantity/tolerance.ts';

function rows(name: string): string[][] {
  const text = readFileSync(new URL(`./data/${name}.csv`, import.meta.url), 'utf8');
  return text
    .trim()
    .split('\n')
    .slice(1)
    .map((line) => line.split(','));
}

void test('each letter-and-digit code reads to the printed value, alone and in a text', () => {
  for (const [code = '', unit = '', value = ''] of rows('rkm')) {
    assert.equal(readRkm(code), decimal(value), code);
    const inText = quantityAt(code, 0) ?? leadingRkmAt(code, 0);
    if (!code.includes('L')) assert.equal(inText?.value, decimal(value), `${code} in a text (${unit})`);
  }
});

void test('codes that the standard does not define are not read', () => {
  for (const code of ['4k7k', 'R', 'K', '4R7R', '47', '', '4.7K']) assert.equal(readRkm(code), null, code);
});

void test('each tolerance letter reads to the printed limits, and is written for them', () => {
  for (const [letter = '', low = '', high = '', picofarad = ''] of rows('tolerance')) {
    const read = readToleranceLetter(letter);
    assert.deepEqual(
      [read && toNumber(read.low) * 100, read && toNumber(read.high) * 100].map((one) => Number(one?.toPrecision(6))),
      [Number(low), Number(high)],
      letter,
    );
    assert.equal(read && writeToleranceLetter(read), letter);
    if (picofarad)
      assert.equal(readToleranceLetter(letter, decimal('4.7e-12'))?.low, decimal(`${picofarad}e-12`), `${letter} under 10 pF`);
  }
});

void test('each mark reads to the printed value', () => {
  for (const [mark = '', of, value = ''] of rows('marks'))
    assert.equal(readFigures(mark, of === 'capacitor'), decimal(value), `${mark} on a ${of}`);
});
