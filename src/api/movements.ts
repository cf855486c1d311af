import { z } from '@hono/zod-openapi';

const id = z.guid().toLowerCase().openapi({ description: 'any UUID from the caller: the same id again is the same act, counted once' });
const bag = z.int().positive().openapi({ example: 12, description: 'bag number' });
const moved = z.int().positive().max(1_000_000_000).openapi({ example: 3 });
const seen = z.int().min(0).max(1_000_000_000).openapi({ example: 40 });
const told = {
  id,
  bag,
  happenedAt: z.iso.datetime({ offset: true }).exactOptional().openapi({ description: 'when it happened, where that was not just now' }),
  note: z.string().max(1000).exactOptional(),
};

const Picked = z.strictObject({
  kind: z.literal('picked'),
  ...told,
  quantity: moved,
  inHand: z.boolean().exactOptional().openapi({ description: 'they are in my hand: books the pick and a correction' }),
});
const Returned = z.strictObject({ kind: z.literal('returned'), ...told, quantity: moved });
const Received = z.strictObject({ kind: z.literal('received'), ...told, quantity: moved });
const Counted = z.strictObject({
  kind: z.literal('counted'),
  ...told,
  counted: seen.openapi({ description: 'the total that was seen in the bag' }),
  sawSeq: z.int().min(0).exactOptional().openapi({ description: 'last movement that the screen knew when it was counted' }),
});

/** What may be posted to /api/movements: one movement of one bag, which is an act by itself. */
export const MovementRequest = z.discriminatedUnion('kind', [Picked, Returned, Received, Counted]).openapi('MovementRequest');
export type MovementRequest = z.infer<typeof MovementRequest>;

export const Warned = z
  .object({ code: z.string(), text: z.string(), args: z.record(z.string(), z.union([z.string(), z.number()])) })
  .openapi('Warning');

/** The movement as booked, with what the bag holds after it. */
export const Movement = z
  .object({
    id,
    kind: z.enum(['picked', 'returned', 'received', 'counted']),
    bag,
    quantity: z.int().openapi({ description: 'pieces moved; of a count, the total that was seen' }),
    delta: z.int().openapi({ description: 'what this act changed on hand' }),
    onHand: z.int(),
    sure: z.int(),
    free: z.int(),
    warnings: z.array(Warned),
    change: z.int().openapi({ description: 'change number of the act' }),
  })
  .openapi('Movement');
export type Movement = z.infer<typeof Movement>;

export const UndoRequest = z
  .strictObject({ id, act: z.guid().toLowerCase().openapi({ description: 'the act to take back, once' }), note: z.string().max(1000).exactOptional() })
  .openapi('UndoRequest');

export const Balance = z.object({ bag, onHand: z.int(), sure: z.int(), free: z.int() }).openapi('Balance');

export const Undone = z
  .object({ id, undoes: z.guid(), kind: z.string(), bags: z.array(Balance), warnings: z.array(Warned), change: z.int() })
  .openapi('Undone');
