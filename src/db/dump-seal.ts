import { createHash } from 'node:crypto';
import { backupBad } from './backup-bad.ts';

/** The last line of a dump: how many rows each table has, and the SHA-256 of all lines before, each with a line feed. */
interface Seal {
  readonly rows: Readonly<Record<string, number>>;
  readonly sha256: string;
}

/** Adds up the lines of a dump as they are written or read. */
export interface Sealer {
  /** a head, or a row of a table */
  add(line: string, table: string | null): void;
  /** the end line of what was added */
  line(): string;
  /** refuses (`backup-bad`) an end line that does not fit what was added */
  check(seal: unknown): void;
}

/** Proves that a dump is whole and unchanged, by its end line: `["end",{"rows":{"act":2,…},"sha256":"…"}]`. */
export function sealer(tables: readonly string[]): Sealer {
  const hash = createHash('sha256');
  const rows: Record<string, number> = Object.fromEntries(tables.map((table) => [table, 0]));
  return {
    add(line, table) {
      hash.update(`${line}\n`);
      if (table !== null) rows[table] = (rows[table] ?? 0) + 1;
    },
    line: () => JSON.stringify(['end', { rows, sha256: hash.copy().digest('hex') } satisfies Seal]),
    check(seal) {
      if (!isSeal(seal)) throw backupBad('line', { text: JSON.stringify(seal).slice(0, 60) });
      for (const table of tables) {
        const [found, wanted] = [rows[table] ?? 0, seal.rows[table] ?? 0];
        if (found !== wanted) throw backupBad('rows', { table, found, wanted });
      }
      if (hash.copy().digest('hex') !== seal.sha256) throw backupBad('digest');
    },
  };
}

function isSeal(value: unknown): value is Seal {
  if (typeof value !== 'object' || value === null || !('rows' in value) || !('sha256' in value)) return false;
  return typeof value.sha256 === 'string' && typeof value.rows === 'object' && value.rows !== null;
}
