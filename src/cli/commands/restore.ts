import { restoreFile } from '#db/backup.ts';
import { cliText } from '#say/en/cli.ts';
import { oneWord } from '../bag-words.ts';
import { defineCommand, ENDED } from '../command.ts';
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
    return withLab(async (lab) => {
      await withProgress(terminal, cliText('restoring'), () => restoreFile(lab, file.value));
      terminal.say(cliText('restored', { file: file.value }));
      return ENDED;
    });
  },
});
