import { closeSync, fsyncSync, openSync, renameSync, rmSync, statSync, writeFileSync } from 'node:fs';
import type { Outcome, Refusal } from '#core/stock/refusal.ts';

const BUFFERED = 256 * 1024;

/** Writes a new file whole or not at all: beside its place first, then moved there. A file that is there is never written over. */
export async function writeFile(
  path: string,
  lines: AsyncIterable<string> | Iterable<string>,
): Promise<Outcome<{ readonly lines: number }>> {
  const there = statSync(path, { throwIfNoEntry: false });
  if (there?.isDirectory()) return no({ field: 'FILE', received: '', expected: `a new file, and ${path} is a folder` });
  if (there) return no({ field: 'FILE', received: path, expected: 'a file that is not there yet' });
  const beside = `${path}.${process.pid}.part`;
  let file: number;
  try {
    file = openSync(beside, 'wx');
  } catch {
    return no({ field: 'FILE', received: path, expected: 'a place that can be written to' });
  }
  let count = 0;
  let waiting = '';
  try {
    for await (const line of lines) {
      count += 1;
      waiting += `${line}\n`;
      if (waiting.length > BUFFERED) {
        writeFileSync(file, waiting);
        waiting = '';
      }
    }
    writeFileSync(file, waiting);
    fsyncSync(file);
  } catch (error) {
    closeSync(file);
    rmSync(beside, { force: true });
    throw error;
  }
  closeSync(file);
  renameSync(beside, path);
  return { ok: true, value: { lines: count } };
}

function no(args: Refusal['args']): Outcome<never> {
  return { ok: false, refusal: { code: 'not-valid', args } };
}
