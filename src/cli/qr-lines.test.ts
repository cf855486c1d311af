import assert from 'node:assert/strict';
import { test } from 'node:test';
import { qrLines } from './qr-lines.ts';

void test('two rows of squares are one line; the light ones are drawn, with a light border of four', () => {
  const lines = qrLines(['10', '01']);
  assert.deepEqual(lines, ['██████████', '██████████', '████▄▀████', '██████████', '██████████']);
  assert.equal(qrLines(['1']).at(-1), '▀▀▀▀▀▀▀▀▀', 'an odd number of rows ends in half a line');
});
