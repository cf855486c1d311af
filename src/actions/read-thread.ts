import { parentPort } from 'node:worker_threads';
import type { ColumnRole } from '#core/bom/columns.ts';
import type { Outcome } from '#core/stock/refusal.ts';
import type { Reply } from '#solver/job-line.ts';
import { readFile, type FileReading } from './read-file.ts';

export interface ReadJob {
  readonly bytes: Uint8Array;
  readonly fileName: string;
  readonly told?: ReadonlyMap<string, ColumnRole>;
}

parentPort?.on('message', ({ bytes, fileName, told }: ReadJob) => {
  const reply = (answer: Reply<Outcome<FileReading>>): void => parentPort?.postMessage(answer, []);
  try {
    reply({ answer: readFile(bytes, fileName, told) });
  } catch (error) {
    reply({ fault: error instanceof Error ? (error.stack ?? error.message) : String(error) });
  }
});
