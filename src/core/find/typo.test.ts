import assert from 'node:assert/strict';
import { test } from 'node:test';
import { meantBy, slipsBetween } from './typo.ts';
import { emptyWords, post, sortIn } from './words.ts';

function wordsOf(list: readonly string[]): ReturnType<typeof emptyWords> {
  const words = emptyWords();
  const fresh: string[] = [];
  post(words, 0, list, fresh);
  sortIn(words, fresh);
  return words;
}

void test('a letter too many, missing, wrong, or two changed about is one slip', () => {
  for (const typed of ['resisstor', 'resstor', 'resistar', 'resitsor']) assert.equal(slipsBetween('resistor', typed, 2), 1);
  assert.equal(slipsBetween('resistor', 'resistor', 2), 0);
});

void test('the nearest words are meant, and only they', () => {
  const words = wordsOf(['resistor', 'resistors', 'rest', 'relay']);
  assert.deepEqual(meantBy(words, 'resitsor'), ['resistor']);
  assert.deepEqual(meantBy(words, 'rely'), ['relay']);
});

void test('words under four letters are taken as typed', () => {
  assert.deepEqual(meantBy(wordsOf(['led', 'les']), 'lde'), []);
});
