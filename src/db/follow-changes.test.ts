import assert from 'node:assert/strict';
import { test } from 'node:test';
import { setImmediate as turn } from 'node:timers/promises';
import { followChanges } from './follow-changes.ts';

void test('all who follow share one ear, and one look answers them all', async () => {
  let [number, asked, ears, maybe] = [1, 0, 0, (): void => undefined];
  const followers = followChanges(
    () => Promise.resolve(((asked += 1), number)),
    (onMaybe) => {
      [ears, maybe] = [ears + 1, onMaybe];
      return () => (ears -= 1);
    },
  );
  const seen: number[][] = [[], [], []];
  const stops = seen.map((numbers) => followers.watch((change) => numbers.push(change)));
  await turn();
  [number, asked] = [2, 0];
  maybe();
  await turn();
  assert.deepEqual(
    [seen, asked, ears],
    [
      [
        [1, 2],
        [1, 2],
        [1, 2],
      ],
      1,
      1,
    ],
  );
  for (const stop of stops) stop();
  assert.equal(ears, 0);
});

void test('a change that comes at any turn of a look is told', async () => {
  for (let turns = 0; turns < 8; turns += 1) {
    let number = 1;
    const followers = followChanges(
      () => Promise.resolve(number),
      () => () => undefined,
    );
    const seen: number[] = [];
    followers.watch((change) => seen.push(change));
    for (let at = 0; at < turns; at += 1) await Promise.resolve();
    number = 2;
    followers.look();
    await turn();
    assert.equal(seen.at(-1), 2, `lost after ${turns} turns`);
  }
});

void test('a look that fails is told, unless the lab is closed', async () => {
  const told: Error[] = [];
  const hear = (warning: Error): void => void told.push(warning);
  process.on('warning', hear);
  try {
    const broken = new Error('the database went away');
    const followers = followChanges(
      () => Promise.reject(broken),
      () => () => undefined,
    );
    followers.watch(() => undefined);
    await turn();
    assert.deepEqual(told, [broken]);
    followers.look();
    followers.close();
    await turn();
    assert.equal(told.length, 1);
  } finally {
    process.off('warning', hear);
  }
});
