import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { readFile } from '#actions/read-file.ts';
import type { ReadRow } from '#core/bom/bom.ts';
import type { SavedRevision } from './scenario/boards.data.ts';

/** The lines of a revision, read from its file as every file is read; without those that came in a later revision. */
export function boardLines({ file, without }: Pick<SavedRevision, 'file' | 'without'>): ReadRow[] {
  const read = readFile(readFileSync(join(import.meta.dirname, 'boms', file)), file);
  if (!read.ok) throw new Error(`the demo's ${file} can't be read: ${JSON.stringify(read.refusal)}`);
  return read.value.rows.filter(({ refs }) => !refs.some((ref) => without.includes(ref)));
}
