import type { ColumnRole } from '#core/bom/columns.ts';
import { refuse, type Outcome } from '#core/stock/refusal.ts';
import { JobLine, TookTooLong } from '#solver/job-line.ts';
import type { FileReading } from './read-file.ts';
import type { ReadJob } from './read-thread.ts';

/** Ten times what the largest file that is taken needs on a slow machine. */
const MOST_SECONDS = 30;

const thread = new JobLine<ReadJob, Outcome<FileReading>>(new URL('./read-thread.ts', import.meta.url));

/** `readFile` in a thread of its own, so that whoever else asks is answered meanwhile; a file that takes too long is refused. */
export async function readApart(
  bytes: Uint8Array,
  fileName: string,
  { seconds = MOST_SECONDS, told }: { readonly seconds?: number; readonly told?: ReadonlyMap<string, ColumnRole> } = {},
): Promise<Outcome<FileReading>> {
  try {
    return await thread.run({ bytes, fileName, ...(told && { told }) }, { seconds });
  } catch (error) {
    if (error instanceof TookTooLong) return refuse('file-too-slow', { file: fileName, seconds });
    throw error;
  }
}
