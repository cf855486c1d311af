import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { readArguments } from './arguments.ts';
import type { Command, Ending } from './command.ts';
import { COMMANDS } from './command-list.ts';
import { commandHelp, programHelp } from './help.ts';
import { nearestName } from './nearest-name.ts';
import { processTerminal, type Terminal } from './terminal.ts';
import type { Refusal } from '#core/stock/refusal.ts';
import { homeFolder } from '#db/home.ts';
import { diskTrouble } from '#db/disk-trouble.ts';
import { Refused } from '#db/refused.ts';
import { cliText } from '#say/en/cli.ts';
import { refusalText } from '#say/en/refusals.ts';

/** Options that are the way on after a refusal, where the command has one. */
const WAYS_ON: Partial<Record<Refusal['code'], string>> = {
  'not-enough': 'in-hand',
  override: 'reason',
  'nothing-made': 'anyway',
  'takes-open': 'made',
  'made-unknown': 'made',
};

function wayOn({ code }: Refusal, { options }: Command): string {
  const name = WAYS_ON[code];
  const option = name === undefined ? undefined : options[name];
  return option ? ` ${cliText('way-on', { option: [`--${name}`, option.value ?? ''].join(' ').trim() })}` : '';
}

/** Says how a command ended; answers the exit status. */
function sayEnding(ending: Ending, command: Command, terminal: Terminal): number {
  if (ending.status === 1 && ending.refusal)
    terminal.say(`bagatelle: ${refusalText(ending.refusal)}${wayOn(ending.refusal, command)}`);
  if (ending.status === 2) {
    terminal.say(`bagatelle: ${ending.wrong}`);
    terminal.say(cliText('usage', { usage: command.usage.split('\n')[0] ?? '', name: command.name }));
  }
  return ending.status;
}

function version(): string {
  const text = readFileSync(join(import.meta.dirname, '..', '..', 'package.json'), 'utf8');
  return (JSON.parse(text) as { readonly version: string }).version; // as: our own package.json
}

async function runCommand(command: Command, args: readonly string[], terminal: Terminal): Promise<number> {
  const read = readArguments(args, command.options);
  if (!read.ok) return sayEnding({ status: 2, wrong: read.wrong }, command, terminal);
  if (read.help) {
    terminal.out(commandHelp(command));
    return 0;
  }
  return sayEnding(await command.run({ words: read.words, options: read.options, terminal }), command, terminal);
}

async function main(args: readonly string[], terminal: Terminal): Promise<number> {
  const [name = 'help', ...rest] = args;
  if (name === '--version') {
    terminal.out(`bagatelle ${version()}`);
    return 0;
  }
  const helpWanted = ['help', '--help', '-h'].includes(name);
  const wanted = helpWanted ? rest[0] : name;
  if (wanted === undefined) {
    const commands = await Promise.all(Object.values(COMMANDS).map(async (load) => (await load()).command));
    terminal.out(programHelp(commands, homeFolder()));
    return 0;
  }
  const load = Object.hasOwn(COMMANDS, wanted) ? COMMANDS[wanted] : undefined;
  if (!load) {
    const near = nearestName(wanted, Object.keys(COMMANDS)) ?? '';
    terminal.say(`bagatelle: ${cliText('unknown-command', { command: wanted, near })}`);
    return 2;
  }
  const { command } = await load();
  return runCommand(command, helpWanted ? ['--help'] : rest, terminal);
}

/** What nobody foresaw is our fault, and is said as such; the stack only where it is asked for. */
function sayFault(error: unknown, terminal: Terminal): void {
  terminal.say(`bagatelle: ${cliText('fault', { error: error instanceof Error ? error.message : String(error) })}`);
  if (process.env['BAGATELLE_DEBUG'] && error instanceof Error) terminal.say(error.stack ?? '');
}

/** Runs the program; answers its exit status. What goes wrong is said in one line, never as a stack. */
export async function run(args: readonly string[]): Promise<number> {
  const terminal = processTerminal();
  // a reader that has seen enough (`bagatelle find | head`) is no failure
  process.stdout.on('error', (error: NodeJS.ErrnoException) => process.exit(error.code === 'EPIPE' ? 0 : 1));
  process.on('uncaughtException', (error) => {
    sayFault(error, terminal);
    process.exit(1);
  });
  try {
    return await main(args, terminal);
  } catch (thrown) {
    const error = diskTrouble(thrown);
    if (error instanceof Refused) terminal.say(`bagatelle: ${refusalText(error.refusal)}`);
    else sayFault(error, terminal);
    return 1;
  }
}
