import { finishBuild } from '#actions/finish-build.ts';
import { cliText } from '#say/en/cli.ts';
import { oneWord } from '../bag-words.ts';
import { defineCommand, refused } from '../command.ts';
import { withLab } from '../lab.ts';
import { namedBuild } from '../named-build.ts';
import { BOARDS, readWhole } from '#actions/whole.ts';
import { WRITE_OPTIONS, writeActIn } from '../write-act.ts';

export const command = defineCommand({
  name: 'finish',
  summary: 'The boards are soldered: what was still promised to the build is let go.',
  usage: 'bagatelle finish BUILD [--made N]',
  example: 'bagatelle finish blinker',
  options: {
    made: { type: 'word', value: 'N', say: 'boards that were really made: all that were planned unless said' },
    ...WRITE_OPTIONS,
  },
  async run({ words, options, terminal }) {
    const word = oneWord(words, 'BUILD');
    if (!word.ok) return word.ending;
    const made = options.made === undefined ? null : readWhole(options.made, '--made', { ...BOARDS, least: 0 });
    if (made && !made.ok) return refused(made.refusal);
    return withLab(async (lab) => {
      const kit = await namedBuild(lab, word.value);
      if (!kit.ok) return refused(kit.refusal);
      const { id: build, name } = kit.value.build;
      return writeActIn(lab, terminal, options, {
        action: finishBuild,
        input: (told) => ({ ...told, build, ...(made && { made: made.value }) }),
        tell: (result) => [cliText('finish', { ...result, name })],
      });
    });
  },
});
