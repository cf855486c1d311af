import assert from 'node:assert/strict';
import { test } from 'node:test';
import { sayMoreLines } from './draft-more.ts';

void test('lines of a long list that do not stand on the page are counted, by whether they wait for a word', () => {
  assert.equal(sayMoreLines(0, 0), null);
  assert.equal(sayMoreLines(999, 0), 'And 999 more lines read without doubt.');
  assert.equal(
    sayMoreLines(1, 1),
    'And 1 more line read without doubt. 1 more line with a doubt comes as these get their answer.',
  );
  assert.equal(sayMoreLines(0, 858), '858 more lines with doubts come as these get their answer.');
});
