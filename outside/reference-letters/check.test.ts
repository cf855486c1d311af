import assert from 'node:assert/strict';
import { test } from 'node:test';
import { readPart } from '#core/part/read-part.ts';
import { rowsOf } from '../rows-of.ts';

const rows = (name: string): string[][] => rowsOf(import.meta.url, name);

const kindOf = (ref: string, value: string): string => readPart('', { refs: [ref], fields: { value } }).part.kind;

// IEEE 315 / ASME Y14.44 letters and those of practice: a value that says nothing leaves the letter alone
void test('each reference letter alone gives the kind that it stands for, or one that shares it', () => {
  for (const [part, letters = '', kinds = ''] of rows('letters'))
    for (const letter of letters.split(' ')) {
      const kind = kindOf(`${letter}1`, 'xyzzy');
      assert.ok(kinds.split(' ').includes(kind), `${letter}1 (${part}) is read as ${kind}`);
    }
});

// the list of letters that clash: the letter must not decide against the value
void test('a letter that stands for several kinds yields to what the value says', () => {
  for (const [ref = '', value = '', kind] of rows('clashes')) assert.equal(kindOf(ref, value), kind, `${ref} ${value}`);
});
