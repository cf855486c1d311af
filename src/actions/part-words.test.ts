import assert from 'node:assert/strict';
import { test } from 'node:test';
import { readPart } from '#core/part/read-part.ts';
import { bagInWords } from './part-words.ts';

const glossOf = (text: string): string[] =>
  bagInWords(readPart(text).part).gloss.flatMap(({ typed, means, how }) =>
    how === 'unread' || means === 'note' ? [`${typed}: ${means}, ${how}`] : [],
  );

void test('what a list remarks of a bag is a note; what stands before it and nobody understood is still that', () => {
  assert.deepEqual(glossOf('4k7 1% 0805; salvaged, look twice'), ['salvaged, look twice: note, filled']);
  assert.deepEqual(glossOf('4k7 1% 0805 wobbly; salvaged'), ['wobbly: not understood, unread', 'salvaged: note, filled']);
  assert.deepEqual(glossOf('4k7 1% 0805 wobbly'), ['wobbly: not understood, unread']);
});
