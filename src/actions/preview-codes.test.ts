import assert from 'node:assert/strict';
import { test } from 'node:test';
import { partCode } from '#core/part/part-code.ts';
import { readPart } from '#core/part/read-part.ts';
import type { Bag } from '#core/stock/stock.ts';
import { previewCodes, type CodePreview } from './preview-codes.ts';

const STOCK = ['4k7 1% 0805 resistor', '4k7 5% 0805 resistor', '100n X7R 50V 0805'].map((text, at): Bag => {
  const { part } = readPart(text);
  return {
    id: `${at}`,
    number: at + 1,
    partId: `${at}`,
    code: partCode(part),
    part,
    holder: 'zip-bag',
    unit: 'piece',
    box: null,
    place: null,
    state: 'sound',
    onHand: 1,
    sure: 1,
    reserved: 0,
    oldest: null,
    toCount: false,
  };
});

function preview(pattern: string): CodePreview {
  const previewed = previewCodes(pattern, STOCK);
  assert.ok(previewed.ok);
  return previewed.preview;
}

void test('a pattern that drops what tells two bags apart names both', () => {
  const { clashes, differ, bags } = preview('{kind}-{package}-{value}');
  assert.deepEqual(
    clashes.map(({ code, of }) => [code, of.map(({ number }) => number)]),
    [['R-0805-4K7', [1, 2]]],
  );
  assert.equal(differ, 3);
  assert.deepEqual(bags[2], { bag: 3, now: 'C-0805-100N-X7R-50V', wouldBe: 'C-0805-100N' });
});

void test('the order alone drops nothing', () => {
  const { clashes, differ } = preview('{kind}_{value}_{rest}');
  assert.deepEqual([clashes, differ], [[], 3]);
  assert.equal(preview('{kind}-{rest}').differ, 0);
});
