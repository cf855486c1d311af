import { readFileSync } from 'node:fs';
import { checkLab } from '#db/check.ts';
import { restoreLab } from '#db/dump.ts';
import { cliText } from '#say/en/cli.ts';
import { oneWord } from '../bag-words.ts';
import { defineCommand, ENDED, refused } from '../command.ts';
import { withLab } from '../lab.ts';
import { withProgress } from '../progress.ts';

export const command = defineCommand({
  name: 'restore',
  summary: 'Fill an empty lab from a backup, and check it.',
  usage: 'bagatelle restore FILE',
  example: 'BAGATELLE_HOME=~/lab-again bagatelle restore lab-2026-11-25.jsonl',
  options: {},
  async run({ words, terminal }) {
    const file = oneWord(words, 'FILE');
    if (!file.ok) return file.ending;
    const text = textOf(file.value);
    if (text === null) return refused({ code: 'file-missing', args: { file: file.value } });
    const faults = await withLab((lab) =>
      withProgress(terminal, cliText('restoring'), async () => {
        await lab.transact((tx) => restoreLab(tx, text.split('\n')));
        return lab.read(checkLab);
      }),
    );
    terminal.say(faults.length ? cliText('check-bad', { faults: faults.length }) : cliText('restored', { file: file.value }));
    return faults.length ? refused(null) : ENDED;
  },
});

function textOf(path: string): string | null {
  try {
    return readFileSync(path, 'utf8');
  } catch {
    return null;
  }
}
