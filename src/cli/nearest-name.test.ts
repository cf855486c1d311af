import assert from 'node:assert/strict';
import { test } from 'node:test';
import { distance, nearestName } from './nearest-name.ts';

void test('two letters in the wrong order are one edit', () => {
  assert.equal(distance('mtach', 'match'), 1);
  assert.equal(distance('find', 'find'), 0);
  assert.equal(distance('', 'kit'), 3);
});

void test('a mistyped command names the nearest one, a far word names none', () => {
  const known = ['match', 'kit', 'find', 'finish', 'pick'];
  assert.equal(nearestName('mtach', known), 'match');
  assert.equal(nearestName('fnd', known), 'find');
  assert.equal(nearestName('PICK', known), 'pick');
  assert.equal(nearestName('frobnicate', known), null);
});
