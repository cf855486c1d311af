import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import type { Lab } from '#db/database.ts';
import { emptyLab } from '#db/empty-lab.ts';
import { homeFolder } from '#db/home.ts';
import { Refused } from '#db/refused.ts';
import { readSetting, writeSetting } from '#db/setting.ts';
import { writeDump } from '#db/write-dump.ts';
import type { Clock } from './action.ts';

export interface ClearedDemo {
  readonly repeat: boolean;
  readonly change: number;
  /** name of the backup in the folder `backups` */
  readonly backup: string;
}

/**
 * Empties a demo lab, after a backup of it, in one transaction: what somebody books meanwhile is either in the backup or waits and
 * finds an empty lab. Throws `Refused` (`not-demo`). The same id again answers the same and clears nothing.
 */
export async function clearDemo(lab: Lab, clock: Clock, id: string): Promise<ClearedDemo> {
  const folder = join(lab.engine === 'sqlite' ? lab.where : homeFolder(), 'backups');
  return lab.transact(async (tx) => {
    const kept = await readSetting(tx, 'cleared');
    const last = kept === null ? null : (JSON.parse(kept) as { readonly id: string; readonly cleared: ClearedDemo }); // as: written below
    if (last?.id === id) return { ...last.cleared, repeat: true };
    if ((await readSetting(tx, 'demo')) === null) throw new Refused('not-demo');
    const backup = `before-clearing-${clock.now().replaceAll(/[:.]/g, '-')}.jsonl`;
    mkdirSync(folder, { recursive: true });
    await writeDump(tx, lab.engine, join(folder, backup));
    const cleared = { repeat: false, change: await emptyLab(tx, lab.engine), backup };
    await writeSetting(tx, 'demo', null);
    await writeSetting(tx, 'cleared', JSON.stringify({ id, cleared }));
    return cleared;
  });
}
