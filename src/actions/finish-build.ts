import { done, refuse } from '#core/stock/refusal.ts';
import { linesOf, setBuild } from '#db/builds.ts';
import { bagsById } from '#db/bags.ts';
import type { Tx } from '#db/database.ts';
import { action, type Action, type Warning } from './action.ts';
import { begin } from './begin.ts';
import { rangeTrouble } from './checks.ts';
import type { FinishBuildInput, FinishBuildResult } from './inputs.ts';
import { openKit, settle, type KitMemo, type OpenKit } from './kit-takes.ts';

/**
 * The boards are soldered: what was still promised to the build is let go, and what is left over may come back. Where lines are
 * short, nobody but the person at the bench knows how many boards were made, so that is asked.
 */
export const finishBuild: Action<FinishBuildInput, FinishBuildResult> = action('finishBuild', async (tx, clock, who, input) => {
  const kit = await openKit(tx, input.build, ['reserved', 'picking']);
  if (!kit.ok) return kit;
  const { build } = kit.value;
  const made = input.made ?? build.boards;
  const trouble = rangeTrouble('made', made, 0, build.boards);
  if (trouble) return { ok: false, refusal: trouble };
  const open = input.made === undefined ? await openStops(tx, kit.value) : null;
  if (open) return refuse('takes-open', { build: build.name, boards: build.boards, ...open });
  const lines = await shortLines(tx, kit.value, made);
  if (lines > 0 && input.made === undefined) return refuse('made-unknown', { build: build.name, boards: build.boards, lines });
  const memo: KitMemo = { build: build.id, state: build.state, made: build.made, takes: [] };
  const begun = await begin(tx, clock, who, input, { kind: 'built', memo });
  if (!begun.ok) return begun;
  await setBuild(tx, build.id, 'built', made);
  await settle(tx, begun.value, build.id);
  const warnings: Warning[] = lines > 0 ? [{ code: 'short-lines', args: { made, lines } }] : [];
  return done({ act: input.id, repeat: false, change: begun.value, warnings, build: build.id, made });
});

/** Stops that are still to be picked, and their bags: the first few; null where there are none. */
async function openStops(tx: Tx, { takes }: OpenKit): Promise<{ open: number; bags: string } | null> {
  const open = [...takes.values()].filter(({ state, planned, picked }) => state === 'open' && picked < planned);
  const known = await bagsById(
    tx,
    open.map(({ bag }) => bag),
  );
  const numbers = [...new Set(open.map(({ bag }) => known.get(bag)?.number ?? 0))];
  const bags = `${numbers.slice(0, SOME_BAGS).join(', ')}${numbers.length > SOME_BAGS ? ' …' : ''}`;
  return open.length > 0 ? { open: open.length, bags } : null;
}

const SOME_BAGS = 8;

/** Lines that did not get the pieces for so many boards. */
async function shortLines(tx: Tx, { build, takes }: OpenKit, made: number): Promise<number> {
  const picked = new Map<string, number>();
  for (const take of takes.values()) picked.set(take.line, (picked.get(take.line) ?? 0) + take.picked);
  const lines = await linesOf(tx, build.id);
  return lines.filter(({ id, need }) => (picked.get(id) ?? 0) * build.boards < need * made).length;
}
