import { z } from '@hono/zod-openapi';
import { actId } from './acts.ts';

export const DeviceView = z
  .object({
    id: z.string(),
    name: z.string().openapi({ description: 'stands as `who` in the ledger' }),
    paired: z.string(),
    seen: z.string().nullable(),
    you: z.boolean(),
  })
  .openapi('Device');
export type DeviceView = z.infer<typeof DeviceView>;

export const DevicesView = z
  .object({
    lan: z.boolean().openapi({ description: 'the lab was opened to the network' }),
    addresses: z.array(z.string()),
    devices: z.array(DeviceView),
  })
  .openapi('Devices');
export type DevicesView = z.infer<typeof DevicesView>;

/** An invitation for one device; its code works once, and for a few minutes. */
export const Invite = z
  .object({
    url: z.string(),
    code: z.string(),
    until: z.string(),
    squares: z.array(z.string()).openapi({ description: 'the address as a QR code: rows of 0 and 1' }),
  })
  .openapi('Invite');
export type Invite = z.infer<typeof Invite>;

export const PairRequest = z
  .strictObject({
    id: actId.exactOptional(),
    code: z.string().min(1).max(100),
    name: z
      .string()
      .trim()
      .min(1)
      .max(60)
      .openapi({ description: 'stands as `who` in the ledger; without signs that nobody sees' }),
  })
  .openapi('PairRequest');
export const Paired = z.object({ device: z.string(), name: z.string() }).openapi('Paired');
export type Paired = z.infer<typeof Paired>;
export const Forgotten = z.object({ device: z.string() }).openapi('Forgotten');
