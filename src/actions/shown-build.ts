import type { Plan, PlannedBuild, Stop } from '#core/kit/kit.ts';
import type { ReserveKitResult } from './inputs.ts';
import type { OpenBuild, PlannedBom, PlannedBomLine } from './plan-builds.ts';

/** What is shown of a build of a plan. */
export interface ShownBuild {
  readonly open: Omit<OpenBuild, 'rows' | 'choices' | 'later'>;
  readonly plan: Pick<Plan, 'proof' | 'gap'>;
  readonly build: PlannedBuild;
  readonly lines: readonly PlannedBomLine[];
  readonly route: readonly Stop[];
}

/** A plan that was taken. */
export interface Reserved {
  readonly planned: ShownBuild;
  /** the planned builds of the lab and this one, the first served first; the others without their lines and walks */
  readonly all: readonly ShownBuild[];
  readonly result: ReserveKitResult;
}

/** What is kept with the act, so that a repeat is answered by what was promised then, whatever the stock has become. */
export interface KeptReservation extends ReserveKitResult {
  readonly key: string;
  readonly all: readonly ShownBuild[];
}

export function keptOf(result: ReserveKitResult, planned: PlannedBom, all: readonly PlannedBom[]): KeptReservation {
  const key = planned.open.key;
  return { ...result, key, all: all.map((one) => shown(one, one.open.key === key)) };
}

function shown({ open, plan: { proof, gap }, build, lines, route }: PlannedBom, whole: boolean): ShownBuild {
  const { rows: _rows, choices: _choices, later: _later, ...told } = open;
  return { open: told, plan: { proof, gap }, build, lines: whole ? lines : [], route: whole ? route : [] };
}

export function reservedOf({ key, all, ...result }: KeptReservation): Reserved {
  const planned = all.find(({ open }) => open.key === key);
  if (!planned) throw new Error(`act ${result.act} was kept without the build that it reserved`);
  return { planned, all, result };
}
