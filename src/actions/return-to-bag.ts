import { putIn } from '#core/stock/moves.ts';
import { done, refuse } from '#core/stock/refusal.ts';
import { findBag } from '#db/bags.ts';
import { postMovements } from '#db/ledger.ts';
import { action, type Action } from './action.ts';
import { balanceOf } from './balances.ts';
import { begin } from './begin.ts';
import { quantityTrouble } from './checks.ts';
import type { ReturnInput, ReturnResult } from './inputs.ts';

/** Puts pieces back into a bag. */
export const returnToBag: Action<ReturnInput, ReturnResult> = action('returnToBag', async (tx, clock, who, input) => {
  const trouble = quantityTrouble('quantity', input.quantity);
  if (trouble) return { ok: false, refusal: trouble };
  const bag = await findBag(tx, input.bag);
  if (!bag) return refuse('no-such-bag', { bag: input.bag });
  const begun = await begin(tx, clock, who, input, { kind: 'returned' });
  if (!begun.ok) return begun;
  await postMovements(tx, input.id, begun.value, [{ bag: bag.id, ...putIn(input.quantity) }]);
  const balance = balanceOf({ ...bag, onHand: bag.onHand + input.quantity, sure: bag.sure + input.quantity });
  return done({ act: input.id, repeat: false, change: begun.value, warnings: [], ...balance, quantity: input.quantity });
});
