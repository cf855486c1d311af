import assert from 'node:assert/strict';
import { execFileSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { test } from 'node:test';
import { fileURLToPath } from 'node:url';

const SCORER = fileURLToPath(new URL('../../../shared/corpus/score.mjs', import.meta.url));
const ROOT = fileURLToPath(new URL('../../', import.meta.url));

interface Tally {
  readonly right: number;
  readonly silent: number;
  readonly doubted: number;
  readonly wrong: number;
}
interface Score {
  readonly files: number;
  readonly ran: number;
  readonly fields: Readonly<Record<string, Tally>>;
  readonly wrongShare: number;
  readonly extraShare: number;
  readonly doubtedRows: number;
}

/** Of the rows that state a field, how many must be read right. */
const LEAST: Readonly<Record<string, number>> = {
  kind: 0.97,
  'value (passives)': 0.985,
  'unit (passives)': 0.985,
  package: 0.95,
  partNumber: 0.93,
  tolerance: 0.97,
  voltage: 0.97,
  dielectric: 0.97,
};
const MOST = { wrongShare: 0.007, extraShare: 0.01, doubtedRows: 0.12 };

// Source: real BOMs of open-hardware repositories with labels by hand, which lie beside the project and not in it.
if (existsSync(SCORER))
  void test('real BOMs are read right, or with a doubt', () => {
    const told = execFileSync(
      process.execPath,
      [SCORER, '--set', 'boms', '--json', '--cmd', `${process.execPath} src/cli/main.ts`],
      {
        cwd: ROOT,
        encoding: 'utf8',
      },
    );
    const score = JSON.parse(told) as Score; // as: the scorer's shape
    assert.ok(score.files > 0);
    assert.equal(score.ran, score.files);
    const share = ({ right, silent, doubted, wrong }: Tally): number => right / (right + silent + doubted + wrong);
    const low = Object.entries(LEAST).filter(([field, least]) => share(score.fields[field] ?? NONE) < least);
    assert.deepEqual(low, []);
    const high = Object.entries(MOST).filter(([name, most]) => score[name as keyof typeof MOST] > most); // as: its own keys
    assert.deepEqual(high, []);
  });
else process.stderr.write('left out: the score on real BOMs, which are not beside the project\n');

const NONE: Tally = { right: 0, silent: 1, doubted: 0, wrong: 0 };
