import assert from 'node:assert/strict';
import { test } from 'node:test';
import { bagNumber, boxAhead, keepTakenIn, nextFree, readTakenIn, type TakenIn } from './receive.ts';

const bags = [{ bag: 1 }, { bag: 2 }, { bag: 4 }];

void test('the next number follows the greatest, or the one given last here, and is never one that is taken', () => {
  assert.equal(nextFree([], null), 1);
  assert.equal(nextFree(bags, null), 5);
  assert.equal(nextFree(bags, 2), 3);
  assert.equal(nextFree(bags, 3), 5);
  assert.equal(nextFree(bags, 60), 61);
});

void test('a bag number is a whole number from 1', () => {
  assert.deepEqual(['12', ' 7 ', '0', '1O', '-3', '1.5', ''].map(bagNumber), [12, 7, null, null, null, null, null]);
});

void test('a bag to come is drawn among those of its box, in the order of numbers', () => {
  const box = {
    name: 'A',
    places: 5,
    lifts: 0,
    order: 1,
    says: '',
    bags: [
      { bag: 1, standing: 'holds' },
      { bag: 2, standing: 'exhausted' },
      { bag: 9, standing: 'holds' },
    ],
  } as const;
  assert.deepEqual(boxAhead({ ...box, bags: [...box.bags] }, 5), {
    slots: ['live', 'empty', 'hit', 'live', 'free'],
    rank: 2,
    places: 5,
    after: 1,
    first: 1,
    last: 9,
    full: false,
  });
  assert.equal(boxAhead({ ...box, bags: [...box.bags], places: 2 }, 5).full, true);
});

void test('what was taken in here is there after a reload; what is no such list is none', () => {
  const store = new Map<string, string>();
  const storage = {
    getItem: (key: string) => store.get(key) ?? null,
    setItem: (key: string, text: string) => void store.set(key, text),
  };
  const one: TakenIn = {
    act: 'a',
    bag: 3,
    name: '4.7 kΩ',
    rest: '',
    code: 'R',
    box: 'A',
    quantity: 4,
    about: false,
    added: false,
    doubts: [],
    back: false,
  };
  keepTakenIn(storage, [one]);
  assert.deepEqual(readTakenIn(storage), [one]);
  for (const text of ['{', '{"act":1}', '[{"act":1}]']) {
    for (const key of store.keys()) store.set(key, text);
    assert.deepEqual(readTakenIn(storage), []);
  }
});
