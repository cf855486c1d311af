import type { Command } from './command.ts';
import { widthOf } from './table.ts';
import { cliText } from '#say/en/cli.ts';

function pairs(entries: readonly (readonly [string, string])[]): string[] {
  const widest = Math.max(...entries.map(([left]) => widthOf(left)));
  return entries.map(([left, right]) => `  ${left}${' '.repeat(widest - widthOf(left))}  ${right}`);
}

/** The help of one command: what it does, how it is called, an example. */
export function commandHelp(command: Command): string {
  const options = Object.entries(command.options).map(
    ([name, option]) => [option.type === 'word' ? `--${name} ${option.value ?? 'WORD'}` : `--${name}`, option.say] as const,
  );
  return [
    command.summary,
    '',
    `${cliText('head-usage')}:`,
    ...command.usage.split('\n').map((line) => `  ${line}`),
    '',
    `${cliText('head-options')}:`,
    ...pairs([...options, ['--help', cliText('help-option')]]),
    '',
    `${cliText('head-example')}:`,
    ...command.example.split('\n').map((line) => `  ${line}`),
  ].join('\n');
}

/** The list of all commands, in the order of the job. */
export function programHelp(commands: readonly Command[], home: string): string {
  return [
    cliText('intro'),
    '',
    ...pairs(commands.map(({ name, summary }) => [name, summary] as const)),
    '',
    cliText('help-more'),
    cliText('help-ends'),
    cliText('help-home', { home }),
  ].join('\n');
}
