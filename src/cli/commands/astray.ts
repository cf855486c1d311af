import { setAside } from '#actions/set-aside.ts';
import { oneBag } from '../bag-words.ts';
import { defineCommand } from '../command.ts';
import { WRITE_OPTIONS, writeAct } from '../write-act.ts';
import { cliText } from '#say/en/cli.ts';

export const command = defineCommand({
  name: 'astray',
  summary: 'Say that a bag was looked for and not found: plans leave it out.',
  usage: 'bagatelle astray BAG',
  example: 'bagatelle astray 12',
  options: WRITE_OPTIONS,
  async run({ words, options, terminal }) {
    const bag = oneBag(words);
    if (!bag.ok) return bag.ending;
    return writeAct(terminal, options, {
      action: setAside,
      input: (told) => ({ ...told, bag: bag.value, state: 'astray' as const }),
      tell: (result) => [cliText('set-aside', result)],
    });
  },
});
