import type { ReadRow } from '#core/bom/bom.ts';
import { done, type Outcome } from '#core/stock/refusal.ts';
import type { Lab } from '#db/database.ts';
import { action, type Action, type Clock, type Who } from './action.ts';
import type { FollowedStock } from './follow-stock.ts';
import type { ActInput, BuildInput, ReserveKitInput } from './inputs.ts';
import { perform, repeatOf } from './perform.ts';
import { wishTrouble } from './plan-build.ts';
import type { Bom, PlannedBom } from './plan-builds.ts';
import { planAsked } from './plan-open.ts';
import { reserveKit } from './reserve-kit.ts';
import { keptOf, reservedOf, type KeptReservation, type Reserved } from './shown-build.ts';
import { takeFresh } from './take-fresh.ts';

/** What is asked, as it was asked: the body by which a repeat is known, whatever was chosen or saved meanwhile. */
export interface ReserveBomInput extends ActInput {
  /** a saved board, its newest revision unless one is named, or the rows of a file */
  readonly of: { readonly board: string; readonly revision?: string } | { readonly rows: readonly ReadRow[] };
  readonly boards: number;
  readonly spares: boolean;
  /** name of the build: that of the BOM where it is left out */
  readonly name?: string;
  readonly priority?: number;
  readonly due?: string;
  /** promise the pieces even where not one board can be built */
  readonly anyway?: boolean;
}

/** What the asked words stand for now. */
export interface FoundBom extends Bom {
  readonly name: string;
  readonly board?: string;
  readonly revision?: string;
}

/** Plans a BOM beside all planned builds, those that come first honoured, and promises it what it gets; a repeat plans nothing. */
export async function reserveBom(
  lab: Lab,
  stock: FollowedStock,
  clock: Clock,
  who: Who,
  input: ReserveBomInput,
  find: () => Promise<Outcome<FoundBom>>,
): Promise<Outcome<Reserved>> {
  const trouble = wishTrouble(input);
  if (trouble) return { ok: false, refusal: trouble };
  const before = await repeatOf<KeptReservation>(lab, 'reserveBom', input);
  if (!before.ok) return before;
  if (before.value) return done(reservedOf(before.value));
  return takeFresh(async () => {
    const found = await find();
    if (!found.ok) return found;
    const { board, revision, ...bom } = found.value;
    const { planned, all } = await planAsked(lab, stock, { ...bom, ...input }, input);
    const of = { ...(board !== undefined && { board }), ...(revision !== undefined && { revision }) };
    const outcome = await perform(lab, takingOf(planned, all, of), clock, who, input);
    return outcome.ok ? done(reservedOf(outcome.value)) : outcome;
  });
}

/** The plan is no part of what is asked, so that a repeat with the same id is the same act. */
function takingOf(
  planned: PlannedBom,
  all: readonly PlannedBom[],
  of: Pick<BuildInput, 'board' | 'revision'>,
): Action<ReserveBomInput, KeptReservation> {
  return action('reserveBom', async (tx, clock, who, { of: _of, boards: _boards, spares: _spares, priority, due, ...told }) => {
    const { key, name } = planned.open;
    const wanted = { key, name, ...of, ...(priority !== undefined && { priority }), ...(due !== undefined && { due }) };
    const outcome = await reserveKit(tx, clock, who, { ...told, ...partOf(planned, wanted) });
    return outcome.ok ? done(keptOf(outcome.value, planned, all)) : outcome;
  });
}

/** What one build gets of a plan that was made for many: the others are promised nothing by it. */
export function partOf({ plan, build, change, cells }: PlannedBom, wanted: BuildInput): Omit<ReserveKitInput, keyof ActInput> {
  return { plan: { ...plan, builds: [build] }, change, builds: [wanted], cells };
}
