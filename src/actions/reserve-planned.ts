import { done, refuse, type Outcome } from '#core/stock/refusal.ts';
import { findBuild } from '#db/builds.ts';
import type { Lab } from '#db/database.ts';
import { action, type Action, type Clock, type Who } from './action.ts';
import type { FollowedStock } from './follow-stock.ts';
import type { ActInput } from './inputs.ts';
import { perform, repeatOf } from './perform.ts';
import type { PlannedBom } from './plan-builds.ts';
import { planOpen } from './plan-open.ts';
import { partOf } from './reserve-bom.ts';
import { reserveKit } from './reserve-kit.ts';
import { keptOf, reservedOf, type KeptReservation, type Reserved } from './shown-build.ts';
import { takeFresh } from './take-fresh.ts';

export interface ReservePlannedInput extends ActInput {
  /** id of a planned build */
  readonly build: string;
  readonly spares: boolean;
  /** promise the pieces even where not one board can be built */
  readonly anyway?: boolean;
}

/** Promises a planned build what it gets beside the others, those that come first honoured; a repeat plans nothing. */
export async function reservePlanned(
  lab: Lab,
  stock: FollowedStock,
  clock: Clock,
  who: Who,
  input: ReservePlannedInput,
): Promise<Outcome<Reserved>> {
  const before = await repeatOf<KeptReservation>(lab, 'reservePlanned', input);
  if (!before.ok) return before;
  if (before.value) return done(reservedOf(before.value));
  return takeFresh(async () => {
    const { all } = await planOpen(lab, stock, [], input);
    const outcome = await perform(lab, takingOf(all), clock, who, input);
    return outcome.ok ? done(reservedOf(outcome.value)) : outcome;
  });
}

/** The plan is no part of what is asked, so that a repeat with the same id is the same act. */
function takingOf(all: readonly PlannedBom[]): Action<ReservePlannedInput, KeptReservation> {
  return action('reservePlanned', async (tx, clock, who, { build: id, spares: _spares, ...told }) => {
    const planned = all.find(({ open }) => open.key === id);
    if (planned) {
      const wanted = { key: id, name: planned.open.name, planned: id };
      const outcome = await reserveKit(tx, clock, who, { ...told, ...partOf(planned, wanted) });
      return outcome.ok ? done(keptOf(outcome.value, planned, all)) : outcome;
    }
    const build = await findBuild(tx, id);
    return build && build.state !== 'undone'
      ? refuse('build-state', { build: build.name, state: build.state, wants: 'planned' })
      : refuse('no-such-build', { build: id });
  });
}
