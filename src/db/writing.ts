import { setTimeout as pause } from 'node:timers/promises';
import type { EngineParts, Tx } from './engine.ts';
import { diskTrouble } from './disk-trouble.ts';
import { Refused } from './refused.ts';

const PATIENCE_MS = 10_000;
const PAUSE_MS = 20;

/** One writing transaction, alone among all processes; waits its turn without blocking the event loop, then gives up as `busy`. */
export async function writing<T>(parts: EngineParts, fn: (tx: Tx) => Promise<T>): Promise<T> {
  const began = performance.now();
  for (;;) {
    let begun = false;
    try {
      return await parts.writer.transaction().execute(async (tx) => {
        begun = true;
        return fn(tx);
      });
    } catch (error) {
      if (begun || !parts.isBusy(error)) throw diskTrouble(error);
      if (performance.now() - began > PATIENCE_MS) throw new Refused('busy');
      await pause(PAUSE_MS);
    }
  }
}
