import { createWriteStream } from 'node:fs';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Readable } from 'node:stream';
import { pipeline } from 'node:stream/promises';

/** A folder to put something down in, taken away once the work is done. */
export async function withFolder<T>(work: (folder: string) => Promise<T>): Promise<T> {
  const folder = await mkdtemp(join(tmpdir(), 'bagatelle-spool-'));
  try {
    return await work(folder);
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

/** Writes the body of a request to a file as it comes, so that none is held in memory. */
export async function spool(request: Request, file: string): Promise<string> {
  const { body } = request;
  await pipeline(body ? Readable.fromWeb(body) : Readable.from([]), createWriteStream(file, { flags: 'wx' }));
  return file;
}
