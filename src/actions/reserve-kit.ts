import { randomUUID } from 'node:crypto';
import type { Plan, PlannedBuild } from '#core/kit/kit.ts';
import { done, refuse, type Outcome } from '#core/stock/refusal.ts';
import { findBags, touchBags, type HeldBag } from '#db/bags.ts';
import { readBoard } from '#db/boards.ts';
import { freeBuildName } from '#db/build-name.ts';
import { findBuild, insertBuild, insertBuildLines, insertTakes, setReserved, type NewTake } from '#db/builds.ts';
import type { Tx } from '#db/database.ts';
import { action, type Action } from './action.ts';
import { balancesOf } from './balances.ts';
import { begin } from './begin.ts';
import { quantityTrouble } from './checks.ts';
import { USUAL_PRIORITY } from './plan-build.ts';
import type { BuildInput, CellInput, ReserveKitInput, ReserveKitResult } from './inputs.ts';

/** What an undo must know: the builds that were planned before and are planned again after it. */
export interface ReservedMemo {
  readonly planned: readonly string[];
}

/**
 * Takes a plan: its builds are made and their bags promised. What the plan counted on is looked at again here, inside the
 * transaction; a bag that has less free than was planned, or is gone or astray, makes the plan stale, and all such bags are named.
 */
export const reserveKit: Action<ReserveKitInput, ReserveKitResult> = action('reserveKit', async (tx, clock, who, input) => {
  const bags = await plannedBags(tx, input.plan);
  if (!bags.ok) return bags;
  if (input.builds.length === 0) return refuse('nothing-to-do');
  if (!input.anyway && input.plan.builds.every(({ buildable }) => buildable === 0))
    return refuse('nothing-made', { boards: input.plan.builds.reduce((sum, { boards }) => sum + boards, 0) });
  const begun = await begin(tx, clock, who, input, { kind: 'reserved', memo: memoOf(input.builds) });
  if (!begun.ok) return begun;

  const made: { key: string; build: string; name: string }[] = [];
  for (const asked of input.builds) {
    const wanted = asked.planned === undefined ? { ...asked, name: await freeBuildName(tx, asked.name) } : asked;
    const planned = input.plan.builds.find((build) => build.build === wanted.key);
    if (!planned) return refuse('no-such-build', { build: wanted.key });
    const build = await enterBuild(tx, input, wanted, planned, bags.value);
    if (!build.ok) return build;
    made.push({ key: wanted.key, build: build.value, name: wanted.name });
  }
  const ids = [...bags.value.values()].map((bag) => bag.id);
  await touchBags(tx, begun.value, ids);
  return done({ act: input.id, repeat: false, change: begun.value, warnings: [], builds: made, bags: await balancesOf(tx, ids) });
});

function memoOf(builds: readonly BuildInput[]): ReservedMemo {
  return { planned: builds.flatMap(({ planned }) => (planned === undefined ? [] : [planned])) };
}

/** The bags of a plan by number, all of them still good for what is planned of them. */
async function plannedBags(tx: Tx, plan: Plan): Promise<Outcome<Map<number, HeldBag>>> {
  const planned = new Map<number, number>();
  for (const { bag, take } of plan.builds.flatMap((build) => build.lines).flatMap((line) => line.takes)) {
    const trouble = quantityTrouble('take', take);
    if (trouble) return { ok: false, refusal: trouble };
    planned.set(bag, (planned.get(bag) ?? 0) + take);
  }
  const bags = await findBags(tx, [...planned.keys()]);
  const stale = [...planned].flatMap(([number, take]) => {
    const bag = bags.get(number);
    const free = bag && bag.state !== 'astray' ? bag.sure - bag.reserved : 0;
    return free < take ? [{ number, take, free }] : [];
  });
  if (stale.length === 0) return done(bags);
  return refuse('plan-stale', {
    bags: stale.map((one) => one.number).join(', '),
    planned: stale.map((one) => one.take).join(', '),
    free: stale.map((one) => one.free).join(', '),
  });
}

async function enterBuild(
  tx: Tx,
  input: ReserveKitInput,
  wanted: BuildInput,
  planned: PlannedBuild,
  bags: ReadonlyMap<number, HeldBag>,
): Promise<Outcome<string>> {
  const plan = { buildable: planned.buildable, proof: input.plan.proof };
  const made =
    wanted.planned === undefined
      ? await newBuild(tx, input.id, wanted, planned.boards, plan)
      : await fromPlanned(tx, wanted.planned, plan);
  if (!made.ok) return made;
  const lines = await insertBuildLines(tx, made.value, planned.lines);
  await insertTakes(tx, takesOfPlan(planned, lines, bags, input.cells ?? []));
  return made;
}

type PlanOfBuild = Parameters<typeof setReserved>[2];

async function newBuild(tx: Tx, act: string, wanted: BuildInput, boards: number, plan: PlanOfBuild): Promise<Outcome<string>> {
  const found = wanted.board === undefined ? null : await readBoard(tx, wanted.board, wanted.revision);
  if (wanted.board !== undefined && !found) return refuse('no-such-board', { board: wanted.board });
  const id = randomUUID();
  await insertBuild(tx, act, {
    id,
    name: wanted.name,
    board: found?.board.id ?? null,
    revision: found?.revision.id ?? null,
    boards,
    state: 'reserved',
    priority: wanted.priority ?? USUAL_PRIORITY,
    due: wanted.due ?? null,
    ...plan,
  });
  return done(id);
}

async function fromPlanned(tx: Tx, id: string, plan: PlanOfBuild): Promise<Outcome<string>> {
  const build = await findBuild(tx, id);
  if (!build || build.state === 'undone') return refuse('no-such-build', { build: id });
  if (build.state !== 'planned') return refuse('build-state', { build: build.name, state: build.state, wants: 'planned' });
  await setReserved(tx, id, plan);
  return done(id);
}

/** The takes of a build in the order of the walk: that of the cells where they are given, else that of the plan. */
function takesOfPlan(
  planned: PlannedBuild,
  lines: ReadonlyMap<string, string>,
  bags: ReadonlyMap<number, HeldBag>,
  cells: readonly CellInput[],
): NewTake[] {
  const walk = new Map(cells.map((cell, at) => [`${cell.line} ${cell.bag}`, { ord: at + 1, tray: cell.tray, cell: cell.cell }]));
  const sums = new Map<string, { line: string; bag: number; planned: number }>();
  for (const { line, takes } of planned.lines) {
    for (const { bag, take } of takes) {
      const key = `${line} ${bag}`;
      sums.set(key, { line, bag, planned: (sums.get(key)?.planned ?? 0) + take });
    }
  }
  return [...sums].map(([key, take], at) => {
    const [line, bag] = [lines.get(take.line), bags.get(take.bag)?.id];
    if (line === undefined || bag === undefined) throw new Error(`the plan takes from bag ${take.bag} for no line of its own`);
    const place = walk.get(key) ?? { ord: cells.length + at + 1, tray: 1, cell: at + 1 };
    return { line, bag, planned: take.planned, ...place };
  });
}
