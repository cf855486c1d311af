import { z } from '@hono/zod-openapi';
import { actId } from './acts.ts';

/** What every page shows of the lab, and who is looking. */
export const LabView = z
  .object({
    bags: z.int(),
    exhausted: z.int(),
    toCount: z.int(),
    boxes: z.int(),
    boards: z.int(),
    kits: z.int().openapi({ description: 'kits that are open' }),
    empty: z.boolean().openapi({ description: 'nothing was ever done in it: it may begin in any way' }),
    demo: z.boolean().openapi({ description: 'it is the demo lab, which may be cleared' }),
    you: z.object({ name: z.string(), here: z.boolean() }).openapi({ description: 'here: at the machine that serves the lab' }),
    lan: z.boolean().openapi({ description: 'other devices may reach it' }),
  })
  .openapi('Lab');
export type LabView = z.infer<typeof LabView>;

export const BeginRequest = z.strictObject({ id: actId }).openapi('BeginRequest');
export const Begun = z.object({ change: z.int(), bags: z.int(), boards: z.int() }).openapi('Begun');
export type Begun = z.infer<typeof Begun>;
export const Cleared = z
  .object({ change: z.int(), backup: z.string().nullable().openapi({ description: 'name of the backup made before' }) })
  .openapi('Cleared');
export type Cleared = z.infer<typeof Cleared>;
