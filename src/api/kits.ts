import { z } from '@hono/zod-openapi';
import { actId, Balance, done, note } from './acts.ts';
import { Said } from './bags.ts';

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

export const Limit = z
  .union([z.object({ bag: z.int(), reaches: z.int() }), z.object({ line: z.int(), reaches: z.int() })])
  .openapi('Limit');
export type Limit = z.infer<typeof Limit>;

/** What another open build gets of the same plan. */
export const OtherBuild = z
  .object({
    build: z.string().nullable().openapi({ description: 'id of a planned build; null for one that was asked for' }),
    name: z.string(),
    boards: z.int(),
    priority: z.int(),
    due: z.string().nullable(),
    buildable: z.int(),
    short: z.int().openapi({ description: 'pieces that it lacks' }),
  })
  .openapi('OtherBuild');
export type OtherBuild = z.infer<typeof OtherBuild>;

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
    others: z.array(OtherBuild).openapi({ description: 'the other open builds, the first served first' }),
  })
  .openapi('KitAnswer');
export type KitAnswer = z.infer<typeof KitAnswer>;

const anyway = z.boolean().exactOptional().openapi({ description: 'promise the pieces even where not one board can be built' });

export const KitRequest = z
  .strictObject({
    board: z.string().min(1).max(200).openapi({ description: 'name of a saved board' }),
    revision: z.string().min(1).max(100).exactOptional().openapi({ description: 'the newest unless said' }),
    boards: z.int().min(1).max(10_000),
    spares: z.boolean().default(true),
    priority: z.int().min(0).max(999).exactOptional().openapi({ description: 'small comes first; 5 unless said' }),
    due: z.iso.date().exactOptional(),
    reserve: z.boolean().default(false).openapi({ description: 'promise the bags; without it and `keep` nothing is written' }),
    keep: z.boolean().default(false).openapi({ description: 'keep it as a planned build, without a promise' }),
    anyway,
    id: actId.exactOptional().openapi({ description: 'id of the act; needed to reserve or to keep' }),
    name: z.string().min(1).max(200).exactOptional().openapi({ description: 'name of the build: that of the board unless said' }),
    note,
  })
  .openapi('KitRequest');

/** One build of the plan of all. */
export const PlannedKit = KitAnswer.extend({
  build: z.string(),
  name: z.string(),
  priority: z.int(),
  due: z.string().nullable(),
}).openapi('PlannedKit');
export type PlannedKit = z.infer<typeof PlannedKit>;

export const ReserveRequest = z
  .strictObject({ id: actId, spares: z.boolean().default(true), anyway, note })
  .openapi('ReserveRequest');
export const ReservedBuild = z.object({ ...done, build: z.string(), bags: z.array(Balance) }).openapi('ReservedBuild');

/** A plan that was taken, or is kept: its build. */
export const ReservedKit = KitAnswer.extend({ ...done, build: z.string() }).openapi('ReservedKit');

export const BuildView = z
  .object({
    id: z.string(),
    name: z.string(),
    board: z.string().nullable(),
    revision: z.string().nullable(),
    boards: z.int(),
    made: z.int().nullable(),
    state: z.enum(['planned', 'reserved', 'picking', 'built', 'cancelled', 'undone']),
    priority: z.int(),
    due: z.string().nullable(),
    buildable: z.int(),
    proof: z.string(),
    reserved: z.string(),
    takes: z.int(),
    open: z.int(),
    short: z.int(),
    left: z.int().openapi({ description: 'of a soldered build: pieces that should lie in its trays still' }),
    returned: z.int().openapi({ description: 'pieces that came back from its trays' }),
  })
  .openapi('Build');

export const KitTakeView = z
  .object({
    id: z.string(),
    line: z.string(),
    bag: z.int(),
    code: z.string(),
    text: z.string(),
    said: Said,
    unit: z.string(),
    box: z.string().nullable(),
    place: z.string().nullable(),
    tray: z.int(),
    cell: z.int(),
    refs: z.array(z.string()),
    planned: z.int(),
    spare: z.int().openapi({ description: 'how many of the planned ones are above the count' }),
    picked: z.int(),
    returned: z.int(),
    state: z.enum(['open', 'done']),
    onHand: z.int(),
    settled: z.boolean().openapi({ description: 'what was left of it is said to be used up or lost' }),
    expected: z.int().openapi({ description: 'what should be left of it in its cell' }),
    cautions: z
      .array(z.enum(['cells', 'mains', 'fuses', 'leaded']))
      .openapi({ description: 'ways in which it can harm who solders it' }),
  })
  .openapi('KitTake');

export type KitTakeView = z.infer<typeof KitTakeView>;
export type BuildView = z.infer<typeof BuildView>;

/** An act of a build, as its page shows it; `takes` are the cells that it touched. */
export const KitAct = z
  .object({
    act: z.string(),
    kind: z.string(),
    who: z.string(),
    happenedAt: z.string(),
    undoes: z.string().nullable(),
    undoneBy: z.string().nullable(),
    takes: z.array(z.string()),
    pieces: z.int().openapi({ description: 'that it moved between bags and trays' }),
  })
  .openapi('KitAct');
export type KitAct = z.infer<typeof KitAct>;

export const KitLineView = z
  .object({ line: z.string(), row: z.int(), refs: z.array(z.string()), said: Said, need: z.int(), short: z.int() })
  .openapi('KitLine');

export const KitView = z
  .object({
    build: BuildView,
    takes: z.array(KitTakeView).openapi({ description: 'in the order of the walk' }),
    lines: z.array(KitLineView).openapi({ description: 'what the build needs, and what it lacks' }),
    acts: z.array(KitAct).openapi({ description: 'the newest first' }),
  })
  .openapi('Kit');
export type KitView = z.infer<typeof KitView>;

const quantity = z.int().min(0).max(1_000_000_000);
const take = z.guid().openapi({ description: 'id of a take of the build' });

export const PickKitRequest = z
  .strictObject({
    id: actId,
    picks: z
      .array(
        z.strictObject({
          take,
          quantity,
          short: z.boolean().exactOptional().openapi({ description: 'the bag gave no more' }),
          enough: z.boolean().exactOptional().openapi({
            description: 'no more is wanted: the rest of the promise is let go, and nothing is wrong with the bag',
          }),
          saw: quantity.exactOptional().openapi({
            description: '`picked` of the take as the page shows it: where another was quicker, nothing is booked',
          }),
        }),
      )
      .exactOptional()
      .openapi({ description: 'all that is open, as planned, unless said' }),
    inHand: z.boolean().exactOptional(),
    note,
  })
  .openapi('PickKitRequest');
export const PickedKit = z.object({ ...done, picked: z.int(), open: z.int(), bags: z.array(Balance) }).openapi('PickedKit');

const returns = z.array(z.strictObject({ take, quantity })).openapi({
  description: 'of a soldered build, 0 says that what should be left in the cell was used up or lost',
});
export const LeftoversRequest = z.strictObject({ id: actId, returns, note }).openapi('LeftoversRequest');
export const CancelRequest = z.strictObject({ id: actId, returns: returns.exactOptional(), note }).openapi('CancelRequest');
export const ReturnedKit = z.object({ ...done, returned: z.int(), bags: z.array(Balance) }).openapi('ReturnedKit');

export const FinishRequest = z
  .strictObject({ id: actId, made: z.int().min(0).max(10_000).exactOptional(), note })
  .openapi('FinishRequest');
export const FinishedKit = z.object({ ...done, made: z.int() }).openapi('FinishedKit');
