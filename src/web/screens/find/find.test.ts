import assert from 'node:assert/strict';
import { test } from 'node:test';
import { answerOf, groupsOf, markOf, type FoundBag } from './find.ts';

const bag = (number: number, onHand: number): FoundBag => ({
  bag: number,
  box: 'A',
  code: 'R-0805-4K7-F',
  text: '4.7 kΩ',
  onHand,
  free: onHand,
  why: [],
});

void test('the answer counts the bags that hold something', () => {
  assert.equal(answerOf([bag(1, 10), bag(2, 0)]), 'One bag answers.');
  assert.equal(answerOf([bag(1, 10), bag(2, 3)]), '2 bags answer.');
  assert.equal(answerOf([bag(2, 0)]), 'All of these are exhausted.');
  assert.equal(answerOf([]), 'Nothing here answers to that.');
});

void test('exhausted bags stand last, in a group of their own', () => {
  const groups = groupsOf([bag(1, 0), bag(2, 3)]);
  assert.deepEqual(
    groups.map(({ name, bags }) => [name, bags.map((one) => one.bag)]),
    [
      ['On hand', [2]],
      ['Exhausted', [1]],
    ],
  );
  assert.deepEqual(groupsOf([]), []);
});

void test('the mark of a full box runs from front to back and starts again', () => {
  assert.equal(markOf(1), 0);
  assert.equal(markOf(60), 1);
  assert.equal(markOf(61), 0);
});
