import type { Refusal } from '#core/stock/refusal.ts';
import { Refused } from './refused.ts';

/** Why a file is no backup that can be restored. */
type BackupFault = 'head' | 'line' | 'number' | 'row' | 'rows' | 'digest' | 'cut-short' | 'goes-on' | 'unproved';

/** A backup that is refused; the whole restore is rolled back by it. */
export function backupBad(why: BackupFault, args: Refusal['args'] = {}): Refused {
  return new Refused('backup-bad', { why, ...args });
}
