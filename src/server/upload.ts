import type { Context } from 'hono';

/** The bytes of an uploaded file; the size was looked at before. */
export async function bytesOf(c: Context): Promise<Uint8Array> {
  return new Uint8Array(await c.req.arrayBuffer());
}
