import assert from 'node:assert/strict';
import { test } from 'node:test';
import type { FoundBag } from '#api/bags.ts';
import { answerOf, groupsOf } from './find.ts';

const bag = (number: number, onHand: number, full = true): FoundBag => ({
  bag: number,
  box: 'A',
  code: 'R-0805-4K7-F',
  text: '4.7 kΩ',
  onHand,
  free: onHand,
  full,
  why: [],
});

void test('the answer counts the bags that hold something and answer all of it', () => {
  assert.equal(answerOf([bag(1, 10), bag(2, 0), bag(3, 4, false)]), '1 bag answers.');
  assert.equal(answerOf([bag(1, 10), bag(2, 3)]), '2 bags answer.');
  assert.equal(answerOf([bag(3, 4, false)]), 'Nothing here answers all of that; this is near it.');
  assert.equal(answerOf([bag(2, 0)]), 'All of these are exhausted.');
  assert.equal(answerOf([]), 'Nothing here answers to that.');
});

void test('what is near stands after what answers, exhausted bags stand last', () => {
  const groups = groupsOf([bag(1, 0), bag(4, 2, false), bag(2, 3)]);
  assert.deepEqual(
    groups.map(({ bags }) => bags.map((one) => one.bag)),
    [[2], [4], [1]],
  );
  assert.deepEqual(groupsOf([]), []);
});
