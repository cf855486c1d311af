import { done, refuse, type Outcome } from '#core/stock/refusal.ts';
import { startAct } from '#db/acts.ts';
import type { Tx } from '#db/database.ts';
import type { Clock, Who } from './action.ts';
import { idTrouble, nearNow, utcInstant } from './checks.ts';
import type { ActInput, ActKind } from './inputs.ts';

export interface Beginning {
  readonly kind: ActKind;
  readonly undoes?: string;
  readonly note?: string;
  /** what an undo must know beyond movements and bag changes */
  readonly memo?: unknown;
}

/** Enters the act that an action is about; answers the change number that its transaction will take. */
export async function begin(tx: Tx, clock: Clock, who: Who, input: ActInput, act: Beginning): Promise<Outcome<number>> {
  const trouble = idTrouble(input.id);
  if (trouble) return { ok: false, refusal: trouble };
  const recordedAt = clock.now();
  const happened = input.happenedAt === undefined ? recordedAt : utcInstant(input.happenedAt);
  if (happened === null || !nearNow(happened, recordedAt)) {
    const expected = happened === null ? 'instant' : 'near-now';
    return refuse('not-valid', { field: 'happenedAt', received: String(input.happenedAt), expected });
  }
  const change = await startAct(tx, {
    id: input.id,
    kind: act.kind,
    who: who.name,
    device: who.device,
    happenedAt: happened,
    recordedAt,
    undoes: act.undoes ?? null,
    note: input.note ?? act.note ?? null,
    memo: act.memo ?? null,
  });
  return done(change);
}
