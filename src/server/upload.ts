import type { Context } from 'hono';
import { readApart } from '#actions/read-apart.ts';
import type { FileReading } from '#actions/read-file.ts';
import type { Outcome } from '#core/stock/refusal.ts';

/** The rows of an uploaded file, read in a thread of its own; the size was looked at before. */
export async function readUpload(c: Context, name: string): Promise<Outcome<FileReading>> {
  return readApart(new Uint8Array(await c.req.arrayBuffer()), name);
}
