import assert from 'node:assert/strict';
import { test } from 'node:test';
import { readSum } from './sum.ts';

const total = (text: string): number | string => {
  const read = readSum(text);
  return read.kind === 'sum' ? read.total : read.kind === 'wrong' ? read.why : read.kind;
};

void test('a count is a whole number, or piles that are added up and taken away', () => {
  assert.equal(total('47+31+12'), 90);
  assert.equal(total(' 47 + 31 +12 '), 90);
  assert.equal(total('100-3'), 97);
  assert.equal(total('100\u22123'), 97);
  assert.equal(total('1 240'), 1240);
  assert.equal(total('1\u202f240+1'), 1241);
  assert.equal(total('0'), 0);
  assert.equal(total(''), 'empty');
});

void test('what is no whole number is named, never guessed', () => {
  assert.equal(total('1O'), 'letter');
  assert.equal(total('2.5'), 'fraction');
  assert.equal(total('1,240'), 'fraction', 'a comma may be a decimal sign');
  assert.equal(total('47+'), 'gap');
  assert.equal(total('47 31'), 'gap', 'a plus may be missing');
  assert.equal(total('3-5'), 'below-zero');
  assert.equal(total('99999999999'), 'large');
  assert.equal(total('1e3'), 'letter');
});
