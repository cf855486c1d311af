import assert from 'node:assert/strict';
import { test } from 'node:test';
import { sayBecause } from './because.ts';

void test('facts are called by names that fit an English sentence', () => {
  assert.equal(sayBecause({ code: 'same', args: { fact: 'pins', has: '6' } }), 'the number of pins is the same (6)');
  assert.equal(sayBecause({ code: 'differs', args: { fact: 'variant', has: 'pg9', asked: 'pg7' } }), 'the description is another (pg9 for pg7)');
  assert.equal(sayBecause({ code: 'not-stated', args: { fact: 'variant', asked: 'shielded' } }), 'the bag does not say “shielded”');
  assert.equal(sayBecause({ code: 'not-asked', args: { fact: 'variant', has: 'tall' } }), 'the line does not ask for “tall”');
});
