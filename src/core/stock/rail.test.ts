import assert from 'node:assert/strict';
import { test } from 'node:test';
import { railMark } from './rail.ts';

void test('the marks of a full box run from front to back and start again', () => {
  assert.equal(railMark(1), 0);
  assert.equal(railMark(60), 1);
  assert.equal(railMark(61), 0);
  assert.equal(railMark(12, 12), 1);
});
