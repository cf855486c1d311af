import type { Tx } from './engine.ts';
import { chunks } from './rows.ts';

/** What came in one delivery; money in whole micro-units of its currency for so many pieces. */
export interface NewLot {
  readonly id: string;
  readonly part: string;
  readonly supplier: string | null;
  readonly received: string | null;
  readonly dateCode: string | null;
  readonly label: string | null;
  readonly priceMicros: number | null;
  readonly currency: string | null;
  readonly pricePieces: number | null;
}

export async function insertLots(tx: Tx, act: string, lots: readonly NewLot[]): Promise<void> {
  for (const some of chunks(lots)) {
    await tx
      .insertInto('lot')
      .values(
        some.map((lot) => ({
          id: lot.id,
          act,
          part: lot.part,
          supplier: lot.supplier,
          received: lot.received,
          date_code: lot.dateCode,
          label: lot.label,
          price_micros: lot.priceMicros,
          currency: lot.currency,
          price_pieces: lot.pricePieces,
        })),
      )
      .execute();
  }
}
