import { countTo } from '#core/stock/moves.ts';
import { done, refuse } from '#core/stock/refusal.ts';
import { findBag, type HeldBag } from '#db/bags.ts';
import type { Tx } from '#db/database.ts';
import { balanceAt, countsAfter, lastSeq, postBagChanges, postMovements, type NewBagChange } from '#db/ledger.ts';
import { action, type Action, type Warning, type Who } from './action.ts';
import { balanceOf, brokenPromises } from './balances.ts';
import { begin } from './begin.ts';
import { quantityTrouble, rangeTrouble } from './checks.ts';
import type { CountInput, CountResult } from './inputs.ts';

/**
 * Says how many a bag holds, as seen. What moved since the screen was read (`sawSeq`) stays moved. All that was counted is sure;
 * a counted bag leaves the count list and is not astray any more. The same count told again moves nothing, with a warning.
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

  const again = await isCounted(tx, bag, who, { saw, total: input.total });
  const { contradicts, ...move } = again ? NOTHING : countTo(bag, await balanceAt(tx, bag.id, saw), input.total);
  await postMovements(tx, input.id, begun.value, [{ bag: bag.id, ...move, saw }]);
  if (!again) await postBagChanges(tx, input.id, begun.value, settled(bag, contradicts));
  const now = { ...bag, onHand: bag.onHand + move.delta, sure: bag.sure + move.sureDelta };
  const warnings: Warning[] = await brokenPromises(tx, [now]);
  if (again) warnings.push({ code: 'counted-already', args: { bag: bag.number, total: input.total } });
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

const NOTHING = { delta: 0, sureDelta: 0, contradicts: false };

/** The same person said the same total after the screen was read: the same count, told twice (a lost answer, a second press). */
async function isCounted(
  tx: Tx,
  bag: HeldBag,
  who: Who,
  { saw, total }: { readonly saw: number; readonly total: number },
): Promise<boolean> {
  const counts = (await countsAfter(tx, bag.id, saw, who.name)) as readonly CountResult[]; // as: this action sealed them
  return counts.some((one) => one.total === total);
}

function settled(bag: HeldBag, contradicts: boolean): NewBagChange[] {
  const toCount: NewBagChange = {
    bag: bag.id,
    field: 'to_count',
    before: bag.toCount ? '1' : '0',
    after: contradicts ? '1' : '0',
  };
  return bag.state === 'astray' ? [toCount, { bag: bag.id, field: 'state', before: 'astray', after: 'sound' }] : [toCount];
}
