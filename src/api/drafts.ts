import { z } from '@hono/zod-openapi';
import { actId, note } from './acts.ts';
import { Gloss, Said } from './bags.ts';
import { rowNumber } from './figures.ts';

const doubtField = z.string().openapi({ example: 'package' });

/** A column and what it is taken for, with the evidence in words. */
export const DraftColumn = z
  .object({
    column: z.int().openapi({ description: 'from 1' }),
    header: z.string(),
    role: z.string(),
    sure: z.enum(['sure', 'likely', 'check', 'told', 'kept']),
    evidence: z.string().openapi({ example: '18 of 21 read as a value' }),
    samples: z.array(z.string()).openapi({ description: 'its cells in the first rows, in their order' }),
  })
  .openapi('DraftColumn');
export type DraftColumn = z.infer<typeof DraftColumn>;

/** A doubt as a question; each answer goes back as the text of its field. */
export const DraftDoubt = z
  .object({
    field: doubtField,
    why: z.string(),
    settle: z.string(),
    answers: z.array(z.object({ text: z.string(), says: z.string() })).openapi({ description: 'likely answers, as buttons' }),
    right: z.string().nullable().openapi({ description: 'what "right as read" means here; null where nothing was read' }),
    stops: z.boolean().openapi({ description: 'nothing can be kept while it is open' }),
  })
  .openapi('DraftDoubt');
export type DraftDoubt = z.infer<typeof DraftDoubt>;

/** What a person said of a field of a row: the text that should stand there, or that it is right as it was read. */
export const DraftAnswer = z
  .strictObject({
    row: rowNumber,
    field: doubtField.min(1).max(40),
    text: z.string().max(1000).nullable().openapi({ description: 'null: right as it was read' }),
  })
  .openapi('DraftAnswer');
export type DraftAnswer = z.infer<typeof DraftAnswer>;

export const DraftRow = z
  .object({
    row: z.int(),
    refs: z.array(z.string()),
    quantity: z.number().nullable(),
    about: z.boolean().openapi({ description: 'the quantity is an estimate, of which plans promise nothing' }),
    fitted: z.boolean(),
    kind: z.string(),
    text: z.string(),
    said: Said,
    gloss: z.array(Gloss),
    bag: z.int().nullable().openapi({ description: 'of a list: the number that its bag gets' }),
    box: z.string().nullable(),
    place: z.string().nullable(),
    out: z.boolean().openapi({ description: 'left out by hand' }),
    part: z.boolean().openapi({ description: 'false: it is not a part, and makes no bag' }),
    doubts: z.array(DraftDoubt),
    answers: z.array(DraftAnswer),
  })
  .openapi('DraftRow');
export type DraftRow = z.infer<typeof DraftRow>;

/** A file that was brought in, as it is read with what was told of it so far. Nothing of it is kept as stock or board yet. */
export const DraftView = z
  .object({
    draft: z.string(),
    version: z.int().openapi({ description: 'goes up with every change of what is told of it' }),
    name: z.string().openapi({ description: 'name of the file' }),
    is: z.enum(['list', 'bom']),
    bytes: z.int(),
    notes: z.array(z.string()).openapi({ description: 'what is to know of the file as a whole' }),
    columns: z.array(DraftColumn),
    roles: z.array(z.object({ role: z.string(), word: z.string() })).openapi({ description: 'what a column can be, in words' }),
    rows: z.array(DraftRow).openapi({ description: 'in the order of the file; of a long one not all' }),
    more: z.int().openapi({ description: 'further rows that wait for nothing' }),
    moreDoubted: z.int().openapi({ description: 'further rows with doubts: they come as others get their answer' }),
    doubts: z.int().openapi({ description: 'open doubts' }),
    box: z.string().nullable().openapi({ description: 'of a list: box for rows that name none' }),
    board: z.string().nullable().openapi({ description: 'of a BOM: name of the board' }),
    revision: z.string().nullable().openapi({ description: 'of a BOM: the revision that it becomes' }),
    known: z.boolean().openapi({ description: 'of a BOM: the board is there already' }),
    bags: z.int().openapi({ description: 'of a list: bags that it makes' }),
    numbers: z
      .object({ first: z.int(), last: z.int() })
      .nullable()
      .openapi({ description: 'of a list: lowest and highest number of its bags' }),
    pieces: z.int(),
    trouble: z.string().nullable().openapi({ description: 'why it cannot be kept as it stands, and what to do' }),
  })
  .openapi('Draft');
export type DraftView = z.infer<typeof DraftView>;

export const DraftList = z
  .object({
    drafts: z.array(
      z.object({ draft: z.string(), name: z.string(), is: z.enum(['list', 'bom']), when: z.string(), rows: z.int() }),
    ),
  })
  .openapi('Drafts');
export type DraftList = z.infer<typeof DraftList>;

export const DraftQuery = z.object({
  id: actId
    .exactOptional()
    .openapi({ description: 'any UUID from the caller: the same file under the same id is the same draft' }),
  name: z.string().min(1).max(255),
  is: z.enum(['list', 'bom']),
});

/** Only what is said changes; an answer that is sent again replaces the former one. */
export const DraftChange = z
  .strictObject({
    columns: z.record(z.string().regex(/^\d{1,4}$/), z.string()).exactOptional(),
    answers: z.array(DraftAnswer).max(10_000).exactOptional(),
    forget: z.array(z.strictObject({ row: rowNumber, field: doubtField })).exactOptional(),
    out: z.array(z.strictObject({ row: rowNumber, out: z.boolean() })).exactOptional(),
    box: z.string().max(100).nullable().exactOptional(),
    board: z.string().min(1).max(200).exactOptional(),
    revision: z.string().min(1).max(100).nullable().exactOptional(),
  })
  .openapi('DraftChange');
export type DraftChange = z.infer<typeof DraftChange>;

export const KeepDraft = z
  .strictObject({
    id: actId,
    saw: z
      .int()
      .positive()
      .exactOptional()
      .openapi({ description: 'version that was looked at: where another changed it since, it is not kept' }),
    note,
  })
  .openapi('KeepDraft');
