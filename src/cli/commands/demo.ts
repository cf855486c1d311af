import { randomUUID } from 'node:crypto';
import { cliText } from '#say/en/cli.ts';
import { defineCommand, ENDED, wrongUsage } from '../command.ts';
import { withLab } from '../lab.ts';
import { withProgress } from '../progress.ts';

export const command = defineCommand({
  name: 'demo',
  summary: 'Fill an empty lab with the demo: boxes, bags, boards, a kit under way.',
  usage: 'bagatelle demo',
  example: 'BAGATELLE_HOME=~/bagatelle-demo bagatelle demo',
  options: {},
  async run({ words: [extra], terminal }) {
    if (extra !== undefined) return wrongUsage(cliText('words-too-many', { word: extra }));
    return withLab(async (lab) => {
      const { beginDemo } = await import('#demo/begin.ts');
      await withProgress(terminal, cliText('filling'), () => beginDemo(lab, randomUUID()));
      terminal.say(cliText('demo-filled', { where: lab.where }));
      return ENDED;
    });
  },
});
