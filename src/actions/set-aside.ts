import { done, refuse } from '#core/stock/refusal.ts';
import { findBag } from '#db/bags.ts';
import { postBagChanges } from '#db/ledger.ts';
import { action, type Action } from './action.ts';
import { balanceOf } from './balances.ts';
import { begin } from './begin.ts';
import type { SetAsideInput, SetAsideResult } from './inputs.ts';

/** Says what became of a bag: astray (looked for and not found), found again (sound), salvaged, mixed or expired. */
export const setAside: Action<SetAsideInput, SetAsideResult> = action('setAside', async (tx, clock, who, input) => {
  const bag = await findBag(tx, input.bag);
  if (!bag) return refuse('no-such-bag', { bag: input.bag });
  if (bag.state === input.state) return refuse('nothing-to-do');
  const begun = await begin(tx, clock, who, input, { kind: 'set-aside' });
  if (!begun.ok) return begun;
  await postBagChanges(tx, input.id, begun.value, [{ bag: bag.id, field: 'state', before: bag.state, after: input.state }]);
  return done({
    act: input.id,
    repeat: false,
    change: begun.value,
    warnings: [],
    ...balanceOf(bag),
    state: input.state,
    before: bag.state,
  });
});
