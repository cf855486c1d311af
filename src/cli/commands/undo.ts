import { undo } from '#actions/undo.ts';
import { lastAct } from '#db/acts.ts';
import { actsThatBegin } from '#db/history.ts';
import { cliText } from '#say/en/cli.ts';
import { defineCommand, refused, wrongUsage } from '../command.ts';
import { withLab } from '../lab.ts';
import { WRITE_OPTIONS, writeActIn } from '../write-act.ts';

export const command = defineCommand({
  name: 'undo',
  summary: 'Take an act back: its movements, by their opposite.',
  usage: 'bagatelle undo ACT      (its id, or how it begins)\nbagatelle undo --last',
  example: 'bagatelle undo 5f0c2e1a',
  options: { last: { type: 'switch', say: 'the newest act of this lab, whoever did it' }, ...WRITE_OPTIONS },
  async run({ words: [word, extra], options, terminal }) {
    if (extra !== undefined) return wrongUsage(cliText('words-too-many', { word: extra }));
    if (word !== undefined && options.last) return wrongUsage(cliText('words-too-many', { word }));
    if ((word === undefined) === (options.last === undefined))
      return wrongUsage(cliText('words-missing', { what: 'ACT, or --last' }));
    return withLab(async (lab) => {
      const acts = await lab.read(async (tx) => (word === undefined ? [(await lastAct(tx)) ?? ''] : actsThatBegin(tx, word)));
      const [act, other] = acts.length ? acts : [word ?? ''];
      if (other !== undefined)
        return refused({
          code: 'not-valid',
          args: { field: 'ACT', received: word ?? '', expected: 'more of the id: several acts begin so' },
        });
      if (!act) return refused({ code: 'nothing-to-do', args: {} });
      return writeActIn(lab, terminal, options, {
        action: undo,
        input: (told) => ({ ...told, act }),
        tell: ({ kind, bags }) => [
          cliText('undone', { kind, bags: bags.map(({ bag, onHand }) => `${bag} (${onHand} on hand)`).join(', ') }),
        ],
      });
    });
  },
});
