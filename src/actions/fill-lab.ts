import { restoreFile } from '#db/backup.ts';
import { readChange } from '#db/change.ts';
import type { Lab } from '#db/database.ts';
import { isEmptyLab, readLabCounts } from '#db/lab-counts.ts';
import { Refused } from '#db/refused.ts';
import { readSetting, writeSetting } from '#db/setting.ts';

/** A lab that was filled at once, from a backup or with the demo. */
export interface Filled {
  readonly repeat: boolean;
  readonly change: number;
  readonly bags: number;
  readonly boards: number;
}

interface Filling {
  readonly id: string;
  /** it is the demo, and may be cleared */
  readonly demo: boolean;
}

/**
 * Fills an empty lab from the backup that `make` gives, in one transaction: it is filled whole or not at all, whatever happens.
 * Throws `Refused` (`not-empty`, `backup-bad`, `newer-schema`). The same id again answers the same and makes nothing.
 */
export async function fillLab(lab: Lab, { id, demo }: Filling, make: () => Promise<string>): Promise<Filled> {
  const before = await filledBy(lab, id);
  if (before) return before;
  if (!(await lab.read(isEmptyLab))) throw new Refused('not-empty');
  const file = await make();
  let filled: Filled | null = null;
  try {
    await restoreFile(lab, file, async (tx) => {
      const { bags, boards } = await readLabCounts(tx);
      filled = { repeat: false, change: await readChange(tx), bags, boards };
      if (demo) await writeSetting(tx, 'demo', id);
      await writeSetting(tx, 'filled', JSON.stringify({ id, filled }));
    });
  } catch (error) {
    const meanwhile = await filledBy(lab, id); // the same was sent twice at once
    if (!meanwhile) throw error;
    return meanwhile;
  }
  if (!filled) throw new Error('a restore did not come to its last step');
  return filled;
}

async function filledBy(lab: Lab, id: string): Promise<Filled | null> {
  const kept = await lab.read((tx) => readSetting(tx, 'filled'));
  if (kept === null) return null;
  const last = JSON.parse(kept) as { readonly id: string; readonly filled: Filled }; // as: written above
  return last.id === id ? { ...last.filled, repeat: true } : null;
}
