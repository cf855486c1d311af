import { flushCompileCache } from 'node:module';
import type { Lab } from '#db/database.ts';
import { Refused } from '#db/refused.ts';
import { serveLab, isLoopback } from '#server/start.ts';
import { cliText } from '#say/en/cli.ts';
import { defineCommand, ENDED, refused, wrongUsage } from '../command.ts';
import { clock, withLab } from '../lab.ts';
import { openPage } from '../open-page.ts';
import { PORTS, readWhole } from '#actions/whole.ts';

const PORT = '4242';

export const command = defineCommand({
  name: 'serve',
  summary: 'Open the lab in a browser, and to programs.',
  usage: 'bagatelle serve [--port N] [--open]',
  example: 'bagatelle serve --port 8080',
  options: {
    port: { type: 'word', value: 'N', say: `port to listen on: ${PORT} unless said, 0 for a free one` },
    open: { type: 'switch', say: 'show the page in the browser' },
    host: { type: 'word', value: 'NAME', say: 'address to listen on: this machine alone unless said' },
    'let-the-network-in': { type: 'switch', say: 'with --host: I know that there is no sign-in yet' },
  },
  async run({ words: [extra], options, terminal }) {
    if (extra !== undefined) return wrongUsage(cliText('words-too-many', { word: extra }));
    const port = readWhole(options.port ?? PORT, '--port', PORTS);
    if (!port.ok) return refused(port.refusal);
    const host = options.host ?? '127.0.0.1';
    if (!isLoopback(host) && !options['let-the-network-in']) return wrongUsage(cliText('serve-network', { host }));
    return withLab(async (lab) => {
      if (await onlyReads(lab)) terminal.say(cliText('serve-read-only', { where: lab.where }));
      const stop = stopAsked();
      const served = await serveLab(lab, clock, { host, port: port.value });
      if ('fault' in served) {
        terminal.say(`bagatelle: ${cliText('serve-fault', { fault: served.fault, host, port: port.value })}`);
        return refused(null);
      }
      if (!isLoopback(host)) terminal.say(cliText('serve-open-network', { host }));
      terminal.out(cliText('serving', { url: served.url }));
      if (options.open) openPage(served.url);
      flushCompileCache(); // a server may run for weeks, or be killed: the next start is to be fast all the same
      await stop;
      await served.stop();
      terminal.say(cliText('stopped'));
      return ENDED;
    });
  },
});

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
