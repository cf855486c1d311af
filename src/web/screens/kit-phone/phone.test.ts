import assert from 'node:assert/strict';
import { test } from 'node:test';
import type { KitTakeView } from '#api/kits.ts';
import { handNumber, standOf } from './phone.ts';

function take(bag: number, picked = 0): KitTakeView {
  return {
    id: `${String(bag).padStart(8, '0')}-0000-4000-8000-000000000000`,
    line: '',
    bag,
    code: '',
    text: '',
    said: { name: '', rest: '' },
    unit: 'piece',
    box: 'A',
    place: null,
    tray: 1,
    cell: bag,
    refs: [],
    planned: 5,
    spare: 0,
    picked,
    returned: 0,
    state: picked < 5 ? 'open' : 'done',
    onHand: 9,
    expected: 0,
    cautions: [],
    settled: false,
  };
}
const named = (bag: number): string => String(bag).padStart(8, '0');
const stand = (takes: readonly KitTakeView[], words: Parameters<typeof standOf>[1]): unknown[] => {
  const { stop, after, gone } = standOf(takes, words);
  return [stop?.bag ?? null, after?.bag ?? null, gone];
};

void test('the first open stop is shown, and what comes after it; skipped ones last', () => {
  assert.deepEqual(stand([take(1, 5), take(2), take(3)], {}), [2, 3, false]);
  assert.deepEqual(stand([take(1), take(2), take(3)], { skipped: named(1) }), [2, 3, false]);
  assert.deepEqual(stand([take(1), take(2), take(3)], { skipped: named(1), take: named(3) }), [3, 1, false]);
  assert.deepEqual(stand([take(1, 5)], {}), [null, null, false]);
});

void test('a stop that was picked elsewhere makes way at once, but not while a number is typed for it', () => {
  const takes = [take(1, 5), take(2)];
  assert.deepEqual(stand(takes, { take: named(1) }), [2, null, false]);
  assert.deepEqual(stand(takes, { take: named(1), show: 'fewer' }), [1, 2, true]);
});

void test('a bag number is a whole number from 1', () => {
  assert.deepEqual(['131', ' 7 ', '0', '1O', '', '-3', '1.5'].map(handNumber), [131, 7, null, null, null, null, null]);
});
