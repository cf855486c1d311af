import type { ReadRow } from '#core/bom/bom.ts';
import { nextNumber } from './bag-numbers.ts';
import { partKey } from './part-key.ts';

/** What a list would become, before anything is written. */
export interface ImportPlan {
  readonly bags: readonly PlannedBag[];
  /** rows that would become no bag, since they are not a part */
  readonly skipped: readonly number[];
  /** rows whose number is taken: by a bag of the lab (`with` null) or by an earlier row of the list */
  readonly clashes: readonly { readonly row: number; readonly number: number; readonly with: number | null }[];
  /** rows that hold the same part as an earlier row: allowed, shown before it is done */
  readonly duplicates: readonly { readonly row: number; readonly of: number }[];
}

export interface PlannedBag {
  readonly row: ReadRow;
  readonly number: number;
  readonly quantity: number;
  /** 0 where the list gives an estimate */
  readonly sure: number;
  /** no whole quantity can be read: the bag is made empty and put on the count list */
  readonly toCount: boolean;
  readonly box: string | null;
  readonly place: string | null;
  readonly key: string;
}

const WHOLE = /^0*([1-9]\d{0,11})$/;

/**
 * Plans a stock list: a location that is a whole number is the bag's number, any other is its place; rows without a number get
 * the next ones after all that are taken. Pure, so that a dry run shows just what would be done.
 */
export function planImport(rows: readonly ReadRow[], taken: ReadonlySet<number>, box: string | null): ImportPlan {
  const parts = rows.filter((row) => row.part.kind !== 'not-a-part');
  const stated = statedNumbers(parts, taken);
  let next = Math.max(nextNumber(taken), nextNumber(stated.numbers.values()));
  const bags = parts.map((row): PlannedBag => {
    const stands = stated.numbers.get(row);
    const place = stands === undefined && row.location?.trim() ? row.location.trim() : null;
    return { row, number: stands ?? next++, box, place, key: partKey(row.part), ...amount(row) };
  });
  return {
    bags,
    skipped: rows.filter((row) => row.part.kind === 'not-a-part').map((row) => row.row),
    clashes: stated.clashes,
    duplicates: duplicates(bags),
  };
}

function statedNumbers(rows: readonly ReadRow[], taken: ReadonlySet<number>) {
  const numbers = new Map<ReadRow, number>();
  const clashes: { row: number; number: number; with: number | null }[] = [];
  const seen = new Map<number, number>();
  for (const row of rows) {
    const digits = WHOLE.exec(row.location?.trim() ?? '')?.[1];
    if (digits === undefined) continue;
    const number = Number(digits);
    const earlier = seen.get(number);
    if (taken.has(number) || earlier !== undefined)
      clashes.push({ row: row.row, number, with: taken.has(number) ? null : (earlier ?? null) });
    seen.set(number, row.row);
    numbers.set(row, number);
  }
  return { numbers, clashes };
}

function amount(row: ReadRow): Pick<PlannedBag, 'quantity' | 'sure' | 'toCount'> {
  const estimate = row.doubts.find((doubt) => doubt.code === 'quantity-estimate');
  const stated = row.quantity ?? Number(estimate?.args['taken'] ?? Number.NaN);
  if (!Number.isSafeInteger(stated) || stated < 0) return { quantity: 0, sure: 0, toCount: true };
  return { quantity: stated, sure: estimate ? 0 : stated, toCount: false };
}

function duplicates(bags: readonly PlannedBag[]): ImportPlan['duplicates'] {
  const first = new Map<string, number>();
  const found: { row: number; of: number }[] = [];
  for (const { key, row } of bags) {
    const of = first.get(key);
    if (of === undefined) first.set(key, row.row);
    else found.push({ row: row.row, of });
  }
  return found;
}
