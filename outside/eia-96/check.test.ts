import assert from 'node:assert/strict';
import { test } from 'node:test';
import { readMarking } from '#core/part/marking/read-marking.ts';
import { writeMarkings } from '#core/part/marking/write-markings.ts';
import { decimal, fromDigits, type Decimal } from '#core/quantity/decimal.ts';
import { rowsOf } from '../rows-of.ts';

const LETTERS: Readonly<Record<string, number>> = { Z: -3, Y: -2, R: -2, X: -1, S: -1, A: 0, B: 1, H: 1, C: 2, D: 3, E: 4, F: 5 };

const rows = (name: string): string[][] => rowsOf(import.meta.url, name);

function readCode(mark: string): Decimal | undefined {
  const { readings } = readMarking(mark, { look: 'chip' });
  return readings.find(({ notation }) => notation.startsWith('e96'))?.facts.value?.value as Decimal | undefined; // as: a numeric fact
}

void test('every code with every letter reads to its value at 1 %', () => {
  const codes = rows('eia96');
  assert.equal(codes.length, 96);
  for (const [code = '', figures = ''] of codes)
    for (const [letter, power] of Object.entries(LETTERS))
      assert.equal(readCode(code + letter), fromDigits(BigInt(figures), power), code + letter);
});

void test('every code is written for its value', () => {
  for (const [code = '', figures = ''] of rows('eia96')) {
    const share = { value: decimal('0.01'), unit: 'fraction', origin: 'stated' } as const;
    const markings = writeMarkings({
      kind: 'resistor',
      text: '',
      facts: {
        value: { key: 'value', value: fromDigits(BigInt(figures), 2), unit: 'ohm', origin: 'stated' },
        'tolerance-low': { key: 'tolerance-low', ...share },
        'tolerance-high': { key: 'tolerance-high', ...share },
      },
    });
    assert.equal(markings.find(({ notation }) => notation === 'e96')?.text, `${code}C`);
  }
});

void test('each printed mark reads to its value', () => {
  for (const [mark = '', ohm = ''] of rows('marks')) assert.equal(readCode(mark), decimal(ohm), mark);
});

void test('what is not in the table is no code', () => {
  for (const mark of ['00A', '97A', '99C', '12G', '12W']) assert.equal(readCode(mark), undefined, mark);
});
