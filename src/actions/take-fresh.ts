import type { Outcome } from '#core/stock/refusal.ts';

const TRIES = 4;

/** Plans and takes the plan; where the stock changed between the two, it plans again, three times, and then says what changed. */
export async function takeFresh<T>(planAndTake: () => Promise<Outcome<T>>): Promise<Outcome<T>> {
  for (let left = TRIES - 1; ; left -= 1) {
    const outcome = await planAndTake();
    if (outcome.ok || outcome.refusal.code !== 'plan-stale' || left === 0) return outcome;
  }
}
