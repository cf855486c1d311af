import { saveBoard } from '#actions/save-board.ts';
import { cliText } from '#say/en/cli.ts';
import { oneWord } from '../bag-words.ts';
import { columnChoice, COLUMNS_OPTION } from '../column-words.ts';
import { defineCommand, refused } from '../command.ts';
import { doubtsJson, tellDoubtedRows } from '../reading-words.ts';
import { nameOfFile, readPath } from '../read-path.ts';
import { WRITE_OPTIONS, writeAct } from '../write-act.ts';

export const command = defineCommand({
  name: 'save',
  summary: 'Keep a BOM as a board, or as the next revision of one.',
  usage: 'bagatelle save BOM [--name BOARD] [--revision NAME] [--columns "2=value"]',
  example: 'bagatelle save blinker.csv --name Blinker --revision B',
  options: {
    name: { type: 'word', value: 'BOARD', say: 'name of the board: that of the file unless said' },
    revision: { type: 'word', value: 'NAME', say: 'name of the revision: the next number unless said' },
    columns: COLUMNS_OPTION,
    ...WRITE_OPTIONS,
  },
  async run({ words, options, terminal }) {
    const file = oneWord(words, 'BOM');
    if (!file.ok) return file.ending;
    const told = columnChoice(options.columns);
    if (!told.ok) return told.ending;
    const read = await readPath(file.value, told.value);
    if (!read.ok) return refused(read.refusal);
    const { rows } = read.value;
    tellDoubtedRows(terminal, rows);
    const { revision } = options;
    const board = options.name ?? nameOfFile(file.value);
    return writeAct(terminal, options, {
      action: saveBoard,
      input: (told) => ({
        ...told,
        board,
        source: file.value,
        lines: rows,
        ...(revision !== undefined && { revision }),
      }),
      tell: (result) => [cliText('board-saved', result)],
      json: (result) => ({ ...result, doubts: doubtsJson(rows) }),
    });
  },
});
