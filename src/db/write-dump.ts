import { existsSync } from 'node:fs';
import { open, rename, rm } from 'node:fs/promises';
import { diskTrouble } from './disk-trouble.ts';
import { dumpLab } from './dump.ts';
import type { Engine, Tx } from './engine.ts';
import { Refused } from './refused.ts';

const LINES_AT_ONCE = 2000;

/** Writes the dump of a transaction's moment beside its place first, then moves it there. Answers the number of its lines. */
export async function writeDump(tx: Tx, engine: Engine, file: string): Promise<number> {
  if (existsSync(file)) throw notThere(file, 'a file that is not there yet');
  const beside = `${file}.${process.pid}.part`;
  try {
    const lines = await writeLines(dumpLab(tx, engine), beside);
    await rename(beside, file);
    return lines;
  } catch (error) {
    await rm(beside, { force: true });
    throw error;
  }
}

async function writeLines(dump: AsyncIterable<string>, file: string): Promise<number> {
  const out = await open(file, 'wx').catch((error: unknown) => {
    const trouble = diskTrouble(error);
    throw trouble instanceof Refused ? trouble : notThere(file, 'a place that can be written to');
  });
  let count = 0;
  let waiting: string[] = [];
  try {
    for await (const line of dump) {
      count += 1;
      waiting.push(`${line}\n`);
      if (waiting.length < LINES_AT_ONCE) continue;
      await out.write(waiting.join(''));
      waiting = [];
    }
    await out.write(waiting.join(''));
    await out.sync();
    return count;
  } finally {
    await out.close();
  }
}

function notThere(received: string, expected: string): Refused {
  return new Refused('not-valid', { field: 'FILE', received, expected });
}
