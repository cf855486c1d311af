import assert from 'node:assert/strict';
import { test } from 'node:test';
import { touchedLast } from './touched.ts';

void test('bags of an act that names not all of them stand behind those of the others', () => {
  const touched = touchedLast([
    { bags: [3], more: 1 },
    { bags: [2], more: 0 },
    { bags: [1, 2], more: 0 },
  ]);
  assert.deepEqual(touched, [2, 1, 3]);
});
