import { cancelBuild } from '#actions/cancel-build.ts';
import { cliText } from '#say/en/cli.ts';
import { oneWord } from '../bag-words.ts';
import { defineCommand, refused } from '../command.ts';
import { withLab } from '../lab.ts';
import { namedBuild } from '../named-build.ts';
import { WRITE_OPTIONS, writeActIn } from '../write-act.ts';

export const command = defineCommand({
  name: 'cancel',
  summary: 'Give a build up: its promises are let go, what was picked goes back into its bags.',
  usage: 'bagatelle cancel BUILD',
  example: 'bagatelle cancel blinker',
  options: {
    ...WRITE_OPTIONS,
  },
  async run({ words, options, terminal }) {
    const word = oneWord(words, 'BUILD');
    if (!word.ok) return word.ending;
    return withLab(async (lab) => {
      const kit = await namedBuild(lab, word.value);
      if (!kit.ok) return refused(kit.refusal);
      const { id: build, name } = kit.value.build;
      return writeActIn(lab, terminal, options, {
        action: cancelBuild,
        input: (told) => ({ ...told, build }),
        tell: (result) => [cliText('cancel', { ...result, name })],
      });
    });
  },
});
