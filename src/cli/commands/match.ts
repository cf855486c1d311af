import { followStock } from '#actions/follow-stock.ts';
import { planBom } from '#actions/plan-bom.ts';
import { lineAnswer } from '#api/kit-answers.ts';
import { sayBecause } from '#say/en/because.ts';
import { cliText } from '#say/en/cli.ts';
import { oneWord } from '../bag-words.ts';
import { namedBom } from '../bom-words.ts';
import { columnChoice, COLUMNS_OPTION } from '../column-words.ts';
import { defineCommand, ENDED, JSON_OPTION, refused } from '../command.ts';
import { LINE_COLUMNS, toldLines } from '../kit-tables.ts';
import { withLab } from '../lab.ts';
import { withProgress } from '../progress.ts';
import { tellDoubtedRows } from '../reading-words.ts';
import { tellLine } from '../one-line.ts';
import { tableLines } from '../table.ts';
import { BOARDS, readWhole } from '#actions/whole.ts';

export const command = defineCommand({
  name: 'match',
  summary: 'Put a BOM against the bags: what serves, what is to check, what is missing.',
  usage: 'bagatelle match BOM [--boards N] [--columns "2=value"]      (a BOM is a file, or a board that the lab keeps)',
  example: 'bagatelle match blinker.csv --boards 3',
  options: {
    boards: { type: 'word', value: 'N', say: 'for so many boards: 1 unless said' },
    row: { type: 'word', value: 'ROW', say: 'one line whole: every bag that may answer it, with all reasons' },
    columns: COLUMNS_OPTION,
    json: JSON_OPTION,
  },
  async run({ words, options, terminal }) {
    const bomWord = oneWord(words, 'BOM');
    if (!bomWord.ok) return bomWord.ending;
    const boards = readWhole(options.boards ?? '1', '--boards', BOARDS);
    if (!boards.ok) return refused(boards.refusal);
    const told = columnChoice(options.columns);
    if (!told.ok) return told.ending;
    const row = options.row === undefined ? null : readWhole(options.row, '--row');
    if (row && !row.ok) return refused(row.refusal);
    return withLab(async (lab) => {
      const bom = await namedBom(lab, bomWord.value, undefined, told.value);
      if (!bom.ok) return refused(bom.refusal);
      if (row)
        return tellLine(terminal, await followStock(lab).current(), bom.value, {
          row: row.value,
          boards: boards.value,
          json: options.json === true,
        });
      const planned = await withProgress(terminal, cliText('planning'), async () =>
        planBom(await followStock(lab).current(), bom.value, boards.value, { spares: false }),
      );
      const answers = planned.lines.map((line) => lineAnswer(line, sayBecause));
      if (options.json) for (const answer of answers) terminal.out(JSON.stringify(answer));
      else for (const line of tableLines(toldLines(planned.lines, answers), LINE_COLUMNS, terminal.columns)) terminal.out(line);
      tellDoubtedRows(terminal, bom.value.rows);
      terminal.say(cliText('match-sum', countVerdicts(answers)));
      return ENDED;
    });
  },
});

function countVerdicts(answers: readonly { readonly verdict: string; readonly need: number; readonly short: number }[]) {
  const needed = answers.filter(({ need }) => need > 0);
  const of = (verdict: string): number => needed.filter((answer) => answer.verdict === verdict).length;
  return {
    exact: of('exact'),
    serves: of('serves'),
    check: of('check'),
    missing: of('missing'),
    short: needed.filter(({ short }) => short > 0).length,
  };
}
