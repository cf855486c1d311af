import type { Action, Clock, Done, Who } from '#actions/action.ts';
import { count } from '#actions/count.ts';
import type { ActInput, BagBalance } from '#actions/inputs.ts';
import { perform } from '#actions/perform.ts';
import { pick } from '#actions/pick.ts';
import { receive } from '#actions/receive.ts';
import { returnToBag } from '#actions/return-to-bag.ts';
import type { Movement, MovementRequest } from '#api/movements.ts';
import type { Outcome } from '#core/stock/refusal.ts';
import type { Lab } from '#db/database.ts';
import { warned } from './warned.ts';

interface Moved {
  readonly repeat: boolean;
  readonly movement: Movement;
}

/** Books one posted movement by the action of its kind. */
export async function moveBag(lab: Lab, clock: Clock, who: Who, request: MovementRequest): Promise<Outcome<Moved>> {
  const act = <I extends ActInput, R extends Done>(action: Action<I, R>, input: I): Promise<Outcome<R>> =>
    perform(lab, action, clock, who, input);
  switch (request.kind) {
    case 'picked': {
      const { kind, ...input } = request;
      return moved(kind, await act(pick, input), (done) => ({ ...done, delta: done.corrected - done.quantity }));
    }
    case 'returned': {
      const { kind, ...input } = request;
      return moved(kind, await act(returnToBag, input), (done) => ({ ...done, delta: done.quantity }));
    }
    case 'received': {
      const { kind, bag, quantity, ...told } = request;
      const outcome = await act(receive, { ...told, items: [{ bag, quantity }] });
      return moved(kind, outcome, ({ bags: [balance] }) => ({
        ...(balance ?? { bag, onHand: quantity, sure: quantity, free: quantity }),
        quantity,
        delta: quantity,
      }));
    }
    default: {
      const { kind, counted, quantity, ...input } = request;
      return moved(kind, await act(count, { ...input, total: counted ?? quantity ?? 0 }), (done) => ({
        ...done,
        quantity: done.total,
        counted: done.total,
        delta: done.difference,
      }));
    }
  }
}

type Told = BagBalance & Pick<Movement, 'quantity' | 'delta' | 'counted'>;

function moved<R extends Done>(kind: Movement['kind'], outcome: Outcome<R>, tell: (done: R) => Told): Outcome<Moved> {
  if (!outcome.ok) return outcome;
  const { act: id, change, warnings, repeat } = outcome.value;
  const { bag, quantity, delta, onHand, sure, free, counted } = tell(outcome.value);
  const told = { bag, quantity, ...(counted !== undefined && { counted }), delta, onHand, sure, free };
  return { ok: true, value: { repeat, movement: { id, kind, ...told, warnings: warnings.map(warned), change } } };
}
