import assert from 'node:assert/strict';
import { test } from 'node:test';
import { readQuantity } from './quantity.ts';

const read = (text: string): unknown[] => {
  const { quantity, doubts, impossible } = readQuantity(text);
  return [quantity, impossible, ...doubts.map(({ code }) => code)];
};

void test('plain counts, with the words for pieces of the trade', () => {
  for (const [text, want] of [
    ['5', 5],
    ['5.0', 5],
    ['12 pcs', 12],
    ['x3', 3],
    ['3x', 3],
    ['100 Stk.', 100],
    ["1'000", 1000],
    ['1,000', 1000],
    ['10 шт', 10],
    ["'7", 7],
    ['0', 0],
  ] as const) {
    assert.deepEqual(read(text), [want, null], text);
  }
});

void test('nothing printed is no quantity and no doubt', () => {
  for (const text of ['', '-', 'n/a', '?', 'y']) assert.deepEqual(read(text), [null, null], text);
});

void test('loose quantities are no count: the number stands in a doubt', () => {
  for (const [text, taken] of [
    ['approx 150', 150],
    ['10+', 10],
    ['reel 500', 500],
    ['~40', 40],
    ['220pcs assorted', 220],
  ] as const) {
    assert.deepEqual(read(text), [null, null, 'quantity-estimate'], text);
    assert.equal(readQuantity(text).doubts[0]?.args['taken'], taken, text);
  }
  for (const text of ['reel', 'several hundred', 'a few'])
    assert.deepEqual(read(text), [null, null, 'quantity-unreadable'], text);
});

void test('part of a piece is a doubt; below zero or beyond sense is no quantity', () => {
  assert.deepEqual(read('2.5'), [2.5, null, 'quantity-not-whole']);
  assert.deepEqual(read('1,5'), [1.5, null, 'quantity-not-whole']);
  assert.deepEqual(read('-5'), [null, 'negative']);
  assert.deepEqual(read('99999999999'), [null, 'too-large']);
});

void test('packs are counted out; a power, a range and a part of a reel are doubts', () => {
  assert.deepEqual(read('2x50'), [100, null]);
  assert.deepEqual(read('3 × 20 pcs'), [60, null]);
  assert.deepEqual(read('1e2'), [100, null, 'quantity-estimate']);
  for (const text of ['50-60', '50 – 60', '50 to 60']) assert.equal(readQuantity(text).doubts[0]?.args['taken'], 50, text);
  assert.deepEqual(read('50-60'), [null, null, 'quantity-estimate']);
  for (const text of ['1/2 reel', '½ reel', '3/4']) assert.deepEqual(read(text), [null, null, 'quantity-unreadable'], text);
});

void test('a point before three figures goes by the habit of the file, else pieces are whole, with a doubt', () => {
  assert.deepEqual([readQuantity('1.500', 'comma').quantity, readQuantity('1.500', 'point').quantity], [1500, 1.5]);
  assert.deepEqual([readQuantity('1,500', 'comma').quantity, readQuantity('1,500', 'point').quantity], [1.5, 1500]);
  assert.deepEqual(read('1.500'), [1500, null, 'two-readings']);
  assert.deepEqual(read('2.000'), [2, null, 'two-readings']);
  assert.deepEqual(read('1.234.567'), [1234567, null]);
});

void test('full-width figures count as others do', () => {
  assert.deepEqual(
    [read('１００'), read('x１２')],
    [
      [100, null],
      [12, null],
    ],
  );
});
