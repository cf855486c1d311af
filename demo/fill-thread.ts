import { join } from 'node:path';
import { parentPort, workerData } from 'node:worker_threads';
import { backupLab } from '#db/backup.ts';
import { openDatabase } from '#db/database.ts';
import { fillDemo } from './fill.ts';

/** Tells the demo into a lab of its own in an empty folder, and answers the backup of it. */
async function toldInto(folder: string): Promise<string> {
  const lab = await openDatabase({ home: join(folder, 'lab') });
  try {
    await fillDemo(lab);
    const file = join(folder, 'demo.jsonl');
    await backupLab(lab, file);
    return file;
  } finally {
    await lab.close();
  }
}

parentPort?.postMessage(await toldInto(String(workerData)), []);
