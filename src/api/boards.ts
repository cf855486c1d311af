import { z } from '@hono/zod-openapi';
import { actId, done, note } from './acts.ts';

const Revision = z.object({ id: z.string(), name: z.string(), source: z.string().nullable(), lines: z.int(), saved: z.string() });

export const BoardView = z.object({ id: z.string(), name: z.string(), revisions: z.array(Revision) }).openapi('Board');

export const BoardSaved = z.object({ ...done, board: z.string(), revision: z.string(), lines: z.int() }).openapi('BoardSaved');

export const ChoiceRequest = z
  .strictObject({
    id: actId,
    demand: z.string().min(1).max(2000).openapi({ description: 'what a line asks for, as /api/boards/{board}/lines names it' }),
    bag: z.int().positive().nullable().openapi({ description: 'null takes the choice back' }),
    accept: z.boolean().default(true).openapi({ description: 'what is to be checked about it is accepted' }),
    row: z.int().positive().exactOptional().openapi({ description: 'the line that is meant, where several have the demand' }),
    reason: z.string().min(1).max(1000).exactOptional().openapi({ description: 'why a bag is taken that does not serve' }),
    note,
  })
  .openapi('ChoiceRequest');

export const Chosen = z
  .object({ ...done, board: z.string(), demand: z.string(), bag: z.int().nullable(), accept: z.boolean() })
  .openapi('Chosen');
