import type { Kysely, Transaction } from 'kysely';
import type { Schema } from './schema.ts';

export type Engine = 'sqlite' | 'postgres';
/** What every query is given; no module keeps a database of its own. */
export type Tx = Transaction<Schema>;

/** What an engine must do for the lab; the rest is the same for both. */
export interface EngineParts {
  readonly engine: Engine;
  /** folder or address, without a password, for messages */
  readonly where: string;
  readonly writer: Kysely<Schema>;
  /** runs once at the start of every writing transaction: nobody else writes until it ends */
  lock(tx: Tx): Promise<void>;
  read<T>(fn: (tx: Tx) => Promise<T>): Promise<T>;
  /** true for "somebody else writes just now": the transaction has not begun and may be tried again */
  isBusy(error: unknown): boolean;
  /** calls back whenever the database may have changed, in this process or another */
  listen(onMaybe: () => void): () => void;
  /** tells other processes, inside the transaction, that it takes this number; null where they see it by themselves */
  readonly announce: ((tx: Tx, change: number) => Promise<void>) | null;
  /** a copy to go back to, made before migrations change what is there */
  backup(label: string): Promise<void>;
  close(): Promise<void>;
}
