import { z } from '@hono/zod-openapi';

/** Far more than a lab comes to, far less than a computer counts to exactly. */
const MOST = 1_000_000_000_000;

/** A whole number in an address, in figures alone: `12`; neither `0x10` nor `1e3` nor `-1`. */
export function figures(least: number, most: number = MOST) {
  return z
    .string()
    .regex(/^\d{1,12}$/, { error: 'figures' })
    .transform(Number)
    .pipe(z.int().min(least).max(most))
    .openapi({ type: 'integer', minimum: least, maximum: most });
}

/** Number of a bag in a body; its ceiling is that of `core/stock/bag-number.ts`. */
export const bagNumber = z.int().positive().max(1_000_000);
/** Row of a file or a board in a body. */
export const rowNumber = z.int().positive().max(1_000_000_000);
