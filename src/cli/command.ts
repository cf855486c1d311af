import { refusalText } from '#say/en/refusals.ts';
import type { Refusal } from '#core/stock/refusal.ts';
import type { Terminal } from './terminal.ts';

/** One option of a command: a switch, or a word that follows it. */
export interface Option {
  readonly type: 'switch' | 'word';
  readonly say: string;
  /** what stands for the word in the help: `N`, `FILE` */
  readonly value?: string;
}

export type Options = Readonly<Record<string, Option>>;
export type Values<O extends Options> = { readonly [K in keyof O]?: O[K]['type'] extends 'switch' ? true : string };

/** How a command ended: exit status 0, 1 (could not) or 2 (wrong usage). */
export type Ending =
  | { readonly status: 0 }
  | { readonly status: 1; readonly refusal: Refusal | null }
  | { readonly status: 2; readonly wrong: string };

export interface Call<O extends Options> {
  readonly words: readonly string[];
  readonly options: Values<O>;
  readonly terminal: Terminal;
}

/** A command of the program: what its help says, and what it does. */
export interface Command<O extends Options = Options> {
  readonly name: string;
  readonly summary: string;
  readonly usage: string;
  readonly example: string;
  readonly options: O;
  run(call: Call<O>): Promise<Ending>;
}

export function defineCommand<const O extends Options>(command: Command<O>): Command<O> {
  return command;
}

export const ENDED: Ending = { status: 0 };

/** The command could not: its refusal is said on stderr. Null where the command has said it itself. A column that is not there is wrong usage. */
export function refused(refusal: Refusal | null): Ending {
  if (refusal?.code === 'no-such-column') return wrongUsage(refusalText(refusal));
  return { status: 1, refusal };
}

/** The command was called in a way it does not know: `wrong` is the sentence that says so. */
export function wrongUsage(wrong: string): Ending {
  return { status: 2, wrong };
}

export const JSON_OPTION = { type: 'switch', say: 'machine-readable: JSON Lines' } as const;
