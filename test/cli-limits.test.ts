import assert from 'node:assert/strict';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { after, suite, test } from 'node:test';
import { runCli } from './cli-child.ts';

const folder = mkdtempSync(join(tmpdir(), 'bagatelle-limits-'));
after(() => rmSync(folder, { recursive: true }));
const home = join(folder, 'lab');

async function says(args: readonly string[], status: number, sentence: RegExp): Promise<void> {
  const ran = await runCli(home, args);
  assert.equal(ran.status, status, `bagatelle ${args.join(' ')}: ${ran.out}${ran.said}`);
  assert.match(ran.out + ran.said, sentence);
}

void suite('numbers and words that nobody means', () => {
  void test('quantities have one limit, and bags theirs', async () => {
    await says(['receive', '１２ 4k7 1% 0805'], 0, /Bag 1: 12 on hand/);
    await says(['receive', '1e9 10k'], 1, /quantity must be a whole number in plain figures, not '1e9'/);
    for (const words of [
      ['pick', '1', '1e400'],
      ['pick', '1', '-1e400'],
      ['count', '1', '-1'],
      ['count', '1', '99999999999'],
      ['receive', '99999999999 10k'],
    ])
      await says(words, 1, /must be from [01] to 1000000000, not/);
    for (const bag of ['0', '1000001', '99999999999'])
      await says(['receive', '5 1k 0805', '--bag', bag], 1, /bag must be from 1 to 1000000, not/);
  });

  void test('an empty bag is said to be empty', async () => {
    await says(['pick', '1', '12'], 0, /0 on hand/);
    await says(['pick', '1', '1'], 1, /Bag 1 is empty, 1 was asked\. If you hold 1 in your hand/);
  });

  void test('words too many are wrong usage, and after an undo none is offered', async () => {
    await says(['undo', '--last', 'extra'], 2, /Don't know what 'extra' is for/);
    const undone = await runCli(home, ['undo', '--last']);
    assert.deepEqual([undone.status, undone.said], [0, '']);
    await says(['find', ''], 2, /WORDS/);
  });

  void test('a list is written to a new file only', async () => {
    await says(['export', folder], 1, /FILE must be a new file, and .* is a folder\./);
  });
});
