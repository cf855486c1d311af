import { done, type Outcome } from '#core/stock/refusal.ts';
import { findAct, sealAct } from '#db/acts.ts';
import { takeChange } from '#db/change.ts';
import type { Lab, Tx } from '#db/database.ts';
import { Refused } from '#db/refused.ts';
import type { Action, Clock, Done, Who } from './action.ts';
import { bodyHash } from './body-hash.ts';
import type { ActInput } from './inputs.ts';
import type { Verb } from './verbs.ts';

/**
 * Does what a person does: one transaction, once for an id. The same id and body again answers the same result with `repeat`;
 * the same id with another body, or for another verb, is refused, and a refusal leaves nothing behind.
 */
export async function perform<Input extends ActInput, Result extends Done>(
  lab: Lab,
  action: Action<Input, Result>,
  clock: Clock,
  who: Who,
  asked: Input,
): Promise<Outcome<Result>> {
  const input = withPlainId(asked);
  const hash = bodyHash(action.verb, input);
  action.ready?.(input);
  return refusals(() =>
    lab.transact(async (tx) => {
      const known = await resultOf<Result>(tx, input.id, hash);
      if (known) return done(known);
      const outcome = await action(tx, clock, who, input);
      if (!outcome.ok) throw new Refused(outcome.refusal.code, outcome.refusal.args);
      await sealAct(tx, input.id, hash, outcome.value);
      await takeChange(tx);
      return outcome;
    }),
  );
}

/** What the same verb and body did before under this id; null where nothing did. For a verb that has much to find out first. */
export function repeatOf<Result extends Done>(lab: Lab, verb: Verb, asked: ActInput): Promise<Outcome<Result | null>> {
  const input = withPlainId(asked);
  return refusals(async () => done(await lab.read((tx) => resultOf<Result>(tx, input.id, bodyHash(verb, input)))));
}

/** A UUID is the same in capitals (RFC 9562, 4). */
function withPlainId<Input extends ActInput>(input: Input): Input {
  return { ...input, id: input.id.toLowerCase() };
}

async function resultOf<Result extends Done>(tx: Tx, id: string, hash: string): Promise<Result | null> {
  const known = await findAct(tx, id);
  if (!known) return null;
  if (known.bodyHash !== hash) throw new Refused('id-reused', { id });
  return { ...(known.result as Result), repeat: true }; // as: the same verb and body sealed this result
}

async function refusals<T>(work: () => Promise<Outcome<T>>): Promise<Outcome<T>> {
  try {
    return await work();
  } catch (error) {
    if (error instanceof Refused) return { ok: false, refusal: error.refusal };
    throw error;
  }
}
