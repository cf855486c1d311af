import type { Outcome } from '#core/stock/refusal.ts';
import { refuse } from '#core/stock/refusal.ts';
import { findBuild } from '#db/builds.ts';
import type { Lab } from '#db/database.ts';
import type { Action, Clock, Who } from './action.ts';
import type { FollowedStock } from './follow-stock.ts';
import type { ActInput, ReserveKitResult } from './inputs.ts';
import { perform } from './perform.ts';
import type { PlannedBom } from './plan-builds.ts';
import { planOpen } from './plan-open.ts';
import { partOf } from './reserve-bom.ts';
import { reserveKit } from './reserve-kit.ts';
import { takeFresh } from './take-fresh.ts';

export interface ReservePlannedInput extends ActInput {
  /** id of a planned build */
  readonly build: string;
  readonly spares: boolean;
}

export interface ReservedPlanned {
  /** null where a repeat found the build reserved before */
  readonly planned: PlannedBom | null;
  readonly all: readonly PlannedBom[];
  readonly result: ReserveKitResult;
}

/** Promises a planned build what it gets beside the others, those that come first honoured. */
export async function reservePlanned(
  lab: Lab,
  stock: FollowedStock,
  clock: Clock,
  who: Who,
  input: ReservePlannedInput,
): Promise<Outcome<ReservedPlanned>> {
  return takeFresh(async () => {
    const { all } = await planOpen(lab, stock, [], input);
    const planned = all.find(({ open }) => open.key === input.build) ?? null;
    const outcome = await perform(lab, takingOf(planned), clock, who, input);
    return outcome.ok ? { ok: true, value: { planned, all, result: outcome.value } } : outcome;
  });
}

/** The plan is no part of what is asked, so that a repeat with the same id is the same act. */
function takingOf(planned: PlannedBom | null): Action<ReservePlannedInput, ReserveKitResult> {
  const reservePlanned: Action<ReservePlannedInput, ReserveKitResult> = async (tx, clock, who, input) => {
    const { build: id, spares: _spares, ...told } = input;
    if (planned)
      return reserveKit(tx, clock, who, { ...told, ...partOf(planned, { key: id, name: planned.open.name, planned: id }) });
    const build = await findBuild(tx, id);
    return build && build.state !== 'undone'
      ? refuse('build-state', { build: build.name, state: build.state, wants: 'planned' })
      : refuse('no-such-build', { build: id });
  };
  return reservePlanned;
}
