import { z } from '@hono/zod-openapi';
import { actId, done, note } from './acts.ts';
import { bagNumber } from './figures.ts';

/** A part in the words of a screen: `4.7 kΩ ±1 %` and `Resistor 0805, 125 mW`. */
export const Said = z.object({ name: z.string(), rest: z.string() }).openapi('Said');
export type Said = z.infer<typeof Said>;

/** A piece of typed text above what it was read as; `filled` has nothing typed. */
export const Gloss = z
  .object({ typed: z.string(), means: z.string(), how: z.enum(['read', 'doubt', 'unread', 'filled']) })
  .openapi('Gloss');
export type Gloss = z.infer<typeof Gloss>;

const bagFields = {
  bag: z.int().openapi({ example: 12 }),
  box: z.string().nullable(),
  place: z.string().nullable(),
  code: z.string().openapi({ description: 'part code', example: 'R-0805-4K7-F' }),
  text: z.string().openapi({ description: 'what is in it, as written' }),
  said: Said,
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

const standing = z.enum(['holds', 'exhausted', 'astray']);

/** A box as it stands: its bags front to back. */
export const BoxPicture = BoxView.extend({
  says: z.string().openapi({ description: 'what is in it, in a few words' }),
  bags: z.array(z.object({ bag: z.int(), standing })).openapi({ description: 'front to back' }),
}).openapi('BoxPicture');
export type BoxPicture = z.infer<typeof BoxPicture>;

export const BoxesView = z
  .object({
    boxes: z.array(BoxPicture).openapi({ description: 'in their order; of a stack the top one first' }),
    loose: z
      .array(z.object({ bag: z.int(), place: z.string().nullable(), standing }))
      .openapi({ description: 'bags without a box' }),
  })
  .openapi('Boxes');
export type BoxesView = z.infer<typeof BoxesView>;

export const ArrangeRequest = z
  .strictObject({
    id: actId,
    boxes: z
      .array(z.string().min(1).max(100))
      .min(1)
      .openapi({ description: 'all boxes, in their order; of a stack the top one first' }),
    standing: z.enum(['beside', 'stacked']),
    note,
  })
  .openapi('ArrangeRequest');
export const Arranged = z.object({ ...done, boxes: z.array(BoxView) }).openapi('Arranged');

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
    undoneBy: z.string().nullable(),
    for: z.string().nullable().openapi({ description: 'build, supplier or list that it was for' }),
    note: z.string().nullable(),
  })
  .openapi('BagMovement');
export type BagMovement = z.infer<typeof BagMovement>;

export const BagWithHistory = z
  .object({
    ...bagFields,
    gloss: z.array(Gloss).openapi({ description: 'what is written on it, and how it was read' }),
    doubts: z.array(z.object({ field: z.string(), why: z.string(), settle: z.string() })),
    movements: z.array(BagMovement),
    reservedFor: z.array(z.object({ build: z.string(), name: z.string(), quantity: z.int() })),
    alike: z.array(z.object({ bag: z.int(), box: z.string().nullable(), onHand: z.int(), free: z.int() })).openapi({
      description: 'other bags with the same part',
    }),
    usedOn: z
      .array(z.object({ board: z.string(), refs: z.array(z.string()) }))
      .openapi({ description: 'boards whose builds took from it' }),
  })
  .openapi('BagWithHistory');
export type BagWithHistory = z.infer<typeof BagWithHistory>;

/** A bag taken in: what it says in any notation, how many, and where it goes. */
export const NewBagRequest = z
  .strictObject({
    id: actId,
    says: z.string().trim().min(1).max(1000).openapi({ example: '4k7 1% 0805' }),
    quantity: z.int().min(0).max(1_000_000_000),
    about: z.boolean().exactOptional().openapi({ description: 'the quantity is an estimate: plans promise none of it' }),
    bag: bagNumber.exactOptional().openapi({ description: 'number of the new bag; the next free one unless said' }),
    box: z.string().min(1).max(100).exactOptional(),
    place: z.string().min(1).max(200).exactOptional(),
    note,
  })
  .openapi('NewBagRequest');
export type NewBagRequest = z.infer<typeof NewBagRequest>;
export const NewBag = z
  .object({ ...done, bag: z.int(), box: z.string().nullable(), code: z.string(), said: Said, onHand: z.int() })
  .openapi('NewBag');
export type NewBag = z.infer<typeof NewBag>;

/** How a text is read as a part; nothing is kept. */
export const PartReading = z
  .object({
    said: Said,
    code: z.string(),
    kind: z.string(),
    gloss: z.array(Gloss),
    doubts: z.array(z.object({ field: z.string(), why: z.string(), settle: z.string() })),
  })
  .openapi('PartReading');
export type PartReading = z.infer<typeof PartReading>;

export const FoundBag = z
  .object({
    bag: z.int(),
    box: z.string().nullable(),
    place: z.string().nullable(),
    code: z.string(),
    text: z.string(),
    said: Said,
    unit: z.string(),
    state: z.string(),
    onHand: z.int(),
    free: z.int(),
    group: z
      .enum(['typed', 'package', 'near', 'exhausted'])
      .openapi({ description: 'as typed; the same value in another package; near it; nothing left in it' }),
    full: z.boolean().openapi({ description: 'answers all that was asked; else it is something near' }),
    why: z.array(z.string()),
  })
  .openapi('FoundBag');
export type FoundBag = z.infer<typeof FoundBag>;

export const FoundAnswer = z
  .object({ words: z.string().openapi({ description: 'what was asked' }), read: z.array(Gloss), found: z.array(FoundBag) })
  .openapi('FoundAnswer');
export type FoundAnswer = z.infer<typeof FoundAnswer>;
