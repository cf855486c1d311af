import assert from 'node:assert/strict';
import { test } from 'node:test';
import { fold, wordsOf } from './fold.ts';

void test('a word is compared without case, accents and signs', () => {
  assert.equal(fold('R-0805-4K7'), 'r08054k7');
  assert.equal(fold('Müller'), 'muller');
  assert.equal(fold('SOT-23'), 'sot23');
});

void test('a decimal comma is a point, and a point that ends a word is none', () => {
  assert.equal(fold('4,7kΩ'), '4.7kohm');
  assert.equal(fold('2.2µF.'), '2.2uf');
  assert.equal(fold('.'), '');
});

void test('a text gives its chunks, their longer pieces, and numbers joined with their units', () => {
  assert.deepEqual([...wordsOf('50 V, SOT-23')].sort(), ['50', '50v', 'sot', 'sot23', 'v']);
  assert.deepEqual([...wordsOf('')], []);
});
