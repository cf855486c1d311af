import assert from 'node:assert/strict';
import { test } from 'node:test';
import { BOARDS, readWhole } from './whole.ts';

const code = (text: string): string => {
  const read = readWhole(text, '--boards', BOARDS);
  return read.ok ? 'ok' : read.refusal.code;
};

void test('whole numbers are read, others are refused by what is wrong with them', () => {
  assert.deepEqual(readWhole('12', 'bag'), { ok: true, value: 12 });
  assert.deepEqual(['2.5', 'two', '', '0', '-3', '1e9', '1000000000', '1e99', '9'.repeat(400)].map(code), [
    'not-whole',
    'not-valid',
    'not-valid',
    'out-of-range',
    'out-of-range',
    'out-of-range',
    'out-of-range',
    'out-of-range',
    'out-of-range',
  ]);
});

void test('a refusal names the option, what came and what may come', () => {
  const read = readWhole('0', '--boards', BOARDS);
  assert.deepEqual(!read.ok && read.refusal.args, { field: '--boards', received: '0', least: 1, most: 10_000 });
});
