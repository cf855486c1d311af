import { z } from '@hono/zod-openapi';
import { actId, Balance, done, happenedAt, note } from './acts.ts';
import { bagNumber } from './figures.ts';

const bag = bagNumber.openapi({ example: 12, description: 'bag number' });
const moved = z.int().positive().max(1_000_000_000).openapi({ example: 3 });
const seen = z.int().min(0).max(1_000_000_000).openapi({ example: 40 });
const told = { id: actId, bag, happenedAt, note };

const Picked = z.strictObject({
  kind: z.literal('picked'),
  ...told,
  quantity: moved,
  inHand: z.boolean().exactOptional().openapi({ description: 'they are in my hand: books the pick and a correction' }),
});
const Returned = z.strictObject({ kind: z.literal('returned'), ...told, quantity: moved });
const Received = z.strictObject({ kind: z.literal('received'), ...told, quantity: moved });
const Counted = z
  .strictObject({
    kind: z.literal('counted'),
    ...told,
    counted: seen.exactOptional().openapi({ description: 'the total that was seen in the bag' }),
    quantity: seen.exactOptional().openapi({ description: 'another name for it; one of the two' }),
    sawSeq: z
      .int()
      .min(0)
      .max(1_000_000_000_000)
      .exactOptional()
      .openapi({ description: 'last movement that the screen knew when it was counted' }),
  })
  .refine((body) => (body.quantity === undefined) !== (body.counted === undefined), {
    path: ['counted'],
    error: 'the total that was seen, once',
  });

/** What may be posted to /api/movements: one movement of one bag, which is an act by itself. */
export const MovementRequest = z.discriminatedUnion('kind', [Picked, Returned, Received, Counted]).openapi('MovementRequest');
export type MovementRequest = z.infer<typeof MovementRequest>;

/** The movement as booked, with what the bag holds after it. */
export const Movement = z
  .object({
    ...done,
    kind: z.enum(['picked', 'returned', 'received', 'counted']),
    bag,
    quantity: z.int().openapi({ description: 'pieces moved; of a count, the total that was seen' }),
    counted: z.int().exactOptional().openapi({ description: 'of a count: the total that was seen' }),
    delta: z.int().openapi({ description: 'what this act changed on hand' }),
    onHand: z.int(),
    sure: z.int(),
    free: z.int(),
  })
  .openapi('Movement');
export type Movement = z.infer<typeof Movement>;

export const UndoRequest = z
  .strictObject({ id: actId, act: z.guid().toLowerCase().openapi({ description: 'the act to take back, once' }), note })
  .openapi('UndoRequest');

export const Undone = z.object({ ...done, undoes: z.guid(), kind: z.string(), bags: z.array(Balance) }).openapi('Undone');
export type Undone = z.infer<typeof Undone>;
