import { setAside } from '#actions/set-aside.ts';
import { cliText } from '#say/en/cli.ts';
import { oneBag } from './bag-words.ts';
import { defineCommand, type Command } from './command.ts';
import { WRITE_OPTIONS, writeAct } from './write-act.ts';

interface Aside {
  readonly name: string;
  readonly summary: string;
  readonly state: 'astray' | 'sound';
}

/** A command that says of one bag that it is not where it should be, or is again. */
export function setAsideCommand({ name, summary, state }: Aside): Command {
  return defineCommand({
    name,
    summary,
    usage: `bagatelle ${name} BAG`,
    example: `bagatelle ${name} 12`,
    options: WRITE_OPTIONS,
    async run({ words, options, terminal }) {
      const bag = oneBag(words);
      if (!bag.ok) return bag.ending;
      return writeAct(terminal, options, {
        action: setAside,
        input: (told) => ({ ...told, bag: bag.value, state }),
        tell: (result) => [cliText('set-aside', result)],
      });
    },
  });
}
