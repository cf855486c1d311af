import { readFile as readBytes, stat } from 'node:fs/promises';
import { basename } from 'node:path';
import { readFile, type FileReading } from '#actions/read-file.ts';
import type { ColumnRole } from '#core/bom/columns.ts';
import type { Outcome } from '#core/stock/refusal.ts';

const MOST_BYTES = 64 * 1024 * 1024;

/** Reads a file of this machine to rows; its refusal names it as it was typed. `told` corrects what its columns mean. */
export async function readPath(path: string, told?: ReadonlyMap<string, ColumnRole>): Promise<Outcome<FileReading>> {
  const known = await stat(path).catch(() => null);
  if (!known?.isFile()) return { ok: false, refusal: { code: 'file-missing', args: { file: path } } };
  if (known.size > MOST_BYTES)
    return { ok: false, refusal: { code: 'file-too-large', args: { file: path, size: known.size, most: MOST_BYTES } } };
  const bytes = await readBytes(path).catch(() => null);
  return bytes ? readFile(bytes, path, told) : { ok: false, refusal: { code: 'file-missing', args: { file: path } } };
}

/** `boms/blinker-2.csv` -> `blinker-2`: what a board is called that nobody named. */
export function nameOfFile(path: string): string {
  return basename(path).replace(/\.[^.]+$/, '') || basename(path);
}
