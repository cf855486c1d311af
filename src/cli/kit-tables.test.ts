import assert from 'node:assert/strict';
import { test } from 'node:test';
import { writeRefs } from './kit-tables.ts';

void test('refs that follow each other are drawn together, in the order given', () => {
  assert.equal(writeRefs(['R1', 'R2', 'R3', 'R5']), 'R1–R3 R5');
  assert.equal(writeRefs(['C9', 'C10', 'R11']), 'C9–C10 R11');
  assert.equal(writeRefs(['X', 'X']), 'X X');
  assert.equal(writeRefs([]), '');
});
