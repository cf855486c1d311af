import type { Compilable, CompiledQuery } from 'kysely';
import type { Tx } from './engine.ts';

type Value = string | number | null;
type Put<Input> = <K extends keyof Input>(key: K) => Input[K];

/** Stands where a value of the input goes. */
class Place {
  readonly key: PropertyKey;
  constructor(key: PropertyKey) {
    this.key = key;
  }
}

/**
 * A query that every act runs: built and compiled once for each open lab, since building costs as much as SQLite's own work.
 * `put('id')` in the builder marks where `input.id` goes.
 */
export function builtOnce<Input extends Readonly<Record<string, Value>>, Row>(
  build: (tx: Tx, put: Put<Input>) => Compilable<Row>,
): (tx: Tx, input: Input) => Promise<readonly Row[]> {
  const built = new WeakMap<object, CompiledQuery<Row>>();
  const put: Put<Input> = (key) => new Place(key) as unknown as Input[typeof key]; // as: replaced before the query runs
  return async (tx, input) => {
    const lab = tx.getExecutor().adapter;
    let query = built.get(lab);
    if (!query) built.set(lab, (query = build(tx, put).compile()));
    const parameters = query.parameters.map((value) => (value instanceof Place ? input[String(value.key)] : value));
    return (await tx.executeQuery<Row>({ ...query, parameters })).rows;
  };
}
