import { readCell, type Cell, type CellReader } from './cell.ts';

/** More different texts than a long list has; at so many, what was remembered is forgotten. */
const MOST = 50_000;

/** What was read before for the same key, else what `read` gives now. `null` can be remembered too. */
export function remembered<T extends object | null>(known: Map<string, T>, key: string, read: () => T): T {
  const before = known.get(key);
  if (before !== undefined) return before;
  if (known.size >= MOST) known.clear();
  const made = read();
  known.set(key, made);
  return made;
}

/** `readCell` for the rows of one file: equal cells are read once. What it gives is shared, and never changed. */
export function rememberingCells(): CellReader {
  const known = new Map<string, Cell>();
  return (field, written) => remembered(known, `${field}\0${written}`, () => readCell(field, written));
}
