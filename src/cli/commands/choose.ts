import { choose } from '#actions/choose.ts';
import { followStock } from '#actions/follow-stock.ts';
import { planBom } from '#actions/plan-bom.ts';
import { cliText } from '#say/en/cli.ts';
import { namedBom } from '../bom-words.ts';
import { defineCommand, refused, wrongUsage } from '../command.ts';
import { withLab } from '../lab.ts';
import { readWhole } from '#actions/whole.ts';
import { WRITE_OPTIONS, writeActIn } from '../write-act.ts';

export const command = defineCommand({
  name: 'choose',
  summary: 'Take a bag by hand for a line of a board, or accept what is to be checked about it.',
  usage: 'bagatelle choose BOARD ROW BAG [--reason TEXT]\nbagatelle choose BOARD ROW --none      (takes the choice back)',
  example: 'bagatelle choose Blinker 4 12',
  options: {
    reason: { type: 'word', value: 'TEXT', say: 'why a bag is taken that does not serve; kept, and shown wherever it is used' },
    none: { type: 'switch', say: 'no bag by hand any more' },
    ...WRITE_OPTIONS,
  },
  async run({ words: [board, rowWord, bagWord, extra], options, terminal }) {
    if (extra !== undefined) return wrongUsage(cliText('words-too-many', { word: extra }));
    if (board === undefined || rowWord === undefined) return wrongUsage(cliText('words-missing', { what: 'BOARD and ROW' }));
    if ((bagWord === undefined) === (options.none === undefined))
      return wrongUsage(cliText('words-missing', { what: 'BAG, or --none' }));
    const row = readWhole(rowWord, 'ROW');
    if (!row.ok) return refused(row.refusal);
    const bag = bagWord === undefined ? null : readWhole(bagWord, 'bag');
    if (bag && !bag.ok) return refused(bag.refusal);
    return withLab(async (lab) => {
      const bom = await namedBom(lab, board);
      if (!bom.ok) return refused(bom.refusal);
      if (bom.value.board === undefined) return refused({ code: 'no-such-board', args: { board } });
      const { lines } = await planBom(await followStock(lab).current(), bom.value, 1, { spares: false });
      const line = lines.find((one) => one.row === row.value);
      if (!line) return refused({ code: 'not-valid', args: { field: 'ROW', received: rowWord, expected: 'a row of the board' } });
      return writeActIn(lab, terminal, options, {
        action: choose,
        input: (told) => ({
          ...told,
          board,
          demand: line.demand,
          row: row.value,
          bag: bag?.value ?? null,
          accept: bag !== null,
          ...(options.reason !== undefined && { reason: options.reason }),
        }),
        tell: (result) => [cliText('chosen', { ...result, row: row.value })],
      });
    });
  },
});
