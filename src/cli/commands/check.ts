import { checkLab } from '#db/check.ts';
import { cliText } from '#say/en/cli.ts';
import { defineCommand, ENDED, JSON_OPTION, refused, wrongUsage } from '../command.ts';
import { withLab } from '../lab.ts';
import { withProgress } from '../progress.ts';

export const command = defineCommand({
  name: 'check',
  summary: 'Prove the lab from its own records: on hand is the sum of the movements, and more.',
  usage: 'bagatelle check',
  example: 'bagatelle check',
  options: { json: JSON_OPTION },
  async run({ words: [extra], options, terminal }) {
    if (extra !== undefined) return wrongUsage(cliText('words-too-many', { word: extra }));
    const faults = await withLab((lab) => withProgress(terminal, cliText('checking'), () => lab.read(checkLab)));
    for (const fault of faults) {
      if (options.json) terminal.out(JSON.stringify(fault));
      else terminal.out(cliText('lab-fault', { code: fault.code, args: JSON.stringify(fault.args) }));
    }
    terminal.say(faults.length ? cliText('check-bad', { faults: faults.length }) : cliText('check-good'));
    return faults.length ? refused(null) : ENDED;
  },
});
