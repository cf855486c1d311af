import type { Outcome } from '#core/stock/refusal.ts';
import type { Lab } from '#db/database.ts';
import type { Action, Clock, Who } from './action.ts';
import type { FollowedStock } from './follow-stock.ts';
import type { ActInput, BuildInput, ReserveKitInput, ReserveKitResult } from './inputs.ts';
import { perform } from './perform.ts';
import { wishTrouble } from './plan-build.ts';
import type { Bom, PlannedBom } from './plan-builds.ts';
import { planAsked } from './plan-open.ts';
import { reserveKit } from './reserve-kit.ts';
import { takeFresh } from './take-fresh.ts';

/** What is asked: the body by which a repeat is known, whatever the plan comes out as. */
export interface ReserveBomInput extends ActInput {
  readonly bom: Bom;
  readonly boards: number;
  readonly spares: boolean;
  /** name of the build */
  readonly name: string;
  readonly board?: string;
  readonly revision?: string;
  readonly priority?: number;
  readonly due?: string;
}

export interface ReservedBom {
  readonly planned: PlannedBom;
  /** the planned builds of the lab and this one, the first served first */
  readonly all: readonly PlannedBom[];
  readonly result: ReserveKitResult;
}

/** Plans a BOM beside all planned builds, those that come first honoured, and promises it what it gets. */
export async function reserveBom(
  lab: Lab,
  stock: FollowedStock,
  clock: Clock,
  who: Who,
  input: ReserveBomInput,
): Promise<Outcome<ReservedBom>> {
  const trouble = wishTrouble(input);
  if (trouble) return { ok: false, refusal: trouble };
  return takeFresh(async () => {
    const { planned, all } = await planAsked(lab, stock, { ...input.bom, ...input }, input);
    const outcome = await perform(lab, takingOf(planned), clock, who, input);
    return outcome.ok ? { ok: true, value: { planned, all, result: outcome.value } } : outcome;
  });
}

/** The plan is no part of what is asked, so that a repeat with the same id is the same act. */
function takingOf(planned: PlannedBom): Action<ReserveBomInput, ReserveKitResult> {
  const reserveBom: Action<ReserveBomInput, ReserveKitResult> = (
    tx,
    clock,
    who,
    { bom: _bom, boards: _boards, spares: _spares, id, happenedAt, note, ...build },
  ) => {
    const told = { id, ...(happenedAt !== undefined && { happenedAt }), ...(note !== undefined && { note }) };
    return reserveKit(tx, clock, who, { ...told, ...partOf(planned, { key: planned.open.key, ...build }) });
  };
  return reserveBom;
}

/** What one build gets of a plan that was made for many: the others are promised nothing by it. */
export function partOf({ plan, build, change, cells }: PlannedBom, wanted: BuildInput): Omit<ReserveKitInput, keyof ActInput> {
  return { plan: { ...plan, builds: [build] }, change, builds: [wanted], cells };
}
