import assert from 'node:assert/strict';
import { test } from 'node:test';
import { fileIs } from './bring-file.ts';

void test('a dropped file is told by its name, and one that can not be read is neither', () => {
  const names = ['parts.CSV', 'parts.tsv', 'shelf.v2.txt', 'list', 'lab.jsonl', 'parts.xlsx', 'photo.png'];
  assert.deepEqual(names.map(fileIs), ['table', 'table', 'table', 'table', 'backup', 'neither', 'neither']);
});
