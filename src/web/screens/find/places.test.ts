import assert from 'node:assert/strict';
import { test } from 'node:test';
import type { BoxPicture } from '#api/bags.ts';
import { sayDepth, sayRank } from '#say/en/place-words.ts';
import { placesOf, slotsOf } from './places.ts';

const box: BoxPicture = {
  name: 'B',
  places: 5,
  lifts: 0,
  order: 1,
  says: '',
  bags: [
    { bag: 61, standing: 'holds' },
    { bag: 900, standing: 'holds' },
    { bag: 62, standing: 'exhausted' },
    { bag: 63, standing: 'holds' },
  ],
};

void test('rank counts what stands there, in the order of the box, and not the exhausted ones', () => {
  const places = placesOf({ boxes: [box], loose: [] });
  assert.deepEqual(places(63, 'B'), { box: 'B', rank: 3, of: 3, after: 900 });
  assert.deepEqual(places(61, 'B'), { box: 'B', rank: 1, of: 3, after: null });
  assert.equal(places(62, 'B'), undefined);
  assert.equal(places(63, 'A'), undefined);
  assert.equal(placesOf(undefined)(63, 'B'), undefined);
});

void test('the look into a box has one upright a place, and one a bag where it is over full', () => {
  assert.deepEqual(slotsOf(box, 63), ['live', 'live', 'empty', 'hit', 'free']);
  assert.deepEqual(slotsOf({ ...box, places: 2 }), ['live', 'live', 'empty', 'live']);
});

void test('depth is said in fifths, rank as an ordinal', () => {
  assert.equal(sayDepth({ rank: 1, of: 60 }), 'at the front');
  assert.equal(sayDepth({ rank: 30, of: 60 }), 'in the middle');
  assert.equal(sayDepth({ rank: 54, of: 60 }), 'near the back');
  assert.equal(sayDepth({ rank: 60, of: 60 }), 'at the back');
  assert.equal(sayDepth({ rank: 1, of: 1 }), 'at the front');
  assert.deepEqual(
    [1, 2, 3, 4, 11, 12, 13, 21, 112].map((rank) => sayRank({ rank, of: 120 })),
    ['1st', '2nd', '3rd', '4th', '11th', '12th', '13th', '21st', '112th'].map((word) => `${word} of 120`),
  );
});
