import assert from 'node:assert/strict';
import { test } from 'node:test';
import * as fc from 'fast-check';
import { emptyWords, post, sortIn, startingWith } from './words.ts';

const SEED = { seed: 20260106, numRuns: 200 };
const anyWord = fc.string({ unit: fc.constantFrom('a', 'b', '1', 'é'), minLength: 1, maxLength: 4 });

void test('the words that begin so are those that a look through all would find, however they came in', () => {
  fc.assert(
    fc.property(fc.array(fc.array(anyWord, { maxLength: 90 }), { maxLength: 4 }), anyWord, (batches, start) => {
      const words = emptyWords();
      batches.forEach((batch, slot) => {
        const fresh: string[] = [];
        post(words, slot, new Set(batch), fresh);
        sortIn(words, fresh);
      });
      const wanted = [...new Set(batches.flat())].filter((word) => word.startsWith(start)).sort();
      assert.deepEqual([...startingWith(words, start)], wanted);
    }),
    SEED,
  );
});
