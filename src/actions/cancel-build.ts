import { done } from '#core/stock/refusal.ts';
import { setBuild } from '#db/builds.ts';
import { postMovements } from '#db/ledger.ts';
import { action, type Action } from './action.ts';
import { balancesOf } from './balances.ts';
import { begin } from './begin.ts';
import type { CancelBuildInput, CancelBuildResult } from './inputs.ts';
import { allOut, checkReturns, markReturned, openKit, returnMovements, settle, type KitMemo } from './kit-takes.ts';

/** Gives a build up: its promises are let go, and what was picked goes back, all of it unless less is said. */
export const cancelBuild: Action<CancelBuildInput, CancelBuildResult> = action('cancelBuild', async (tx, clock, who, input) => {
  const kit = await openKit(tx, input.build, ['planned', 'reserved', 'picking']);
  if (!kit.ok) return kit;
  const returns = input.returns ? await checkReturns(tx, kit.value, input.returns) : done(allOut(kit.value));
  if (!returns.ok) return returns;
  const { build } = kit.value;
  const takes = returns.value.map(({ take, quantity }) => ({ take: take.id, picked: 0, returned: quantity, state: take.state }));
  const memo: KitMemo = { build: build.id, state: build.state, made: build.made, takes };
  const begun = await begin(tx, clock, who, input, { kind: 'cancelled', memo });
  if (!begun.ok) return begun;
  await postMovements(tx, input.id, begun.value, returnMovements(returns.value));
  await markReturned(tx, returns.value);
  await setBuild(tx, build.id, 'cancelled', null);
  const freed = await settle(tx, begun.value, build.id);
  const returned = returns.value.reduce((sum, one) => sum + one.quantity, 0);
  const bags = await balancesOf(tx, [...freed, ...returns.value.map((one) => one.take.bag)]);
  return done({ act: input.id, repeat: false, change: begun.value, warnings: [], build: build.id, returned, bags });
});
