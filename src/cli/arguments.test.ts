import assert from 'node:assert/strict';
import { test } from 'node:test';
import { readArguments } from './arguments.ts';

const OPTIONS = { boards: { type: 'word', value: 'N', say: '' }, json: { type: 'switch', say: '' } } as const;

void test('words and options are told apart, in any order', () => {
  assert.deepEqual(readArguments(['bom.csv', '--json', '--boards', '3'], OPTIONS), {
    ok: true,
    words: ['bom.csv'],
    options: { json: true, boards: '3' },
    help: false,
  });
});

void test('a negative number is a word or a value, never an option', () => {
  const read = readArguments(['12', '-30', '--boards', '-1'], OPTIONS);
  assert.deepEqual(read.ok && [read.words, read.options.boards], [['12', '-30'], '-1']);
});

void test('an unknown option is refused with the one that was meant', () => {
  const read = readArguments(['--bords', '3'], OPTIONS);
  assert.match(read.ok ? '' : read.wrong, /no option --bords.*Did you mean --boards/);
});

void test('an option without its value is refused by name', () => {
  for (const args of [['--boards'], ['--boards', '--json']]) {
    const read = readArguments(args, OPTIONS);
    assert.match(read.ok ? '' : read.wrong, /--boards N/);
  }
  const read = readArguments(['--json=yes'], OPTIONS);
  assert.match(read.ok ? '' : read.wrong, /takes no value/);
});

void test('help is known everywhere, and so is what follows --', () => {
  const read = readArguments(['-h', '--', '--odd.csv'], OPTIONS);
  assert.deepEqual(read.ok && [read.help, read.words], [true, ['--odd.csv']]);
});
