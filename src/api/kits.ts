import { z } from '@hono/zod-openapi';
import type { Plan, PlannedBuild, PlannedLine, Stop } from '#core/kit/kit.ts';
import type { Because } from '#core/serve/verdict.ts';

export const Reason = z.object({ code: z.string(), text: z.string() }).openapi('Because');
export const Taken = z.object({ bag: z.int(), take: z.int() }).openapi('Take');

/** A line of a BOM against the bags: the takes add up to need − short + spare. */
export const LineAnswer = z
  .object({
    row: z.int(),
    refs: z.array(z.string()),
    need: z.int(),
    spare: z.int(),
    verdict: z.enum(['exact', 'serves', 'check', 'missing']),
    bags: z.array(Taken),
    because: z.array(Reason),
    short: z.int(),
  })
  .openapi('LineAnswer');
export type LineAnswer = z.infer<typeof LineAnswer>;

export const RouteStop = z
  .object({
    bag: z.int(),
    box: z.string().nullable(),
    place: z.string().nullable(),
    take: z.int(),
    tray: z.int(),
    cell: z.int(),
    refs: z.array(z.string()),
  })
  .openapi('RouteStop');
export type RouteStop = z.infer<typeof RouteStop>;

export const Limit = z.union([z.object({ bag: z.int(), reaches: z.int() }), z.object({ line: z.int(), reaches: z.int() })]).openapi('Limit');
export type Limit = z.infer<typeof Limit>;

/** A plan for so many boards. */
export const KitAnswer = z
  .object({
    boards: z.int(),
    buildable: z.int().openapi({ description: 'complete boards that the plan makes, at most `boards`' }),
    buildableWithChecks: z.int().openapi({ description: 'the same, were the open checks accepted' }),
    limitedBy: z.array(Limit),
    proof: z.enum(['optimal', 'gap']),
    gap: z.number(),
    lines: z.array(LineAnswer),
    route: z.array(RouteStop),
  })
  .openapi('KitAnswer');
export type KitAnswer = z.infer<typeof KitAnswer>;

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

interface PlannedForWire {
  readonly plan: Pick<Plan, 'proof' | 'gap'>;
  readonly build: PlannedBuild;
  readonly lines: readonly PlannedLine[];
  readonly route: readonly Stop[];
}

/** A plan of one build as it crosses the wire: the contract of `kit`. */
export function kitAnswer({ plan, build, lines, route }: PlannedForWire, say: (because: Because) => string): KitAnswer {
  const rowOf = new Map(lines.map((line) => [line.line, line.row]));
  return {
    boards: build.boards,
    buildable: build.buildable,
    buildableWithChecks: build.buildableWithChecks,
    limitedBy: build.limitedBy.map((limit) => ('bag' in limit ? { ...limit } : { line: rowOf.get(limit.line) ?? 0, reaches: limit.reaches })),
    proof: plan.proof,
    gap: plan.gap,
    lines: lines.map((line) => lineAnswer(line, say)),
    route: route.map(routeStop),
  };
}
