import { open, type FileHandle } from 'node:fs/promises';
import { backupBad } from './backup-bad.ts';
import { checkLab } from './check.ts';
import type { Lab, Tx } from './database.ts';
import { restoreLab } from './dump.ts';
import { Refused } from './refused.ts';
import { writeDump } from './write-dump.ts';

/**
 * Writes the whole lab, as it is at one moment, to a file that is there whole or not at all. Answers the number of its lines.
 * A file that is there is never written over (`not-valid`).
 */
export async function backupLab(lab: Lab, file: string): Promise<number> {
  return lab.read((tx) => writeDump(tx, lab.engine, file));
}

/**
 * Fills an empty lab from a backup, whole or not at all; what does not prove itself (`checkLab`) is refused. `last` is done in
 * the same transaction, as its last.
 */
export async function restoreFile(
  lab: Lab,
  file: string,
  last: (tx: Tx) => Promise<void> = () => Promise.resolve(),
): Promise<void> {
  const source = await open(file).catch(() => null);
  if (!source) throw new Refused('file-missing', { file });
  try {
    await lab.transact(async (tx) => {
      await restoreLab(tx, linesOf(source));
      const [first] = await checkLab(tx);
      if (first) throw backupBad('unproved', { fault: `${first.code} ${JSON.stringify(first.args)}` });
      await last(tx);
    });
  } finally {
    await source.close();
  }
}

/** Begins to read only when the first line is asked for: a line reader drops what comes before somebody listens. */
async function* linesOf(source: FileHandle): AsyncGenerator<string> {
  yield* source.readLines({ autoClose: false });
}
