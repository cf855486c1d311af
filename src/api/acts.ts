import { z } from '@hono/zod-openapi';

export const actId = z
  .guid()
  .toLowerCase()
  .openapi({ description: 'any UUID from the caller: the same id again is the same act, done once' });
export const note = z.string().max(1000).exactOptional();
export const happenedAt = z.iso
  .datetime({ offset: true })
  .exactOptional()
  .openapi({ description: 'when it happened, where that was not just now' });

export const Warned = z
  .object({ code: z.string(), text: z.string(), args: z.record(z.string(), z.union([z.string(), z.number()])) })
  .openapi('Warning');

export const Balance = z.object({ bag: z.int(), onHand: z.int(), sure: z.int(), free: z.int() }).openapi('Balance');

/** What every act answers with. */
export const done = {
  id: z.guid(),
  warnings: z.array(Warned),
  change: z.int().openapi({ description: 'change number of the act' }),
};

export const ActView = z
  .object({
    act: z.string(),
    kind: z.string(),
    who: z.string(),
    happenedAt: z.string(),
    change: z.int(),
    undoes: z.string().nullable(),
    undoneBy: z.string().nullable(),
    note: z.string().nullable(),
    movements: z.int(),
    pieces: z.int().openapi({ description: 'what it changed on hand, all bags together' }),
    for: z.string().nullable().openapi({ description: 'board or build that it was for' }),
    bags: z.array(z.int()).openapi({ description: 'the first few that it moved' }),
    more: z.int().openapi({ description: 'further bags that it moved' }),
  })
  .openapi('Act');
export type ActView = z.infer<typeof ActView>;
export type Warned = z.infer<typeof Warned>;
