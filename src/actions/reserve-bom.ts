import type { Outcome } from '#core/stock/refusal.ts';
import type { Lab } from '#db/database.ts';
import type { Action, Clock, Who } from './action.ts';
import type { FollowedStock } from './follow-stock.ts';
import type { ActInput, ReserveKitResult } from './inputs.ts';
import { perform } from './perform.ts';
import { BUILD, planBom, type Bom, type PlannedBom } from './plan-bom.ts';
import { reserveKit } from './reserve-kit.ts';

/** What is asked: the body by which a repeat is known, whatever the plan comes out as. */
export interface ReserveBomInput extends ActInput {
  readonly bom: Bom;
  readonly boards: number;
  readonly spares: boolean;
  /** name of the build */
  readonly name: string;
  readonly board?: string;
  readonly revision?: string;
}

export interface ReservedBom {
  readonly planned: PlannedBom;
  readonly result: ReserveKitResult;
}

const TRIES = 4;

/** Plans and takes the plan; where the stock changed between the two, it plans again, three times, and then says what changed. */
export async function reserveBom(
  lab: Lab,
  stock: FollowedStock,
  clock: Clock,
  who: Who,
  input: ReserveBomInput,
): Promise<Outcome<ReservedBom>> {
  for (let left = TRIES - 1; ; left -= 1) {
    const planned = await planBom(await stock.current(), input.bom, input.boards, input);
    const outcome = await perform(lab, takingOf(planned), clock, who, input);
    if (outcome.ok) return { ok: true, value: { planned, result: outcome.value } };
    if (outcome.refusal.code !== 'plan-stale' || left === 0) return outcome;
  }
}

/** The plan is no part of what is asked, so that a repeat with the same id is the same act. */
function takingOf(planned: PlannedBom): Action<ReserveBomInput, ReserveKitResult> {
  const reserveBom: Action<ReserveBomInput, ReserveKitResult> = (
    tx,
    clock,
    who,
    { bom: _bom, boards: _boards, spares: _spares, name, board, revision, ...told },
  ) => {
    const build = { key: BUILD, name, ...(board !== undefined && { board }), ...(revision !== undefined && { revision }) };
    return reserveKit(tx, clock, who, {
      ...told,
      plan: planned.plan,
      change: planned.change,
      builds: [build],
      cells: planned.cells,
    });
  };
  return reserveBom;
}
