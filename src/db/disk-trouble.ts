import { Refused } from './refused.ts';

/** By code of Node, SQLite or PostgreSQL: what the disk refuses. 53100 is `disk_full`, 25006 a database that only reads, 58030 an error of the disk, XX001 damaged data. */
const DISK: readonly (readonly [code: RegExp, refusal: 'disk-full' | 'disk-read-only' | 'disk-fault' | 'lab-damaged'])[] = [
  [/^(?:ENOSPC|EDQUOT|sqlite 13|53100)$/, 'disk-full'],
  [/^(?:EROFS|sqlite 8|25006)$/, 'disk-read-only'],
  [/^(?:EIO|sqlite 10|58030)$/, 'disk-fault'],
  [/^(?:sqlite (?:11|26)|XX00[12])$/, 'lab-damaged'],
];

/** `sqlite 13`, `ENOSPC`, `53100`; '' for an error without a code. */
export function codeOf(error: unknown): string {
  if (!(error instanceof Error)) return '';
  // a full disk has no room for the memory that readers share (SQLITE_IOERR_SHMSIZE)
  if ('errcode' in error) return `sqlite ${error.errcode === 4874 ? 13 : Number(error.errcode) & 0xff}`;
  return 'code' in error ? String(error.code) : '';
}

/** A disk that is full, can't be written to or lost what it held, as a refusal; anything else stays what it is. */
export function diskTrouble(error: unknown): unknown {
  const code = codeOf(error);
  const found = DISK.find(([pattern]) => pattern.test(code));
  return found ? new Refused(found[1]) : error;
}
