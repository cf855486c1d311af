import { Refused } from './refused.ts';

/** By code of Node, SQLite or PostgreSQL: what the disk refuses. 53100 is `disk_full`, 25006 a database that only reads. */
const DISK: readonly (readonly [code: RegExp, refusal: 'disk-full' | 'disk-read-only'])[] = [
  [/^(?:ENOSPC|EDQUOT|sqlite 13|53100)$/, 'disk-full'],
  [/^(?:EROFS|sqlite 8|25006)$/, 'disk-read-only'],
];

/** `sqlite 13`, `ENOSPC`, `53100`; '' for an error without a code. */
export function codeOf(error: unknown): string {
  if (!(error instanceof Error)) return '';
  if ('errcode' in error) return `sqlite ${Number(error.errcode) & 0xff}`;
  return 'code' in error ? String(error.code) : '';
}

/** A disk that is full or can't be written to, as a refusal; anything else stays what it is. */
export function diskTrouble(error: unknown): unknown {
  const code = codeOf(error);
  const found = DISK.find(([pattern]) => pattern.test(code));
  return found ? new Refused(found[1]) : error;
}
