import { choose } from '#actions/choose.ts';
import { fitLater } from '#actions/fit-later.ts';
import { followStock } from '#actions/follow-stock.ts';
import { planBom } from '#actions/plan-bom.ts';
import { readWhole } from '#actions/whole.ts';
import type { Outcome } from '#core/stock/refusal.ts';
import type { Lab } from '#db/database.ts';
import { cliText } from '#say/en/cli.ts';
import { namedBom } from '../bom-words.ts';
import { defineCommand, refused, wrongUsage } from '../command.ts';
import { withLab } from '../lab.ts';
import { WRITE_OPTIONS, writeActIn } from '../write-act.ts';

export const command = defineCommand({
  name: 'choose',
  summary: 'Take a bag by hand for a line of a board, accept what is to be checked about it, or leave the line off for now.',
  usage:
    'bagatelle choose BOARD ROW BAG [--reason TEXT]\nbagatelle choose BOARD ROW --none      (takes the choice back)\nbagatelle choose BOARD ROW --later | --fit      (leaves it off for now, or fits it again)',
  example: 'bagatelle choose Blinker 4 12',
  options: {
    reason: { type: 'word', value: 'TEXT', say: 'why a bag is taken that does not serve; kept, and shown wherever it is used' },
    none: { type: 'switch', say: 'no bag by hand any more' },
    later: { type: 'switch', say: 'leave the line off for now: plans take nothing for it' },
    fit: { type: 'switch', say: 'fit it again' },
    ...WRITE_OPTIONS,
  },
  async run({ words: [board, rowWord, bagWord, extra], options, terminal }) {
    if (extra !== undefined) return wrongUsage(cliText('words-too-many', { word: extra }));
    if (board === undefined || rowWord === undefined) return wrongUsage(cliText('words-missing', { what: 'BOARD and ROW' }));
    const ways = [bagWord, options.none, options.later, options.fit].filter((way) => way !== undefined);
    if (ways.length !== 1) return wrongUsage(cliText('words-missing', { what: 'BAG, or one of --none, --later and --fit' }));
    const row = readWhole(rowWord, 'ROW');
    if (!row.ok) return refused(row.refusal);
    const bag = bagWord === undefined ? null : readWhole(bagWord, 'bag');
    if (bag && !bag.ok) return refused(bag.refusal);
    return withLab(async (lab) => {
      const demand = await demandOfRow(lab, board, row.value);
      if (!demand.ok) return refused(demand.refusal);
      const line = { board, demand: demand.value, row: row.value };
      if (options.later !== undefined || options.fit !== undefined)
        return writeActIn(lab, terminal, options, {
          action: fitLater,
          input: (told) => ({ ...told, ...line, later: options.later !== undefined }),
          tell: (result) => [cliText('later', { ...result, row: row.value })],
        });
      return writeActIn(lab, terminal, options, {
        action: choose,
        input: (told) => ({
          ...told,
          ...line,
          bag: bag?.value ?? null,
          accept: bag !== null,
          ...(options.reason !== undefined && { reason: options.reason }),
        }),
        tell: (result) => [cliText('chosen', { ...result, row: row.value })],
      });
    });
  },
});

/** What the line of a saved board asks for, as choices are kept by it. */
async function demandOfRow(lab: Lab, board: string, row: number): Promise<Outcome<string>> {
  const bom = await namedBom(lab, board);
  if (!bom.ok) return bom;
  if (bom.value.board === undefined) return { ok: false, refusal: { code: 'no-such-board', args: { board } } };
  const { lines } = await planBom(await followStock(lab).current(), bom.value, 1, { spares: false });
  const line = lines.find((one) => one.row === row);
  return line
    ? { ok: true, value: line.demand }
    : { ok: false, refusal: { code: 'not-valid', args: { field: 'ROW', received: row, expected: 'row-of-board' } } };
}
