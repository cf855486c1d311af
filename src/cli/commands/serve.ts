import { flushCompileCache } from 'node:module';
import type { Lab } from '#db/database.ts';
import { Refused } from '#db/refused.ts';
import { serveLab, type LabServed } from '#server/start.ts';
import { cliText } from '#say/en/cli.ts';
import { defineCommand, ENDED, refused, wrongUsage } from '../command.ts';
import { clock, withLab } from '../lab.ts';
import { openPage } from '../open-page.ts';
import { printQr } from '../qr-lines.ts';
import type { Terminal } from '../terminal.ts';
import { PORTS, readWhole } from '#actions/whole.ts';

const PORT = '4242';

export const command = defineCommand({
  name: 'serve',
  summary: 'Open the lab in a browser, and to programs.',
  usage: 'bagatelle serve [--port N] [--lan] [--open]',
  example: 'bagatelle serve --port 8080',
  options: {
    port: { type: 'word', value: 'N', say: `port to listen on: ${PORT} unless said, 0 for a free one` },
    open: { type: 'switch', say: 'show the page in the browser' },
    lan: { type: 'switch', say: 'let paired phones and computers of this network in; else the lab answers this machine alone' },
  },
  async run({ words: [extra], options, terminal }) {
    if (extra !== undefined) return wrongUsage(cliText('words-too-many', { word: extra }));
    const port = readWhole(options.port ?? PORT, '--port', PORTS);
    if (!port.ok) return refused(port.refusal);
    return withLab(async (lab) => {
      if (await onlyReads(lab)) terminal.say(cliText('serve-read-only', { where: lab.where }));
      const stop = stopAsked();
      const served = await serveLab(lab, clock, { lan: options.lan ?? false, port: port.value });
      if ('fault' in served) {
        terminal.say(`bagatelle: ${cliText('serve-fault', { fault: served.fault, port: port.value })}`);
        return refused(null);
      }
      terminal.out(cliText('serving', { url: served.url }));
      if (options.lan) await showInvite(terminal, served);
      if (options.open) openPage(served.url);
      flushCompileCache(); // a server may run for weeks, or be killed: the next start is to be fast all the same
      await stop;
      await served.stop();
      terminal.say(cliText('stopped'));
      return ENDED;
    });
  },
});

/** What the first phone needs: its camera reads the code, or somebody types the address. */
async function showInvite(terminal: Terminal, { invite }: LabServed): Promise<void> {
  const made = await invite();
  if (!made) return terminal.say(cliText('serve-no-network'));
  printQr(terminal, made.squares);
  terminal.out(cliText('serve-invite', { url: made.url }));
}

/** A lab on a disk that can't be written to can be looked at. */
async function onlyReads(lab: Lab): Promise<boolean> {
  try {
    await lab.transact(() => Promise.resolve());
    return false;
  } catch (error) {
    return error instanceof Refused && error.refusal.code === 'disk-read-only';
  }
}

/** Resolves when the process is asked to end; a second time ends it at once. */
function stopAsked(): Promise<void> {
  return new Promise((asked) => {
    for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) {
      process.once(signal, () => asked());
    }
  });
}
