import assert from 'node:assert/strict';
import { test } from 'node:test';
import type { KitTakeView } from '#api/kits.ts';
import { backsOf, keepTyped, readTyped, restOf, returnsOf, sumOfBacks } from './leftovers.ts';

function take(bag: number, picked: number, returned: number, expected: number): KitTakeView {
  return {
    id: `take ${bag}`,
    line: '',
    bag,
    code: '',
    text: '',
    said: { name: '', rest: '' },
    unit: 'piece',
    box: 'A',
    place: null,
    tray: 1,
    cell: 10 - bag,
    refs: [],
    planned: picked,
    spare: 0,
    picked,
    returned,
    state: 'done',
    onHand: 0,
    expected,
    cautions: [],
    settled: false,
  };
}

void test('cells stand in their order with what is expected, unless another number was typed; empty cells are left out', () => {
  const takes = [take(1, 10, 0, 2), take(2, 5, 5, 0), take(3, 8, 1, 0)];
  const backs = backsOf(takes, { 'take 3': '3+1' });
  assert.deepEqual(
    backs.map(({ take: { bag }, pieces, out }) => [bag, pieces, out]),
    [
      [3, 4, 7],
      [1, 2, 10],
    ],
  );
  assert.deepEqual(sumOfBacks(backs), { pieces: 6, bags: 2, sound: true });
  assert.deepEqual(returnsOf(backs), [
    { take: 'take 3', quantity: 4 },
    { take: 'take 1', quantity: 2 },
  ]);
});

void test('more than went in, or no number, is not sound and comes to nothing', () => {
  const takes = [take(1, 10, 0, 2)];
  for (const text of ['11', '', '1O']) {
    const backs = backsOf(takes, { 'take 1': text });
    assert.deepEqual(sumOfBacks(backs), { pieces: 0, bags: 0, sound: false });
    assert.deepEqual(returnsOf(backs), []);
  }
});

void test('what was typed is kept for the kit until it is booked, and nonsense in the store is nothing', () => {
  const kept = new Map<string, string>();
  const store = {
    getItem: (name: string) => kept.get(name) ?? null,
    setItem: (name: string, value: string) => void kept.set(name, value),
    removeItem: (name: string) => void kept.delete(name),
  };
  keepTyped(store, 'k', { a: '3' });
  assert.deepEqual(readTyped(store, 'k'), { a: '3' });
  assert.deepEqual(readTyped(store, 'other'), {});
  keepTyped(store, 'k', {});
  assert.equal(kept.size, 0);
  kept.set('bagatelle-leftovers-k', '{"a":3,');
  assert.deepEqual(readTyped(store, 'k'), {});
});

void test('the rest is said to be lost only once something came back, or where 0 stands in every cell', () => {
  const takes = [take(1, 10, 0, 2), take(2, 5, 1, 0), take(3, 8, 1, 3)];
  const rest = [
    { take: 'take 1', quantity: 0 },
    { take: 'take 3', quantity: 0 },
  ];
  const sum = { pieces: 0, bags: 0, sound: true };
  assert.deepEqual(restOf({ build: { returned: 0 }, takes }, { ...sum, pieces: 5 }), []);
  assert.deepEqual(restOf({ build: { returned: 0 }, takes }, { ...sum, sound: false }), []);
  assert.deepEqual(restOf({ build: { returned: 0 }, takes }, sum), rest);
  assert.deepEqual(restOf({ build: { returned: 2 }, takes }, { ...sum, pieces: 5 }), rest);
});
