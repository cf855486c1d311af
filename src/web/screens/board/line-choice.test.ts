import assert from 'node:assert/strict';
import { test } from 'node:test';
import type { BoardLine } from '#api/boards.ts';
import { choiceOf } from './line-choice.ts';

const line: BoardLine = {
  row: 2,
  refs: ['F1'],
  need: 1,
  spare: 0,
  verdict: 'check',
  bags: [],
  because: [],
  short: 1,
  demand: 'fuse',
  asks: 'F 500 mA',
  said: { name: '500 mA', rest: 'Fuse' },
  fitted: true,
  later: false,
  chosen: null,
  holds: null,
  nearest: 214,
  waits: 9,
  free: 0,
  left: 0,
  reaches: 0,
  doubts: [],
};

void test('an open check can be accepted, once', () => {
  const { bag, how, canFree } = choiceOf(line, { bag: 214, verdict: 'check' }, null);
  assert.deepEqual({ bag, how, canFree }, { bag: 214, how: 'accept', canFree: false });
  const chosen = { ...line, chosen: { bag: 214, accept: true, reason: null } };
  assert.equal(choiceOf(chosen, { bag: 214, verdict: 'check' }, null).bag, null);
  assert.equal(choiceOf(chosen, { bag: 214, verdict: 'check' }, null).canFree, true);
});

void test('a bag that serves by the rules needs nobody, but another one can be taken', () => {
  assert.equal(choiceOf(line, { bag: 7, verdict: 'serves' }, null).bag, null);
  assert.deepEqual(choiceOf(line, { bag: 8, verdict: 'serves' }, 8).how, 'take');
  assert.equal(choiceOf(line, { bag: 8, verdict: 'serves' }, 8).bag, 8);
});

void test('a bag that does not serve is taken with a reason only', () => {
  assert.equal(choiceOf(line, { bag: 8, verdict: 'missing' }, 8).how, 'anyway');
  assert.equal(choiceOf(line, { bag: null, verdict: 'missing' }, null).bag, null);
});

void test('what the BOM leaves off is neither chosen nor fitted later; what was left off by hand can be fitted again', () => {
  const off = choiceOf({ ...line, fitted: false }, { bag: 214, verdict: 'check' }, null);
  assert.deepEqual([off.bag, off.canLater, off.canFit], [null, false, false]);
  const later = choiceOf({ ...line, later: true }, { bag: 214, verdict: 'check' }, null);
  assert.deepEqual([later.canLater, later.canFit], [false, true]);
});
