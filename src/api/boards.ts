import { z } from '@hono/zod-openapi';
import { actId, done, note } from './acts.ts';
import { bagNumber, rowNumber } from './figures.ts';
import { Said } from './bags.ts';
import { Limit, LineAnswer } from './kits.ts';

const Revision = z.object({ id: z.string(), name: z.string(), source: z.string().nullable(), lines: z.int(), saved: z.string() });

export const BoardView = z
  .object({
    id: z.string(),
    name: z.string(),
    revisions: z.array(Revision),
    builds: z
      .array(
        z.object({
          build: z.string(),
          name: z.string(),
          state: z.string(),
          boards: z.int(),
          made: z.int().nullable(),
          when: z.string(),
        }),
      )
      .openapi({ description: 'builds of the board, the newest first' }),
  })
  .openapi('Board');
export type BoardView = z.infer<typeof BoardView>;

/** How many of a board what is free makes, were nothing else built. */
export const BoardReach = z
  .object({
    board: z.string(),
    buildable: z.int(),
    most: z.boolean().openapi({ description: 'it may be more: nobody counted on' }),
    limitedBy: z.array(Limit),
  })
  .openapi('BoardReach');
export type BoardReach = z.infer<typeof BoardReach>;

export const BoardReaches = z.object({ boards: z.array(BoardReach) }).openapi('BoardReaches');

/** A line of a saved board against the bags, with the demand by which a choice for it is kept. */
export const BoardLine = LineAnswer.extend({
  demand: z.string(),
  asks: z.string().openapi({ description: 'what the BOM asks for, as written' }),
  said: Said,
  fitted: z.boolean(),
  later: z.boolean().openapi({ description: 'left off for now by hand: fit later' }),
  chosen: z.object({ bag: z.int(), accept: z.boolean(), reason: z.string().nullable() }).nullable(),
  holds: Said.nullable().openapi({
    description: 'what the first bag holds that it gets; where it gets none, the one to look at',
  }),
  nearest: z
    .int()
    .nullable()
    .openapi({ description: 'where nothing serves: the bag that lacks least; of an open check: the bag to look at' }),
  waits: z
    .int()
    .nullable()
    .openapi({ description: 'free in the bag that waits for a word about its check; null where none does' }),
  free: z.int().openapi({ description: 'free in the bags that may be taken for it' }),
  left: z.int().openapi({ description: 'left over in them after the plan' }),
  reaches: z.int().nullable().openapi({ description: 'boards that its bags alone let be built; null where it needs none' }),
  doubts: z.array(z.object({ field: z.string(), why: z.string(), settle: z.string() })),
}).openapi('BoardLine');
export type BoardLine = z.infer<typeof BoardLine>;

export const BoardLines = z
  .object({
    board: z.string(),
    revision: z.string(),
    source: z.string().nullable(),
    boards: z.int(),
    buildable: z.int(),
    buildableWithChecks: z.int(),
    limitedBy: z.array(Limit),
    proof: z.enum(['optimal', 'gap']),
    lines: z.array(BoardLine),
  })
  .openapi('BoardLines');
export type BoardLines = z.infer<typeof BoardLines>;

/** One fact of a line and of a bag, side by side. */
export const Point = z
  .object({
    point: z.string().openapi({ example: 'Voltage' }),
    asked: z.string().nullable(),
    has: z.string().nullable(),
    fit: z.enum(['exact', 'serves', 'check', 'missing', 'none']),
    word: z.string().openapi({ example: 'higher' }),
  })
  .openapi('Point');
export type Point = z.infer<typeof Point>;

const verdict = z.enum(['exact', 'serves', 'check', 'missing']);

/** One line point by point against one bag, and the other bags that may answer it. */
export const LineDetail = z
  .object({
    row: z.int(),
    refs: z.array(z.string()),
    demand: z.string(),
    asks: z.string(),
    said: Said,
    bag: z.int().nullable().openapi({ description: 'the bag that the points are about' }),
    verdict,
    because: z.array(z.string()),
    points: z.array(Point),
    others: z.array(
      z.object({
        bag: z.int(),
        box: z.string().nullable(),
        said: Said,
        free: z.int(),
        verdict,
        because: z.array(z.string()),
        chosen: z.boolean(),
      }),
    ),
  })
  .openapi('LineDetail');
export type LineDetail = z.infer<typeof LineDetail>;

export const LaterRequest = z
  .strictObject({
    id: actId,
    demand: z.string().min(1).max(2000),
    later: z.boolean().openapi({ description: 'true: leave it off for now; false: fit it again' }),
    row: rowNumber.exactOptional().openapi({ description: 'the line that is meant, where several have the demand' }),
    note,
  })
  .openapi('LaterRequest');
export const LaterDone = z.object({ ...done, board: z.string(), demand: z.string(), later: z.boolean() }).openapi('LaterDone');

export const BoardSaved = z.object({ ...done, board: z.string(), revision: z.string(), lines: z.int() }).openapi('BoardSaved');
export type BoardSaved = z.infer<typeof BoardSaved>;

export const ChoiceRequest = z
  .strictObject({
    id: actId,
    demand: z.string().min(1).max(2000).openapi({ description: 'what a line asks for, as /api/boards/{board}/lines names it' }),
    bag: bagNumber.nullable().openapi({ description: 'null takes the choice back' }),
    accept: z.boolean().default(true).openapi({ description: 'what is to be checked about it is accepted' }),
    row: rowNumber.exactOptional().openapi({ description: 'the line that is meant, where several have the demand' }),
    reason: z.string().min(1).max(1000).exactOptional().openapi({ description: 'why a bag is taken that does not serve' }),
    note,
  })
  .openapi('ChoiceRequest');

export const Chosen = z
  .object({ ...done, board: z.string(), demand: z.string(), bag: z.int().nullable(), accept: z.boolean() })
  .openapi('Chosen');
