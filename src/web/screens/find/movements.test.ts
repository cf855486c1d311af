import assert from 'node:assert/strict';
import { test } from 'node:test';
import type { BagMovement } from '#api/bags.ts';
import { sayMoved, saySigned, sayUndo } from '#say/en/bag-drawer.ts';
import { emptySince, forWhom, latestUndoable, newestFirst, newestUndoable, seenSeq } from './movements.ts';

const move = (seq: number, kind: string, delta: number, onHand: number, more: Partial<BagMovement> = {}): BagMovement => ({
  act: `act-${seq}`,
  seq,
  kind,
  delta,
  onHand,
  who: 'Ines',
  happenedAt: `2026-06-0${seq}T10:00:00.000Z`,
  recordedAt: `2026-06-0${seq}T10:00:00.000Z`,
  undoes: null,
  undoneBy: null,
  for: null,
  note: null,
  ...more,
});

void test('the newest movement stands first and can be taken back', () => {
  const moves = [move(1, 'received', 10, 10), move(2, 'picked', -3, 7)];
  assert.deepEqual(
    newestFirst(moves).map(({ seq }) => seq),
    [2, 1],
  );
  assert.equal(latestUndoable(moves)?.seq, 2);
  assert.equal(newestUndoable(moves)?.seq, 2);
  assert.equal(seenSeq(moves), 2);
  assert.equal(seenSeq([]), 0);
});

void test('after an undo the key reaches no further back, but the row before it still offers it', () => {
  const moves = [
    move(1, 'counted', 10, 10),
    move(2, 'picked', -3, 7, { undoneBy: 'act-3' }),
    move(3, 'picked', 3, 10, { undoes: 'act-2' }),
  ];
  assert.equal(latestUndoable(moves), null);
  assert.equal(newestUndoable(moves)?.seq, 1);
});

void test('what moved many bags at once is not taken back from one of them', () => {
  for (const kind of ['received', 'imported', 'picked-for-build', 'leftovers-returned']) {
    assert.equal(newestUndoable([move(1, 'received', 10, 10), move(2, kind, -3, 7)]), null);
    assert.equal(latestUndoable([move(2, kind, -3, 7)]), null);
  }
});

void test('a bag is empty since the movement that emptied it, not since a later count of nothing', () => {
  const movements = [move(1, 'received', 3, 3), move(2, 'picked', -3, 0), move(3, 'counted', 0, 0)];
  assert.equal(emptySince({ onHand: 0, movements }), '2026-06-02T10:00:00.000Z');
  assert.equal(emptySince({ onHand: 3, movements: movements.slice(0, 1) }), null);
  assert.equal(emptySince({ onHand: 0, movements: [move(1, 'imported', 0, 0)] }), '2026-06-01T10:00:00.000Z');
  assert.equal(emptySince({ onHand: 0, movements: [] }), null);
});

void test('a movement in words: pieces moved, of a count what was seen; signs are those of print', () => {
  assert.equal(sayMoved({ kind: 'picked', delta: -3, onHand: 7 }), 'picked 3');
  assert.equal(sayMoved({ kind: 'counted', delta: 2, onHand: 42 }), 'counted 42');
  assert.equal(sayUndo({ kind: 'picked', delta: -3, onHand: 7 }, 'today 14:05'), 'Undo: picked 3, today 14:05');
  assert.deepEqual([3, -22, 0].map(saySigned), ['+3', '−22', '0']);
  assert.equal(forWhom(move(1, 'picked', -1, 1, { for: 'Two loggers', note: 'bent' })), 'Two loggers, bent, Ines');
});
