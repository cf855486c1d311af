import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { readRefs } from './refs.ts';
import { writeRefs } from './write-refs.ts';

void test('three and more references in a row are written as a range, in the order of the line', () => {
  assert.equal(writeRefs(['R1', 'R4', 'R5', 'R6', 'R7', 'R8', 'R9']), 'R1, R4–R9');
  assert.equal(writeRefs(['C1', 'C2']), 'C1, C2');
  assert.equal(writeRefs(['C10', 'C1', 'C2', 'C3', 'D1']), 'C10, C1–C3, D1');
  assert.equal(writeRefs([]), '');
});

void test('what has no number, another class or another width of its number begins anew', () => {
  assert.equal(writeRefs(['PIC_PROG', 'U1A', 'U1B']), 'PIC_PROG, U1A, U1B');
  assert.equal(writeRefs(['R1', 'C2', 'R3']), 'R1, C2, R3');
  assert.equal(writeRefs(['R08', 'R09', 'R10', 'R11']), 'R08–R11');
  assert.equal(writeRefs(['R9', 'R010', 'R11']), 'R9, R010, R11');
});

void test('what is written is read back as the same references', () => {
  const ref = fc
    .tuple(fc.constantFrom('R', 'C', 'LED'), fc.integer({ min: 1, max: 60 }))
    .map(([name, number]) => `${name}${number}`);
  fc.assert(
    fc.property(fc.uniqueArray(ref, { maxLength: 40 }), (refs) => {
      assert.deepEqual(readRefs(writeRefs(refs)).refs, refs);
      assert.deepEqual(readRefs(writeRefs(refs.toSorted())).refs, refs.toSorted());
    }),
  );
});
