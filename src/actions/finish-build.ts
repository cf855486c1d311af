import { done } from '#core/stock/refusal.ts';
import { setBuild } from '#db/builds.ts';
import { action, type Action } from './action.ts';
import { begin } from './begin.ts';
import { rangeTrouble } from './checks.ts';
import type { FinishBuildInput, FinishBuildResult } from './inputs.ts';
import { openKit, settle, type KitMemo } from './kit-takes.ts';

/** The boards are soldered: what was still promised to the build is let go, and what is left over may come back. */
export const finishBuild: Action<FinishBuildInput, FinishBuildResult> = action('finishBuild', async (tx, clock, who, input) => {
  const kit = await openKit(tx, input.build, ['reserved', 'picking']);
  if (!kit.ok) return kit;
  const { build } = kit.value;
  const made = input.made ?? build.boards;
  const trouble = rangeTrouble('made', made, 0, build.boards);
  if (trouble) return { ok: false, refusal: trouble };
  const memo: KitMemo = { build: build.id, state: build.state, made: build.made, takes: [] };
  const begun = await begin(tx, clock, who, input, { kind: 'built', memo });
  if (!begun.ok) return begun;
  await setBuild(tx, build.id, 'built', made);
  await settle(tx, begun.value, build.id);
  return done({ act: input.id, repeat: false, change: begun.value, warnings: [], build: build.id, made });
});
