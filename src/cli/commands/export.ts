import { exportLines } from '#actions/export-stock.ts';
import { readStock } from '#db/read-stock.ts';
import { cliText } from '#say/en/cli.ts';
import { oneWord } from '../bag-words.ts';
import { defineCommand, ENDED, refused } from '../command.ts';
import { withLab } from '../lab.ts';
import { writeFile } from '../write-file.ts';

export const command = defineCommand({
  name: 'export',
  summary: 'Write the stock as a table (CSV) for a spreadsheet; import reads it again.',
  usage: 'bagatelle export FILE',
  example: 'bagatelle export stock.csv',
  options: {},
  async run({ words, terminal }) {
    const file = oneWord(words, 'FILE');
    if (!file.ok) return file.ending;
    const stock = await withLab((lab) => lab.read(readStock));
    const written = await writeFile(file.value, exportLines(stock));
    if (!written.ok) return refused(written.refusal);
    terminal.say(cliText('exported', { file: file.value, bags: written.value.lines - 1 }));
    return ENDED;
  },
});
