import { readBoards, type BoardSummary } from '#db/boards.ts';
import { cliText } from '#say/en/cli.ts';
import { defineCommand, ENDED, JSON_OPTION, wrongUsage } from '../command.ts';
import { withLab } from '../lab.ts';
import { tableLines, type ColumnOf } from '../table.ts';
import { writeInstant } from '../write-instant.ts';

const COLUMNS: readonly ColumnOf<BoardSummary>[] = [
  { head: 'board', cell: (board) => board.name, gives: true },
  { head: 'revision', cell: (board) => board.revisions.at(-1)?.name ?? null },
  { head: 'lines', cell: (board) => board.revisions.at(-1)?.lines ?? 0, right: true },
  { head: 'saved', cell: (board) => writeInstant(board.revisions.at(-1)?.saved ?? '1970-01-01T00:00:00Z') },
  { head: 'source', cell: (board) => board.revisions.at(-1)?.source ?? null },
];

export const command = defineCommand({
  name: 'boards',
  summary: 'List the boards that the lab keeps, each with its newest revision.',
  usage: 'bagatelle boards',
  example: 'bagatelle boards',
  options: { json: JSON_OPTION },
  async run({ words: [extra], options, terminal }) {
    if (extra !== undefined) return wrongUsage(cliText('words-too-many', { word: extra }));
    const boards = await withLab((lab) => lab.read(readBoards));
    if (options.json) for (const board of boards) terminal.out(JSON.stringify(board));
    else for (const line of tableLines(boards, COLUMNS, terminal.columns)) terminal.out(line);
    return ENDED;
  },
});
