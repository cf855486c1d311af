import { z } from '@hono/zod-openapi';
import type { RefusalCode } from '#core/stock/refusal.ts';

/** What is refused at the door, before any act: the wire's own codes. */
export type WireCode =
  | 'wire-host'
  | 'wire-origin'
  | 'wire-type'
  | 'wire-json'
  | 'wire-field'
  | 'wire-too-large'
  | 'wire-address-too-long'
  | 'wire-other-lab'
  | 'wire-no-such-page'
  | 'wire-method'
  | 'wire-change-ahead'
  | 'wire-not-paired'
  | 'wire-here-only'
  | 'wire-not-lan'
  | 'wire-no-network'
  | 'wire-code'
  | 'wire-too-many-tries'
  | 'wire-name-taken'
  | 'wire-no-such-device'
  | 'wire-fault';

/** Every refusal has its HTTP status here; a new code that has none does not compile. */
export const STATUS = {
  'no-such-bag': 404,
  'no-such-build': 404,
  'no-such-board': 404,
  'no-such-act': 404,
  'no-such-box': 404,
  'no-such-draft': 404,
  'draft-kept': 410,
  'draft-changed': 409,
  'box-left-out': 409,
  'box-twice': 422,
  'not-enough': 409,
  'in-hand-large': 409,
  'below-zero': 409,
  'undone-already': 409,
  'not-undoable': 409,
  'id-reused': 422,
  'number-taken': 409,
  'not-whole': 422,
  'not-positive': 422,
  'out-of-range': 422,
  'not-valid': 422,
  'plan-stale': 409,
  override: 409,
  'nothing-made': 409,
  'takes-open': 409,
  'picked-meanwhile': 409,
  'made-unknown': 409,
  'nothing-to-do': 422,
  'build-state': 409,
  'newer-schema': 503,
  'bad-home': 503,
  'not-empty': 409,
  'not-demo': 409,
  busy: 503,
  'backup-bad': 422,
  'disk-full': 507,
  'disk-read-only': 503,
  'disk-fault': 503,
  'lab-damaged': 503,
  'several-builds': 409,
  'file-missing': 422,
  'file-empty': 422,
  'file-no-table': 422,
  'file-binary': 422,
  'file-too-large': 413,
  'no-such-column': 422,
  'file-too-slow': 422,
  'too-many-columns': 422,
  'cell-too-long': 422,
  'too-many-refs': 422,
  'number-impossible': 422,
  'cells-impossible': 422,
  'wire-host': 403,
  'wire-origin': 403,
  'wire-type': 415,
  'wire-json': 400,
  'wire-field': 422,
  'wire-too-large': 413,
  'wire-address-too-long': 414,
  'wire-other-lab': 409,
  'wire-no-such-page': 404,
  'wire-method': 405,
  'wire-change-ahead': 409,
  'wire-not-paired': 401,
  'wire-here-only': 403,
  'wire-not-lan': 409,
  'wire-no-network': 409,
  'wire-code': 403,
  'wire-too-many-tries': 429,
  'wire-name-taken': 409,
  'wire-no-such-device': 404,
  'wire-fault': 500,
} as const satisfies Record<RefusalCode | WireCode, number>;

export type ProblemCode = keyof typeof STATUS;

/** Problem details (RFC 9457); beside its members stand the refusal's own arguments, such as `bag`, `row` or `field`. */
export const Problem = z
  .object({
    type: z.string().openapi({ example: 'urn:bagatelle:problem:not-enough' }),
    title: z.string().openapi({ example: 'not enough' }),
    status: z.int(),
    detail: z.string().openapi({ description: 'one sentence for a person: what is wrong and what to do next' }),
    code: z.string().openapi({ example: 'not-enough' }),
  })
  .catchall(z.union([z.string(), z.number()]))
  .openapi('Problem');
export type Problem = z.infer<typeof Problem>;

const content = { 'application/problem+json': { schema: Problem } };

/** Every route may answer with a problem. */
export const PROBLEMS = {
  '4XX': { description: 'refused; nothing has changed', content },
  '5XX': { description: 'not now, or a fault of Bagatelle', content },
} as const;
