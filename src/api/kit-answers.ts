import type { Plan, PlannedBuild, PlannedLine, Stop } from '#core/kit/kit.ts';
import type { Because } from '#core/serve/verdict.ts';
import type { KitAnswer, LineAnswer, OtherBuild, PlannedKit, RouteStop } from './kits.ts';

/** One planned line as it crosses the wire; `say` makes the sentence of a reason. */
export function lineAnswer(line: PlannedLine, say: (because: Because) => string): LineAnswer {
  return {
    row: line.row,
    refs: [...line.refs],
    need: line.need,
    spare: line.spare,
    verdict: line.verdict,
    bags: line.takes.map(({ bag, take }) => ({ bag, take })),
    because: line.because.map((because) => ({ code: because.code, text: say(because) })),
    short: line.short,
  };
}

/** One stop of the walk as it crosses the wire. */
export function routeStop({ bag, box, place, take, tray, cell, refs }: Stop): RouteStop {
  return { bag, box, place, take, tray, cell, refs: [...refs] };
}

interface OpenForWire {
  readonly key: string;
  readonly kept: boolean;
  readonly name: string;
  readonly priority: number;
  readonly due: string | null;
}

interface PlannedForWire {
  readonly open: OpenForWire;
  readonly plan: Pick<Plan, 'proof' | 'gap'>;
  readonly build: PlannedBuild;
  readonly lines: readonly PlannedLine[];
  readonly route: readonly Stop[];
}

/** One build of a plan as it crosses the wire: the contract of `kit`, and what the others of `all` get. */
export function kitAnswer(
  { plan, open, build, lines, route }: PlannedForWire,
  all: readonly PlannedForWire[],
  say: (because: Because) => string,
): KitAnswer {
  const rowOf = new Map(lines.map((line) => [line.line, line.row]));
  return {
    boards: build.boards,
    buildable: build.buildable,
    buildableWithChecks: build.buildableWithChecks,
    limitedBy: build.limitedBy.map((limit) =>
      'bag' in limit ? { ...limit } : { line: rowOf.get(limit.line) ?? 0, reaches: limit.reaches },
    ),
    proof: plan.proof,
    gap: plan.gap,
    lines: lines.map((line) => lineAnswer(line, say)),
    route: route.map(routeStop),
    others: all.filter((one) => one.open.key !== open.key).map(otherBuild),
  };
}

/** What a build gets, in short. */
export function otherBuild({ open: { key, kept, name, priority, due }, build }: PlannedForWire): OtherBuild {
  const short = build.lines.reduce((sum, line) => sum + line.short, 0);
  return { build: kept ? key : null, name, boards: build.boards, priority, due, buildable: build.buildable, short };
}

/** A planned build as it crosses the wire. */
export function plannedKit(
  planned: PlannedForWire,
  all: readonly PlannedForWire[],
  say: (because: Because) => string,
): PlannedKit {
  const { key, name, priority, due } = planned.open;
  return { build: key, name, priority, due, ...kitAnswer(planned, all, say) };
}
