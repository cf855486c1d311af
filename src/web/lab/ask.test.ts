import assert from 'node:assert/strict';
import { test } from 'node:test';
import { ask, troubleOf, Unanswered } from './ask.ts';

void test('only what the lab refused, or did not answer, is a trouble to be shown; a fault of ours is thrown on', () => {
  assert.equal(troubleOf(null), null);
  assert.deepEqual(troubleOf(new Unanswered({ kind: 'away' })), { kind: 'away' });
  assert.throws(() => troubleOf(new TypeError('a fault')), TypeError);
});

void test('an answer that breaks off on its way is no answer', async (context) => {
  Object.defineProperty(globalThis, 'localStorage', { value: { getItem: () => null }, configurable: true });
  const broken = new Response('{"bags": [', { headers: { 'content-type': 'application/json' } });
  context.mock.method(globalThis, 'fetch', () => Promise.resolve(broken));
  await assert.rejects(ask('/api/bags'), Unanswered);
});
