import type { FactKey } from '#core/part/part.ts';
import type { Because, BecauseCode, Verdict } from './verdict.ts';

/** One finding about a fact: the best verdict that it leaves open, and why. */
export interface Finding {
  readonly level: Verdict;
  readonly because: Because;
  readonly fact: FactKey | null;
}

export function finding(level: Verdict, code: BecauseCode, args: Because['args'] = {}, fact: FactKey | null = null): Finding {
  return { level, because: { code, args }, fact };
}
