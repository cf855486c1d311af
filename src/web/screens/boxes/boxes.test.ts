import assert from 'node:assert/strict';
import { test } from 'node:test';
import type { BoxPicture } from '#api/bags.ts';
import { boxSlots, boxWith, moved, nextNumber, standingOf, sumOf, usedNumbers } from './boxes.ts';

const box = (name: string, lifts: number, standings: readonly ('holds' | 'exhausted' | 'astray')[], places = 6): BoxPicture => ({
  name,
  places,
  lifts,
  order: 0,
  says: 'Resistors',
  bags: standings.map((standing, at) => ({ bag: at + 1, standing })),
});

void test('a box in figures: what holds, what is exhausted or astray, and the room that is left', () => {
  const { filled, exhausted, astray, room, first, last } = sumOf(box('A', 0, ['holds', 'exhausted', 'astray', 'holds']));
  assert.deepEqual(
    { filled, exhausted, astray, room, first, last },
    { filled: 2, exhausted: 1, astray: 1, room: 2, first: 1, last: 4 },
  );
  assert.equal(sumOf(box('B', 0, ['holds', 'holds'], 1)).room, 0, 'thick bags: more than its places');
  assert.equal(sumOf(box('C', 0, [])).first, undefined);
});

void test('the look into a box has one upright a bag and a stub for each place that is left', () => {
  assert.deepEqual(boxSlots(sumOf(box('A', 0, ['holds', 'exhausted'], 4))), ['live', 'empty', 'free', 'free']);
});

void test('boxes are a stack as soon as one costs lifts, and move by one place', () => {
  assert.equal(standingOf({ boxes: [box('A', 0, []), box('B', 0, [])], loose: [] }), 'beside');
  assert.equal(standingOf({ boxes: [box('A', 0, []), box('B', 1, [])], loose: [] }), 'stacked');
  assert.deepEqual(moved(['A', 'B', 'C'], 'C', -1), ['A', 'C', 'B']);
  assert.deepEqual(moved(['A', 'B', 'C'], 'A', -1), ['A', 'B', 'C']);
  assert.deepEqual(moved(['A', 'B', 'C'], 'A', 1), ['B', 'A', 'C']);
});

void test('the next number goes on from the last, unless the box is full or another bag has it', () => {
  const view = { boxes: [box('A', 0, ['holds', 'holds'], 3)], loose: [] };
  const [sum] = view.boxes.map(sumOf);
  assert.ok(sum);
  assert.equal(nextNumber(sum, usedNumbers(view)), 3);
  assert.equal(nextNumber(sum, usedNumbers({ ...view, loose: [{ bag: 3, place: null, standing: 'holds' }] })), null);
  assert.equal(nextNumber(sumOf(box('B', 0, ['holds'], 1)), new Set()), null, 'full');
  assert.equal(nextNumber(sumOf(box('C', 0, [])), new Set()), null, 'nothing to go on from');
});

void test('a typed number finds the box of its bag', () => {
  const view = { boxes: [box('A', 0, ['holds', 'exhausted'])], loose: [] };
  assert.equal(boxWith(view, 2), 'A');
  assert.equal(boxWith(view, 9), null);
});
