import { parseArgs } from 'node:util';
import type { Options, Values } from './command.ts';
import { nearestName } from './nearest-name.ts';
import { cliText } from '#say/en/cli.ts';

export type Arguments<O extends Options> =
  | { readonly ok: true; readonly words: string[]; readonly options: Values<O>; readonly help: boolean }
  | { readonly ok: false; readonly wrong: string };

const NEGATIVE = /^-[\d.]/;

/**
 * Reads the arguments of a command. A negative number is a word, so that its refusal can say what is wrong with it.
 *
 * `['12', '3', '--json']` -> words `12`, `3`, option `json`; `['--jsno']` -> "unknown option --jsno, did you mean --json?"
 */
export function readArguments<O extends Options>(args: readonly string[], options: O): Arguments<O> {
  const config = Object.fromEntries(
    Object.entries(options).map(([name, option]) => [name, { type: option.type === 'switch' ? 'boolean' : 'string' } as const]),
  );
  const { tokens } = parseArgs({
    args: [...args],
    options: { ...config, help: { type: 'boolean', short: 'h' } },
    strict: false,
    allowPositionals: true,
    tokens: true,
  });
  const words = new Map<number, string>();
  const values: Record<string, string | true> = {};
  for (const token of tokens) {
    if (token.kind === 'positional') words.set(token.index, token.value);
    if (token.kind !== 'option') continue;
    if (NEGATIVE.test(args[token.index] ?? '')) {
      words.set(token.index, args[token.index] ?? '');
      continue;
    }
    const wrong = wrongOption(token.name, token.rawName, token.value, options);
    if (wrong) return { ok: false, wrong };
    values[token.name] = token.value ?? true;
  }
  const { help, ...rest } = values;
  // as: each name was checked against `options` above, switches hold true and words their text
  return { ok: true, words: [...words.values()], options: rest as Values<O>, help: help !== undefined };
}

function wrongOption(name: string, raw: string, value: string | undefined, options: Options): string | null {
  if (name === 'help') return null;
  const option = Object.hasOwn(options, name) ? options[name] : undefined;
  if (!option) {
    const near = nearestName(name, [...Object.keys(options), 'help']);
    return cliText('unknown-option', { option: raw, near: near ? `--${near}` : '' });
  }
  if (option.type === 'switch' && value !== undefined) return cliText('option-takes-nothing', { option: raw, value });
  if (option.type === 'word' && (value === undefined || value.startsWith('--'))) {
    return cliText('option-wants-value', { option: raw, value: option.value ?? 'WORD' });
  }
  return null;
}
