/** When to stop. Nodes come first, so that the same model stops at the same place on a slow machine; seconds are the last resort. */
export interface Limits {
  readonly nodes: number;
  readonly seconds: number;
  /** gives up at once and ends the worker */
  readonly signal?: AbortSignal;
  /** a known solution to begin with: the answer is never worse than it */
  readonly start?: readonly number[];
}

export const USUAL_LIMITS: Limits = { nodes: 20_000, seconds: 60 };

/** The solver was stopped, by its limits or by who asked, before it had any answer: nobody's fault, and the caller has a way without it. */
export class SolveStopped extends Error {}
