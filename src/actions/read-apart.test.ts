import assert from 'node:assert/strict';
import { test } from 'node:test';
import { readApart } from './read-apart.ts';
import { readFile } from './read-file.ts';

const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);
const LIST = 'Reference,Value,Footprint\n"R1,R2",4k7 1%,R_0805\n';

void test('a file read apart reads as it does here, and so does what is no table', async () => {
  assert.deepEqual(await readApart(bytes(LIST), 'owl.csv'), readFile(bytes(LIST), 'owl.csv'));
  assert.deepEqual(await readApart(bytes(''), 'none.csv'), readFile(bytes(''), 'none.csv'));
});

void test('a file that takes too long is refused by name, and the next one is read', async () => {
  const long = readApart(bytes(LIST.repeat(20_000)), 'long.csv', { seconds: 0.001 });
  const next = readApart(bytes(LIST), 'owl.csv');
  assert.deepEqual(await long, { ok: false, refusal: { code: 'file-too-slow', args: { file: 'long.csv', seconds: 0.001 } } });
  assert.ok((await next).ok);
});
