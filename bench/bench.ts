/** One line of the table: what was measured, ours beside the other, and whether the target holds. */
export interface Measured {
  readonly what: string;
  readonly ours: string;
  readonly other: string;
  readonly ratio: string;
  readonly target: string;
  readonly ok: boolean;
}

/** A bench checks that what it measures is right before it says how fast it is. */
export interface Bench {
  readonly name: string;
  readonly about: string;
  run(tell: (progress: string) => void): Promise<Measured[]>;
}

const TRIES = 3;

/** Milliseconds of each call, the quickest of three so that a busy machine counts less, in order of size. */
export function timed<T>(inputs: readonly T[], call: (input: T) => unknown): number[] {
  const times = inputs.map((input) => {
    let quickest = Infinity;
    for (let at = 0; at < TRIES; at += 1) {
      const start = performance.now();
      call(input);
      quickest = Math.min(quickest, performance.now() - start);
    }
    return quickest;
  });
  return times.toSorted((a, b) => a - b);
}

/** The time below which a share of the calls stayed. */
export function quantile(sorted: readonly number[], share: number): number {
  return sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))] ?? Number.NaN;
}

export function milliseconds(time: number): string {
  return `${time >= 10 ? time.toFixed(0) : time >= 1 ? time.toFixed(1) : time.toFixed(2)} ms`;
}

/** p50 and p99 in one cell. */
export function spread(sorted: readonly number[]): string {
  return `${milliseconds(quantile(sorted, 0.5))} / ${milliseconds(quantile(sorted, 0.99))}`;
}

/** Throws with what was expected: a bench that measures a wrong answer measures nothing. */
export function expect(holds: boolean, what: string): void {
  if (!holds) throw new Error(`bench is wrong: ${what}`);
}
