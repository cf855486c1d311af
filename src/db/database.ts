import { join } from 'node:path';
import { readChange } from './change.ts';
import { codeOf, diskTrouble } from './disk-trouble.ts';
import type { Engine, EngineParts, Tx } from './engine.ts';
import { followChanges } from './follow-changes.ts';
import { homeFolder, homeTrouble } from './home.ts';
import { migrate, refuseNewer } from './migration.ts';
import { Refused } from './refused.ts';
import { openSqlite } from './sqlite.ts';
import { writing } from './writing.ts';

export type { Engine, Tx } from './engine.ts';

/** An open lab. Never await anything but queries of `tx` inside `transact` or `read`. */
export interface Lab {
  readonly engine: Engine;
  /** folder or address, for messages */
  readonly where: string;
  /** one writing transaction, alone; a throw rolls all of it back */
  transact<T>(fn: (tx: Tx) => Promise<T>): Promise<T>;
  /** one snapshot to read from; what is committed meanwhile is not seen */
  read<T>(fn: (tx: Tx) => Promise<T>): Promise<T>;
  /** number of the last committed change */
  change(): Promise<number>;
  /** calls back once with the present change number, then with each newer one, of this process or another; answers how to stop */
  watch(onChange: (change: number) => void): () => void;
  close(): Promise<void>;
}

export type LabPlace = { readonly home: string } | { readonly url: string };

/** Opens a lab and brings its schema up to date. Throws `Refused` (`bad-home`, `newer-schema`, `busy`). */
export async function openDatabase(place: LabPlace): Promise<Lab> {
  const parts = 'url' in place ? await postgresAt(place.url) : opened(checkedHome(place.home));
  try {
    await migrate(parts);
  } catch (error) {
    await parts.close();
    throw unusable(parts.where, error);
  }
  return labOf(parts);
}

/** Its driver is loaded only where it is used: most labs are SQLite. */
async function postgresAt(url: string): Promise<EngineParts> {
  const { openPostgres } = await import('./postgres.ts');
  return openPostgres(url, join(homeFolder(), 'backups'));
}

function opened(home: string): EngineParts {
  try {
    return openSqlite(home);
  } catch (error) {
    throw unusable(home, error);
  }
}

/** By code of Node, SQLite or PostgreSQL: why a place can't hold a lab. Class 08 is a connection, 28 and 3D000 an account or a name. */
const UNUSABLE: readonly (readonly [code: RegExp, why: string])[] = [
  [/^(?:EACCES|EPERM|EROFS|ENOTDIR|EEXIST|sqlite (?:8|14))$/, 'not-writable'],
  [/^sqlite (?:11|26)$/, 'damaged'],
  [/^(?:ECONNREFUSED|ENOTFOUND|ETIMEDOUT|EHOSTUNREACH|EAI_AGAIN|ENOENT|08\w{3}|57P\w\d)$/, 'no-answer'],
  [/^(?:28\w{3}|3D000|42501)$/, 'not-allowed'],
];

/** The world's reasons as a refusal; anything else stays what it is, a fault of ours. */
function unusable(folder: string, error: unknown): unknown {
  const code = codeOf(error);
  const why = UNUSABLE.find(([pattern]) => pattern.test(code))?.[1];
  return why === undefined ? diskTrouble(error) : new Refused('bad-home', { folder, why });
}

function checkedHome(home: string): string {
  const why = homeTrouble(home);
  if (why) throw new Refused('bad-home', { folder: home, why });
  return home;
}

function labOf(parts: EngineParts): Lab {
  const change = (): Promise<number> => parts.read(readChange);
  const followers = followChanges(change, (onMaybe) => parts.listen(onMaybe));
  return {
    engine: parts.engine,
    where: parts.where,
    async transact(fn) {
      const result = await writing(parts, async (tx) => {
        await parts.lock(tx);
        await refuseNewer(tx);
        return parts.announce ? announced(parts.announce, tx, fn) : fn(tx);
      });
      followers.look();
      return result;
    },
    read: (fn) => parts.read(fn),
    change,
    watch: (onChange) => followers.watch(onChange),
    close() {
      followers.close();
      return parts.close();
    },
  };
}

/** Runs the transaction and tells the others its change number, if it took one. */
async function announced<T>(announce: (tx: Tx, change: number) => Promise<void>, tx: Tx, fn: (tx: Tx) => Promise<T>): Promise<T> {
  const before = await readChange(tx);
  const value = await fn(tx);
  const after = await readChange(tx);
  if (after !== before) await announce(tx, after);
  return value;
}
