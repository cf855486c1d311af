import assert from 'node:assert/strict';
import { test } from 'node:test';
import { widthOfTerminal } from './terminal.ts';

void test('COLUMNS is respected, a terminal is as wide as it is, and what goes elsewhere is never cut', () => {
  assert.equal(widthOfTerminal('132', 80), 132);
  assert.equal(widthOfTerminal(undefined, 80), 80);
  assert.equal(widthOfTerminal('', undefined), Number.POSITIVE_INFINITY);
  assert.equal(widthOfTerminal('wide', undefined), Number.POSITIVE_INFINITY);
});
