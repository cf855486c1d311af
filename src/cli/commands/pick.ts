import { pickForBuild } from '#actions/pick-for-build.ts';
import { pick } from '#actions/pick.ts';
import { cliText } from '#say/en/cli.ts';
import { bagAndQuantity } from '../bag-words.ts';
import { readCells } from '../cell-words.ts';
import { defineCommand, refused, type Ending } from '../command.ts';
import { withLab } from '../lab.ts';
import { namedBuild } from '../named-build.ts';
import type { Terminal } from '../terminal.ts';
import { WRITE_OPTIONS, writeAct, writeActIn, type WriteOptions } from '../write-act.ts';

export const command = defineCommand({
  name: 'pick',
  summary: 'Take pieces out of a bag, or pick a kit.',
  usage:
    'bagatelle pick BAG QUANTITY [--in-hand]\nbagatelle pick --build BUILD [CELL=QUANTITY …] [--short]      (all that is open, unless cells are named)',
  example: 'bagatelle pick 12 3\nbagatelle pick --build blinker 3=20 4=6',
  options: {
    'in-hand': { type: 'switch', say: 'they are in my hand: books the pick even where the record says less, and a correction' },
    build: { type: 'word', value: 'BUILD', say: 'pick for this build: its name, or how its id begins' },
    short: { type: 'switch', say: 'the bags of the named cells gave no more: they go on the count list' },
    ...WRITE_OPTIONS,
  },
  async run({ words, options, terminal }) {
    const inHand = options['in-hand'] ? { inHand: true as const } : {};
    if (options.build !== undefined)
      return pickKit(terminal, options.build, words, { ...options, inHand, short: options.short === true });
    const read = bagAndQuantity(words);
    if (!read.ok) return read.ending;
    const { bag, quantity } = read;
    return writeAct(terminal, options, {
      action: pick,
      input: (told) => ({ ...told, bag, quantity, ...inHand }),
      tell: (result) => [cliText('picked', result)],
    });
  },
});

interface KitOptions extends WriteOptions {
  readonly inHand: { readonly inHand?: true };
  readonly short: boolean;
}

function pickKit(
  terminal: Terminal,
  build: string,
  words: readonly string[],
  { inHand, short, ...options }: KitOptions,
): Promise<Ending> {
  return withLab(async (lab) => {
    const kit = await namedBuild(lab, build);
    if (!kit.ok) return refused(kit.refusal);
    const cells = readCells(words, kit.value.takes);
    if (!cells.ok) return refused(cells.refusal);
    const picks = cells.value.map((cell) => ({ ...cell, ...(short && { short: true }) }));
    return writeActIn(lab, terminal, options, {
      action: pickForBuild,
      input: (told) => ({ ...told, build: kit.value.build.id, ...(picks.length && { picks }), ...inHand }),
      tell: ({ picked, open }) => [cliText('picked-kit', { name: kit.value.build.name, picked, open })],
    });
  });
}
