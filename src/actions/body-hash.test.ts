import assert from 'node:assert/strict';
import { test } from 'node:test';
import { bodyHash } from './body-hash.ts';

void test('the order of keys and keys that hold nothing are no other body', () => {
  assert.equal(bodyHash('pick', { bag: 1, quantity: 2 }), bodyHash('pick', { quantity: 2, note: undefined, bag: 1 }));
});

void test('another verb, value or order of a list is another body', () => {
  const body = bodyHash('pick', { bags: [1, 2] });
  for (const other of [
    bodyHash('count', { bags: [1, 2] }),
    bodyHash('pick', { bags: [2, 1] }),
    bodyHash('pick', { bags: ['1', 2] }),
  ])
    assert.notEqual(other, body);
});
