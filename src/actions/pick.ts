import { apply, isSlip, raiseTo, takeOut } from '#core/stock/moves.ts';
import { done, refuse } from '#core/stock/refusal.ts';
import { findBag } from '#db/bags.ts';
import { postBagChanges, postMovements } from '#db/ledger.ts';
import { action, type Action, type Warning } from './action.ts';
import { balanceOf, brokenPromises } from './balances.ts';
import { begin } from './begin.ts';
import { quantityTrouble } from './checks.ts';
import type { PickInput, PickResult } from './inputs.ts';

/**
 * Takes pieces out of a bag. More than is on hand is refused with what is on hand; `inHand` says that the hand is right and the
 * record wrong, books the pick and the correction, and puts the bag on the count list; far more than the record says wants a count. More than is free is done with a warning.
 */
export const pick: Action<PickInput, PickResult> = action('pick', async (tx, clock, who, input) => {
  const trouble = quantityTrouble('quantity', input.quantity);
  if (trouble) return { ok: false, refusal: trouble };
  const bag = await findBag(tx, input.bag);
  if (!bag) return refuse('no-such-bag', { bag: input.bag });
  const missing = Math.max(0, input.quantity - bag.onHand);
  if (missing > 0 && !input.inHand) return refuse('not-enough', { bag: bag.number, onHand: bag.onHand, asked: input.quantity });
  if (isSlip(bag.onHand, input.quantity))
    return refuse('in-hand-large', { bag: bag.number, onHand: bag.onHand, asked: input.quantity });

  const begun = await begin(tx, clock, who, input, { kind: 'picked' });
  if (!begun.ok) return begun;
  const change = begun.value;
  const raise = missing > 0 ? [raiseTo(bag, input.quantity)] : [];
  const held = raise.reduce(apply, { onHand: bag.onHand, sure: bag.sure });
  const moves = [...raise, takeOut(held, input.quantity)];
  await postMovements(
    tx,
    input.id,
    change,
    moves.map((move) => ({ bag: bag.id, ...move })),
  );
  const now = { ...bag, ...moves.reduce(apply, { onHand: bag.onHand, sure: bag.sure }) };
  const warnings: Warning[] = await brokenPromises(tx, [now]);
  if (missing > 0) {
    await postBagChanges(tx, input.id, change, [{ bag: bag.id, field: 'to_count', before: bag.toCount ? '1' : '0', after: '1' }]);
    warnings.push({ code: 'on-count-list', args: { bag: bag.number } });
  }
  return done({
    act: input.id,
    repeat: false,
    change,
    warnings,
    ...balanceOf(now),
    quantity: input.quantity,
    corrected: missing,
  });
});
