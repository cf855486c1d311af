import { expectedLeftovers, type ExpectedLeftover } from '#actions/expected-leftovers.ts';
import { returnLeftovers } from '#actions/return-leftovers.ts';
import { returnToBag } from '#actions/return-to-bag.ts';
import { cliText } from '#say/en/cli.ts';
import { bagAndQuantity } from '../bag-words.ts';
import { readCells } from '../cell-words.ts';
import { defineCommand, ENDED, refused, type Ending } from '../command.ts';
import { withLab } from '../lab.ts';
import { namedBuild } from '../named-build.ts';
import { tableLines, type ColumnOf } from '../table.ts';
import type { Terminal } from '../terminal.ts';
import { WRITE_OPTIONS, writeAct, writeActIn, type WriteOptions } from '../write-act.ts';

const COLUMNS: readonly ColumnOf<ExpectedLeftover>[] = [
  { head: 'tray', cell: ({ take }) => take.tray, right: true },
  { head: 'cell', cell: ({ take }) => take.cell, right: true },
  { head: 'bag', cell: ({ take }) => take.bag, right: true },
  { head: 'picked', cell: ({ take }) => take.picked, right: true },
  { head: 'returned', cell: ({ take }) => take.returned, right: true },
  { head: 'expected', cell: ({ expected }) => expected, right: true },
  { head: 'part', cell: ({ take }) => take.code, gives: true },
];

export const command = defineCommand({
  name: 'return',
  summary: 'Put pieces back into a bag, or the leftovers of a build.',
  usage:
    'bagatelle return BAG QUANTITY\nbagatelle return --build BUILD      (shows what should be left in each cell)\nbagatelle return --build BUILD CELL=QUANTITY … | --expected',
  example: 'bagatelle return 12 3\nbagatelle return --build blinker 3=2 4=0',
  options: {
    build: { type: 'word', value: 'BUILD', say: 'leftovers of this build: its name, or how its id begins' },
    expected: { type: 'switch', say: 'all that should be left has come back' },
    ...WRITE_OPTIONS,
  },
  async run({ words, options, terminal }) {
    if (options.build !== undefined)
      return returnKit(terminal, options.build, words, { ...options, expected: options.expected === true });
    const read = bagAndQuantity(words);
    if (!read.ok) return read.ending;
    const { bag, quantity } = read;
    return writeAct(terminal, options, {
      action: returnToBag,
      input: (told) => ({ ...told, bag, quantity }),
      tell: (result) => [cliText('returned', result)],
    });
  },
});

function returnKit(
  terminal: Terminal,
  build: string,
  words: readonly string[],
  options: WriteOptions & { readonly expected: boolean },
): Promise<Ending> {
  return withLab(async (lab) => {
    const kit = await namedBuild(lab, build);
    if (!kit.ok) return refused(kit.refusal);
    const expected = expectedLeftovers(kit.value);
    if (!words.length && !options.expected) return tellExpected(terminal, expected, options.json === true);
    const cells = readCells(words, kit.value.takes);
    if (!cells.ok) return refused(cells.refusal);
    const named = new Set(cells.value.map(({ take }) => take));
    const rest = options.expected
      ? expected
          .filter(({ take, expected: some }) => some > 0 && !named.has(take.id))
          .map(({ take, expected: quantity }) => ({ take: take.id, quantity }))
      : [];
    return writeActIn(lab, terminal, options, {
      action: returnLeftovers,
      input: (told) => ({ ...told, build: kit.value.build.id, returns: [...cells.value, ...rest] }),
      tell: ({ returned }) => [cliText('returned-kit', { name: kit.value.build.name, returned })],
    });
  });
}

function tellExpected(terminal: Terminal, expected: readonly ExpectedLeftover[], json: boolean): Ending {
  const out = expected.filter(({ take }) => take.picked > 0);
  if (json) for (const { take, expected: quantity } of out) terminal.out(JSON.stringify({ ...take, expected: quantity }));
  else for (const line of tableLines(out, COLUMNS, terminal.columns)) terminal.out(line);
  if (!out.length) terminal.say(cliText('nothing-picked'));
  return ENDED;
}
