import { open, rename, rm, type FileHandle } from 'node:fs/promises';
import { checkLab } from './check.ts';
import type { Lab } from './database.ts';
import { dumpLab, restoreLab } from './dump.ts';
import { Refused } from './refused.ts';

/** Writes the whole lab, as it is at one moment, to a file that is there whole or not at all. Answers the number of its lines. */
export async function backupLab(lab: Lab, file: string): Promise<number> {
  const part = `${file}.part`;
  try {
    const lines = await writeLines(lab, part);
    await rename(part, file);
    return lines;
  } catch (error) {
    await rm(part, { force: true });
    throw error;
  }
}

async function writeLines(lab: Lab, file: string): Promise<number> {
  const out = await open(file, 'w');
  try {
    const lines = await lab.read(async (tx) => {
      let count = 0;
      let waiting: string[] = [];
      for await (const line of dumpLab(tx, lab.engine)) {
        count++;
        waiting.push(`${line}\n`);
        if (waiting.length < 2000) continue;
        await out.write(waiting.join(''));
        waiting = [];
      }
      await out.write(waiting.join(''));
      return count;
    });
    await out.sync();
    return lines;
  } finally {
    await out.close();
  }
}

/** Fills an empty lab from a backup, whole or not at all; what does not prove itself (`checkLab`) is refused. */
export async function restoreFile(lab: Lab, file: string): Promise<void> {
  const source = await open(file).catch(() => null);
  if (!source) throw new Refused('file-missing', { file });
  try {
    await lab.transact(async (tx) => {
      await restoreLab(tx, linesOf(source));
      const [first] = await checkLab(tx);
      if (first)
        throw new Refused('not-valid', {
          field: 'backup',
          received: `${first.code} ${JSON.stringify(first.args)}`,
          expected: 'dump',
        });
    });
  } finally {
    await source.close();
  }
}

/** Begins to read only when the first line is asked for: a line reader drops what comes before somebody listens. */
async function* linesOf(source: FileHandle): AsyncGenerator<string> {
  yield* source.readLines({ autoClose: false });
}
