import { backupLab } from '#db/backup.ts';
import { cliText } from '#say/en/cli.ts';
import { oneWord } from '../bag-words.ts';
import { defineCommand, ENDED } from '../command.ts';
import { withLab } from '../lab.ts';
import { withProgress } from '../progress.ts';

export const command = defineCommand({
  name: 'backup',
  summary: 'Write the whole lab into one file, while others may go on working.',
  usage: 'bagatelle backup FILE',
  example: 'bagatelle backup lab-2026-11-25.jsonl',
  options: {},
  async run({ words, terminal }) {
    const file = oneWord(words, 'FILE');
    if (!file.ok) return file.ending;
    const lines = await withLab((lab) => withProgress(terminal, cliText('backing-up'), () => backupLab(lab, file.value)));
    terminal.say(cliText('backed-up', { file: file.value, rows: lines - 2 }));
    return ENDED;
  },
});
