import assert from 'node:assert/strict';
import { test } from 'node:test';
import { plainText, withoutControls } from './plain-text.ts';

void test('marks that nobody sees are no part of a text: direction, joiners, byte order', () => {
  assert.equal(withoutControls('1\u202e0k\u200b'), '10k');
  assert.equal(withoutControls('\ufeffR1\u2060, R2\u00ad'), 'R1, R2');
  assert.equal(withoutControls('4k7 ±1 % 0805'), '4k7 ±1 % 0805');
});

void test('full-width figures are figures', () => {
  assert.equal(plainText('４．７ｋΩ'), '4.7kΩ');
});

void test('a raised point between figures is a decimal point', () => {
  // common practice, no source
  assert.equal(plainText('1·5 kΩ 50·60'), '1.5 kΩ 50.60');
  assert.equal(plainText('a·b'), 'a·b');
});
