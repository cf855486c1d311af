import { done, refuse } from '#core/stock/refusal.ts';
import { postMovements } from '#db/ledger.ts';
import { action, type Action } from './action.ts';
import { balancesOf } from './balances.ts';
import { begin } from './begin.ts';
import type { ReturnLeftoversInput, ReturnLeftoversResult } from './inputs.ts';
import { checkReturns, markReturned, openKit, returnMovements, type KitMemo } from './kit-takes.ts';

/**
 * What comes back from a kit goes into the bags that it came from, at most what was picked. Once its boards are soldered, a 0 says
 * that what should be left in that cell was used up or lost: nothing moves, and it is not expected any more.
 */
export const returnLeftovers: Action<ReturnLeftoversInput, ReturnLeftoversResult> = action(
  'returnLeftovers',
  async (tx, clock, who, input) => {
    const kit = await openKit(tx, input.build, ['picking', 'built']);
    if (!kit.ok) return kit;
    const checked = await checkReturns(tx, kit.value, input.returns);
    if (!checked.ok) return checked;
    const { build } = kit.value;
    const returns = checked.value.filter(({ quantity }) => quantity > 0 || build.state === 'built');
    if (returns.length === 0) return refuse('nothing-to-do');
    const takes = returns.map(({ take, quantity }) => ({
      take: take.id,
      picked: 0,
      returned: quantity,
      state: take.state,
    }));
    const memo: KitMemo = { build: build.id, state: build.state, made: build.made, takes };
    const begun = await begin(tx, clock, who, input, { kind: 'leftovers-returned', memo });
    if (!begun.ok) return begun;
    await postMovements(tx, input.id, begun.value, returnMovements(returns));
    await markReturned(tx, returns);
    const returned = returns.reduce((sum, one) => sum + one.quantity, 0);
    const bags = await balancesOf(
      tx,
      returns.map((one) => one.take.bag),
    );
    return done({ act: input.id, repeat: false, change: begun.value, warnings: [], build: build.id, returned, bags });
  },
);
