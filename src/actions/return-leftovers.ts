import { done, refuse } from '#core/stock/refusal.ts';
import { postMovements } from '#db/ledger.ts';
import { action, type Action } from './action.ts';
import { balancesOf } from './balances.ts';
import { begin } from './begin.ts';
import type { ReturnLeftoversInput, ReturnLeftoversResult } from './inputs.ts';
import { checkReturns, markReturned, openKit, returnMovements, type KitMemo } from './kit-takes.ts';

/** What comes back from a kit goes into the bags that it came from, at most what was picked. */
export const returnLeftovers: Action<ReturnLeftoversInput, ReturnLeftoversResult> = action(
  'returnLeftovers',
  async (tx, clock, who, input) => {
    const kit = await openKit(tx, input.build, ['picking', 'built']);
    if (!kit.ok) return kit;
    const returns = await checkReturns(tx, kit.value, input.returns);
    if (!returns.ok) return returns;
    if (returns.value.length === 0) return refuse('nothing-to-do');
    const { build } = kit.value;
    const takes = returns.value.map(({ take, quantity }) => ({
      take: take.id,
      picked: 0,
      returned: quantity,
      state: take.state,
    }));
    const memo: KitMemo = { build: build.id, state: build.state, made: build.made, takes };
    const begun = await begin(tx, clock, who, input, { kind: 'leftovers-returned', memo });
    if (!begun.ok) return begun;
    await postMovements(tx, input.id, begun.value, returnMovements(returns.value));
    await markReturned(tx, returns.value);
    const returned = returns.value.reduce((sum, one) => sum + one.quantity, 0);
    const bags = await balancesOf(
      tx,
      returns.value.map((one) => one.take.bag),
    );
    return done({ act: input.id, repeat: false, change: begun.value, warnings: [], build: build.id, returned, bags });
  },
);
