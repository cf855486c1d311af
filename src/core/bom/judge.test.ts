import assert from 'node:assert/strict';
import { test } from 'node:test';
import { readPart } from '#core/part/read-part.ts';
import type { Bag } from '#core/stock/stock.ts';
import { byUse, judgeLine } from './judge.ts';

function bag(number: number, text: string, more: Partial<Bag> = {}): Bag {
  const { part } = readPart(text);
  return {
    id: `bag-${number}`,
    number,
    partId: `part-${number}`,
    code: '',
    part,
    holder: 'zip-bag',
    unit: 'piece',
    box: null,
    place: null,
    state: 'sound',
    onHand: 9,
    sure: 9,
    reserved: 0,
    oldest: null,
    toCount: false,
    ...more,
  };
}

void test('of equal verdicts the bag of the package that is asked goes before one that does not say', () => {
  const bags = [bag(1, '100nF 50V'), bag(2, '100nF 50V 0603')];
  const line = { ...readPart('100nF 50V X7R 0603'), alternates: [] };
  const judged = judgeLine(line, () => bags).toSorted(byUse);
  assert.deepEqual(
    judged.map(({ verdict, bag: { number } }) => [number, verdict]),
    [
      [2, 'check'],
      [1, 'check'],
    ],
  );
});
