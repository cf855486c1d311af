import { DatabaseSync, type SQLInputValue, type StatementSync } from 'node:sqlite';

/** One statement as it was run, with its parameters; `rows` where it answered rows. */
export interface Recorded {
  readonly text: string;
  readonly inputs: readonly SQLInputValue[];
  readonly rows: boolean;
}

type Prepare = (text: string) => StatementSync;

/** Runs something and answers what node:sqlite ran for it, in order: one list for each call of `next`. */
export async function recordStatements(during: (next: () => void) => Promise<void>): Promise<Recorded[][]> {
  const lists: Recorded[][] = [];
  const prototype = DatabaseSync.prototype as { prepare: Prepare }; // as: patched for the length of this call only
  const genuine = prototype.prepare;
  prototype.prepare = function (this: DatabaseSync, text: string): StatementSync {
    const statement = genuine.call(this, text);
    const [all, run] = [statement.all.bind(statement), statement.run.bind(statement)];
    statement.all = ((...inputs: SQLInputValue[]) => {
      lists.at(-1)?.push({ text, inputs, rows: true });
      return all(...inputs);
    }) as StatementSync['all']; // as: positional inputs are all that the adapter passes
    statement.run = ((...inputs: SQLInputValue[]) => {
      lists.at(-1)?.push({ text, inputs, rows: false });
      return run(...inputs);
    }) as StatementSync['run']; // as: the same
    return statement;
  };
  try {
    await during(() => void lists.push([]));
  } finally {
    prototype.prepare = genuine;
  }
  return lists;
}

/** Runs recorded statements on a connection, each text prepared once. */
export function replay(db: DatabaseSync, kept: Map<string, StatementSync>, recorded: readonly Recorded[]): void {
  for (const { text, inputs, rows } of recorded) {
    let statement = kept.get(text);
    if (!statement) kept.set(text, (statement = db.prepare(text)));
    if (rows) statement.all(...inputs);
    else statement.run(...inputs);
  }
}
