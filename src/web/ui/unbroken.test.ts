import assert from 'node:assert/strict';
import { test } from 'node:test';
import { unbroken } from './unbroken.ts';

const wholes = (text: string): string[] => unbroken(text).flatMap((piece) => (piece.whole ? [piece.text] : []));

void test('a size and a short code stay on one line, and nothing is lost', () => {
  const text = 'fuse 5 × 20 mm, crystal HC-49S through hole';
  assert.deepEqual(wholes(text), ['5 × 20', 'HC-49S']);
  assert.equal(
    unbroken(text)
      .map((piece) => piece.text)
      .join(''),
    text,
  );
});

void test('words, ranges of words and codes that are too long for a cell may break', () => {
  assert.deepEqual(wholes('through-hole, low-noise'), []);
  assert.deepEqual(wholes('AB12-CD34-EF56-GH78-IJ90'), []);
  assert.deepEqual(unbroken(''), []);
});
