import type { Refusal, RefusalCode } from '#core/stock/refusal.ts';

/** Carries a refusal out of a transaction, so that all of it is rolled back; faces show its sentence. */
export class Refused extends Error {
  readonly refusal: Refusal;

  constructor(code: RefusalCode, args: Refusal['args'] = {}) {
    super(`refused: ${code} ${JSON.stringify(args)}`);
    this.refusal = { code, args };
  }
}
