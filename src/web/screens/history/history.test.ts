import assert from 'node:assert/strict';
import { test } from 'node:test';
import type { ActView } from '#api/acts.ts';
import { deedsOf } from './history.ts';

const act = (bags: readonly number[], more: number, movements = bags.length + more): ActView => ({
  act: String(bags[0]),
  kind: 'picked',
  who: 'Ada',
  happenedAt: '2026-03-01T09:00:00.000Z',
  change: 7,
  undoes: null,
  undoneBy: null,
  note: null,
  movements,
  pieces: movements,
  for: null,
  bags: [...bags],
  more,
});

void test('a deed names as many further bags as its act has, however often each moved', () => {
  const eight = [1, 2, 3, 4, 5, 6, 7, 8];
  assert.deepEqual(
    deedsOf([act(eight, 0, 12), act(eight, 3), act([9], 0, 2)]).map(({ moreBags }) => moreBags),
    [0, 3, 0],
  );
});
