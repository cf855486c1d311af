import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Worker } from 'node:worker_threads';
import { fillLab, type Filled } from '#actions/fill-lab.ts';
import type { Lab } from '#db/database.ts';

/**
 * Fills an empty lab with the demo, whole or not at all: its many acts are told to a lab that is thrown away, in a thread of its
 * own, so that whoever else asks is answered meanwhile; then that lab is put in place as a backup is.
 */
export async function beginDemo(lab: Lab, id: string): Promise<Filled> {
  const folder = await mkdtemp(join(tmpdir(), 'bagatelle-demo-'));
  try {
    return await fillLab(lab, { id, demo: true }, () => toldApart(folder));
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

async function toldApart(folder: string): Promise<string> {
  const worker = new Worker(new URL('./fill-thread.ts', import.meta.url), { workerData: folder });
  try {
    return await new Promise<string>((told, failed) => {
      worker.once('message', (file: string) => told(file));
      worker.once('error', failed);
      worker.once('exit', () => failed(new Error('the thread that tells the demo ended without it')));
    });
  } finally {
    await worker.terminate();
  }
}
