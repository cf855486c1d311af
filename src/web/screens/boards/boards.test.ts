import assert from 'node:assert/strict';
import { test } from 'node:test';
import type { BoardReach, BoardView } from '#api/boards.ts';
import { barsOf, canBuild, entriesOf, nextName, type BoardBuild } from './boards.ts';

const build = (state: string, when: string, boards = 2, made: number | null = null): BoardBuild => ({
  build: `${state} ${when}`,
  name: 'kit',
  state,
  boards,
  made,
  when,
});
const board = (name: string, ...builds: BoardBuild[]): BoardView => ({
  id: name,
  name,
  revisions: [
    { id: 'a', name: 'A', source: null, lines: 3, saved: '2026-01-01T00:00:00Z' },
    { id: 'b', name: 'B', source: null, lines: 4, saved: '2026-02-01T00:00:00Z' },
  ],
  builds,
});
const reach = (name: string, buildable: number): BoardReach => ({ board: name, buildable, most: false, limitedBy: [] });

void test('boards with a kit open stand first, then the latest built, then the never built, with the newest revision', () => {
  const entries = entriesOf(
    [
      board('never'),
      board('cancelled', build('cancelled', '2026-05-01')),
      board('old', build('built', '2025-01-01')),
      board('new', build('cancelled', '2026-06-01'), build('built', '2026-01-01')),
      board('open', build('picking', '2026-01-02'), build('built', '2020-01-01')),
    ],
    undefined,
  );
  assert.deepEqual(
    entries.map(({ name, group }) => [name, group]),
    [
      ['open', 'open'],
      ['new', 'built'],
      ['old', 'built'],
      ['cancelled', 'never'],
      ['never', 'never'],
    ],
  );
  assert.equal(entries[0]?.revision?.name, 'B');
});

void test('how many can be built is not said before all of it is known', () => {
  const boards = [board('a'), board('b')];
  assert.equal(canBuild(entriesOf(boards, undefined)), null);
  assert.equal(canBuild(entriesOf(boards, [reach('a', 0)])), null);
  assert.equal(canBuild(entriesOf(boards, [reach('a', 0), reach('b', 3)])), 1);
  assert.equal(canBuild([]), 0);
});

void test('Up and Down stay in the list, and begin at its ends', () => {
  const entries = entriesOf([board('a'), board('b')], undefined);
  assert.deepEqual(
    [nextName(entries, undefined, 1), nextName(entries, undefined, -1), nextName(entries, 'a', 1), nextName(entries, 'b', 1)],
    ['a', 'b', 'b', 'b'],
  );
  assert.equal(nextName([], 'a', 1), null);
});

void test('bars show what was made, the oldest first, and leave out what was given up', () => {
  const bars = barsOf([build('reserved', '3', 8), build('cancelled', '2', 50), build('built', '1', 9, 4)]);
  assert.deepEqual(
    bars.map(({ boards, length, open }) => [boards, length, open]),
    [
      [4, 0.5, false],
      [8, 1, true],
    ],
  );
  assert.deepEqual(barsOf([]), []);
});
