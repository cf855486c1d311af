import { z } from '@hono/zod-openapi';
import { actId, done } from './acts.ts';
import { figures } from './figures.ts';

/** A flag in an address: `?dryRun=true`. */
const flag = z.enum(['true', 'false']).transform((word) => word === 'true');

export const boardsWanted = figures(1, 10_000).openapi({ example: 3 });
const fileName = z.string().min(1).max(255).openapi({ description: 'name of the file, for messages', example: 'blinker.csv' });

export const FileQuery = z.object({ name: fileName });
export const MatchQuery = z.object({ name: fileName, boards: boardsWanted.default(1) });
export const KitFileQuery = z.object({ name: fileName, boards: boardsWanted.default(1), spares: flag.default(true) });
export const ImportQuery = z.object({
  name: fileName,
  dryRun: flag.default(false),
  box: z.string().min(1).max(100).exactOptional().openapi({ description: 'box for rows that name none' }),
  id: actId.exactOptional().openapi({ description: 'id of the act; needed unless it is a dry run' }),
});
export const BoardQuery = z.object({
  name: fileName,
  id: actId,
  board: z.string().min(1).max(200).exactOptional().openapi({ description: 'name of the board: that of the file unless said' }),
  revision: z.string().min(1).max(100).exactOptional(),
});

/** The bytes of a file as a body. */
export const fileBody = {
  required: true,
  content: { 'application/octet-stream': { schema: z.string().openapi({ format: 'binary', description: 'the file as it is' }) } },
} as const;

const part = z.object({
  kind: z.string(),
  value: z.number().nullable(),
  unit: z.string().nullable(),
  tolerance: z.number().nullable(),
  voltage: z.number().nullable(),
  power: z.number().nullable(),
  current: z.number().nullable(),
  dielectric: z.string().nullable(),
  technology: z.string().nullable(),
  package: z.string().nullable(),
  partNumber: z.string().nullable(),
  maker: z.string().nullable(),
  decoded: z.array(z.string()),
  text: z.string(),
});

/** A row as read: what is not stated is null. */
export const ReadRowView = z
  .object({
    row: z.int(),
    refs: z.array(z.string()),
    quantity: z.number().nullable(),
    fitted: z.boolean(),
    part,
    location: z.string().nullable(),
    supplier: z.string().nullable(),
    doubts: z.array(z.object({ field: z.string(), why: z.string(), settle: z.string() })),
  })
  .openapi('ReadRow');

export const PlannedBag = z
  .object({
    row: z.int(),
    bag: z.int(),
    quantity: z.int().nullable().openapi({ description: 'null: no count can be read, the bag is to be counted' }),
    sure: z.int(),
    box: z.string().nullable(),
    place: z.string().nullable(),
    kind: z.string(),
    text: z.string(),
  })
  .openapi('PlannedBag');
export type PlannedBag = z.infer<typeof PlannedBag>;

export const ImportPreview = z
  .object({
    bags: z.array(PlannedBag),
    skipped: z.array(z.int()).openapi({ description: 'rows that are not a part' }),
    clashes: z
      .array(z.object({ row: z.int(), number: z.int(), with: z.int().nullable() }))
      .openapi({ description: 'rows whose bag number is taken' }),
    duplicates: z.array(z.object({ row: z.int(), of: z.int() })),
  })
  .openapi('ImportPreview');

export const MadeBag = z
  .object({
    row: z.int(),
    bag: z.int(),
    name: z.string().openapi({ description: 'what it is' }),
    box: z.string().nullable(),
    place: z.string().nullable(),
    numbered: z.boolean().openapi({ description: 'the list gave no number: this one is to be written on the bag' }),
    doubts: z.int(),
  })
  .openapi('MadeBag');
export type MadeBag = z.infer<typeof MadeBag>;

export const Imported = z
  .object({
    ...done,
    bags: z.int(),
    parts: z.int(),
    pieces: z.int(),
    first: z.int().nullable(),
    last: z.int().nullable(),
    skipped: z.array(z.int()),
    made: z.array(MadeBag).openapi({ description: 'what to write on which bag: those with doubts first, at most 200' }),
  })
  .openapi('Imported');
export type Imported = z.infer<typeof Imported>;

interface BagToBe {
  readonly row: { readonly row: number; readonly part: { readonly kind: string } };
  readonly text: string;
  readonly number: number;
  readonly quantity: number;
  readonly sure: number;
  readonly toCount: boolean;
  readonly box: string | null;
  readonly place: string | null;
}

/** A bag that an import would make, as it crosses the wire. */
export function plannedBag({ row, text, number, quantity, sure, toCount, box, place }: BagToBe): PlannedBag {
  return {
    row: row.row,
    bag: number,
    quantity: toCount && quantity === 0 ? null : quantity,
    sure,
    box,
    place,
    kind: row.part.kind,
    text,
  };
}
