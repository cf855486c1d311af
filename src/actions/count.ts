import { countTo } from '#core/stock/moves.ts';
import { done, refuse } from '#core/stock/refusal.ts';
import { findBag, type HeldBag } from '#db/bags.ts';
import { balanceAt, lastSeq, postBagChanges, postMovements, type NewBagChange } from '#db/ledger.ts';
import { action, type Action, type Warning } from './action.ts';
import { balanceOf, brokenPromises } from './balances.ts';
import { begin } from './begin.ts';
import { quantityTrouble, rangeTrouble } from './checks.ts';
import type { CountInput, CountResult } from './inputs.ts';

/**
 * Says how many a bag holds, as seen. What moved since the screen was read (`sawSeq`) stays moved. All that was counted is sure;
 * a counted bag leaves the count list and is not astray any more.
 */
export const count: Action<CountInput, CountResult> = action('count', async (tx, clock, who, input) => {
  const newest = await lastSeq(tx);
  const saw = input.sawSeq ?? newest;
  const trouble = quantityTrouble('total', input.total, 0) ?? rangeTrouble('sawSeq', saw, 0, newest);
  if (trouble) return { ok: false, refusal: trouble };
  const bag = await findBag(tx, input.bag);
  if (!bag) return refuse('no-such-bag', { bag: input.bag });
  const begun = await begin(tx, clock, who, input, { kind: 'counted' });
  if (!begun.ok) return begun;

  const { contradicts, ...move } = countTo(bag, await balanceAt(tx, bag.id, saw), input.total);
  await postMovements(tx, input.id, begun.value, [{ bag: bag.id, ...move, saw }]);
  await postBagChanges(tx, input.id, begun.value, settled(bag, contradicts));
  const now = { ...bag, onHand: bag.onHand + move.delta, sure: bag.sure + move.sureDelta };
  const warnings: Warning[] = await brokenPromises(tx, [now]);
  if (contradicts) warnings.push({ code: 'on-count-list', args: { bag: bag.number } });
  return done({
    act: input.id,
    repeat: false,
    change: begun.value,
    warnings,
    ...balanceOf(now),
    total: input.total,
    difference: move.delta,
  });
});

function settled(bag: HeldBag, contradicts: boolean): NewBagChange[] {
  const toCount: NewBagChange = {
    bag: bag.id,
    field: 'to_count',
    before: bag.toCount ? '1' : '0',
    after: contradicts ? '1' : '0',
  };
  return bag.state === 'astray' ? [toCount, { bag: bag.id, field: 'state', before: 'astray', after: 'sound' }] : [toCount];
}
