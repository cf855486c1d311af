import { z } from '@hono/zod-openapi';

const bagFields = {
  bag: z.int().openapi({ example: 12 }),
  box: z.string().nullable(),
  place: z.string().nullable(),
  code: z.string().openapi({ description: 'part code', example: 'R-0805-4K7-F' }),
  text: z.string().openapi({ description: 'what is in it, as written' }),
  kind: z.string(),
  holder: z.string(),
  unit: z.string(),
  state: z.string(),
  onHand: z.int(),
  sure: z.int(),
  reserved: z.int(),
  free: z.int(),
  oldest: z.string().nullable(),
  toCount: z.boolean(),
};

export const BagView = z.object(bagFields).openapi('Bag');
export type BagView = z.infer<typeof BagView>;

export const BoxView = z.object({ name: z.string(), places: z.int(), lifts: z.int(), order: z.int() }).openapi('Box');

export const BagMovement = z
  .object({
    act: z.string(),
    seq: z.int(),
    kind: z.string(),
    delta: z.int(),
    onHand: z.int().openapi({ description: 'after it' }),
    who: z.string(),
    happenedAt: z.string(),
    recordedAt: z.string(),
    undoes: z.string().nullable(),
    note: z.string().nullable(),
  })
  .openapi('BagMovement');

export const BagWithHistory = z.object({ ...bagFields, movements: z.array(BagMovement) }).openapi('BagWithHistory');

export const FoundBag = z
  .object({
    bag: z.int(),
    box: z.string().nullable(),
    code: z.string(),
    text: z.string(),
    onHand: z.int(),
    free: z.int(),
    full: z.boolean().openapi({ description: 'answers all that was asked; else it is something near' }),
    why: z.array(z.string()),
  })
  .openapi('FoundBag');
export type FoundBag = z.infer<typeof FoundBag>;
