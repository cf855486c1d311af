import type { ReadRow } from '#core/bom/bom.ts';
import { readBagNumber } from '#core/stock/bag-number.ts';
import type { Refusal } from '#core/stock/refusal.ts';
import { nextNumber } from './bag-numbers.ts';
import { partOfRow } from './part-key.ts';

/** What a list would become, before anything is written. */
export interface ImportPlan {
  readonly bags: readonly PlannedBag[];
  /** rows that would become no bag, since they are not a part */
  readonly skipped: readonly number[];
  /** rows whose number is taken: by a bag of the lab (`with` null) or by an earlier row of the list */
  readonly clashes: readonly { readonly row: number; readonly number: number; readonly with: number | null }[];
  /** rows that hold the same part as an earlier row: allowed, shown before it is done */
  readonly duplicates: readonly { readonly row: number; readonly of: number }[];
  /** the number after all that are taken or stated: from it on all are free for rows whose number is taken */
  readonly free: number;
}

export interface PlannedBag {
  readonly row: ReadRow;
  readonly number: number;
  /** the list gives that number itself */
  readonly stated: boolean;
  readonly quantity: number;
  /** 0 where the list gives an estimate */
  readonly sure: number;
  /** no whole quantity can be read: the bag is made empty and put on the count list */
  readonly toCount: boolean;
  readonly box: string | null;
  readonly place: string | null;
  /** what the bag is called: the words of its part, with what the list remarks of it */
  readonly text: string;
  readonly key: string;
}

/**
 * Plans a stock list: what names a bag is its number where it is whole, else a part of its place; rows without a number get the
 * next ones after all that are taken. `box` is for rows that name none. Pure, so that a dry run shows just what would be done.
 */
export function planImport(rows: readonly ReadRow[], taken: ReadonlySet<number>, box: string | null): ImportPlan {
  const parts = rows.filter(isBag);
  const stated = statedNumbers(parts, taken);
  const free = Math.max(nextNumber(taken), nextNumber(stated.numbers.values()));
  let next = free;
  const bags = parts.map((row): PlannedBag => {
    const stands = stated.numbers.get(row);
    const place = [stands === undefined ? nameOf(row) : null, row.place?.trim()].filter(Boolean).join(', ') || null;
    return {
      row,
      number: stands ?? next++,
      stated: stands !== undefined,
      box: row.box?.trim() || box,
      place,
      text: textOf(row),
      key: partOfRow(row).key,
      ...amount(row),
    };
  });
  return {
    bags,
    skipped: rows.filter((row) => !isBag(row)).map((row) => row.row),
    clashes: stated.clashes,
    duplicates: duplicates(bags),
    free,
  };
}

/** A row that was a bag of a lab is one, whatever it holds. */
function isBag({ part, kept }: ReadRow): boolean {
  return part.kind !== 'not-a-part' || kept !== undefined;
}

/** What names the bag: a row that tells apart bag and place says it, any other has its location alone. */
function nameOf({ bag, location }: ReadRow): string | null {
  return (bag === undefined ? location : bag)?.trim() || null;
}

/** parts what is written of a part from what a list remarks of it */
export const REMARK = '; ';

function textOf({ part, remark }: ReadRow): string {
  return remark && !part.text.includes(remark) ? [part.text, remark].filter(Boolean).join(REMARK) : part.text;
}

function statedNumbers(rows: readonly ReadRow[], taken: ReadonlySet<number>) {
  const numbers = new Map<ReadRow, number>();
  const clashes: { row: number; number: number; with: number | null }[] = [];
  const seen = new Map<number, number>();
  for (const row of rows) {
    const number = readBagNumber(nameOf(row) ?? '');
    if (number === null) continue;
    const earlier = seen.get(number);
    if (taken.has(number) || earlier !== undefined)
      clashes.push({ row: row.row, number, with: taken.has(number) ? null : (earlier ?? null) });
    seen.set(number, row.row);
    numbers.set(row, number);
  }
  return { numbers, clashes };
}

function amount(row: ReadRow): Pick<PlannedBag, 'quantity' | 'sure' | 'toCount'> {
  if (row.kept) return { quantity: row.quantity ?? 0, sure: row.kept.sure, toCount: row.kept.toCount || row.quantity === null };
  const estimate = row.doubts.find(
    ({ field, code }) => field === 'quantity' && (code === 'quantity-estimate' || code === 'two-readings'),
  );
  const stated = row.quantity ?? row.estimate ?? Number(estimate?.args['taken'] ?? Number.NaN);
  if (!Number.isSafeInteger(stated) || stated < 0) return { quantity: 0, sure: 0, toCount: true };
  return { quantity: stated, sure: estimate || row.estimate !== undefined ? 0 : stated, toCount: false };
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

/** numbers named at once */
const MOST_NAMED = 20;

/** The refusal of a list whose numbers are taken: all of them, up to so many; null where none is. */
export function clashOf({ clashes }: ImportPlan): Refusal | null {
  const [first, ...others] = clashes;
  if (!first) return null;
  const named = others.slice(0, MOST_NAMED - 1).map(({ row, number }) => `${number} (row ${row})`);
  return {
    code: 'number-taken',
    args: {
      number: first.number,
      row: first.row,
      more: others.length - named.length,
      ...(named.length ? { others: named.join(', ') } : {}),
    },
  };
}
