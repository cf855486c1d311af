import { done, type Outcome } from '#core/stock/refusal.ts';
import { findAct, sealAct } from '#db/acts.ts';
import { takeChange } from '#db/change.ts';
import type { Lab } from '#db/database.ts';
import { Refused } from '#db/refused.ts';
import type { Action, Clock, Done, Who } from './action.ts';
import { bodyHash } from './body-hash.ts';
import type { ActInput } from './inputs.ts';

/**
 * Does what a person does: one transaction, once for an id. The same id and body again answers the same result with `repeat`;
 * the same id with another body (or another verb: the action's own name) is refused, and a refusal leaves nothing behind.
 */
export async function perform<Input extends ActInput, Result extends Done>(
  lab: Lab,
  action: Action<Input, Result>,
  clock: Clock,
  who: Who,
  input: Input,
): Promise<Outcome<Result>> {
  const hash = bodyHash(action.name, input);
  try {
    return await lab.transact(async (tx) => {
      const known = await findAct(tx, input.id);
      if (known && known.bodyHash !== hash) throw new Refused('id-reused', { id: input.id });
      if (known) return done({ ...(known.result as Result), repeat: true }); // as: the same verb and body sealed this result
      const outcome = await action(tx, clock, who, input);
      if (!outcome.ok) throw new Refused(outcome.refusal.code, outcome.refusal.args);
      await sealAct(tx, input.id, hash, outcome.value);
      await takeChange(tx);
      return outcome;
    });
  } catch (error) {
    if (error instanceof Refused) return { ok: false, refusal: error.refusal };
    throw error;
  }
}
