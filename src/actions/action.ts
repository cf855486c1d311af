import type { Outcome } from '#core/stock/refusal.ts';
import type { Warning } from '#core/stock/warning.ts';
import type { Tx } from '#db/database.ts';
import type { Verb } from './verbs.ts';

export type { Warning } from '#core/stock/warning.ts';

/** The one source of time for actions; tests set it. Instants as UTC ISO strings. */
export interface Clock {
  now(): string;
}

/** Who acts, and on what device; both are kept with the act. */
export interface Who {
  readonly name: string;
  readonly device: string | null;
}

type Run<Input, Result> = (tx: Tx, clock: Clock, who: Who, input: Input) => Promise<Outcome<Result>>;

/** Every verb that writes has this shape; it runs inside the caller's transaction and touches nothing else. */
export interface Action<Input, Result> extends Run<Input, Result> {
  readonly verb: Verb;
  /** long thinking about the input alone, done before the transaction, so that others can write meanwhile */
  readonly ready?: (input: Input) => void;
}

/** An action under its written verb. */
export function action<Input, Result>(
  verb: Verb,
  run: Run<Input, Result>,
  ready?: (input: Input) => void,
): Action<Input, Result> {
  return Object.assign(run, { verb, ...(ready && { ready }) });
}

/** What every writing verb answers with: the act, and whether this call was a repeat of it. */
export interface Done {
  readonly act: string;
  readonly repeat: boolean;
  readonly change: number;
  readonly warnings: readonly Warning[];
}
