import { sql } from 'kysely';
import type { Tx } from './engine.ts';
import { readSetting } from './setting.ts';

/** What a lab is, beyond its bags. */
export interface LabCounts {
  /** nothing was ever done in it */
  readonly empty: boolean;
  /** it was filled with the demo, and may be cleared */
  readonly demo: boolean;
  readonly bags: number;
  readonly boards: number;
  /** builds that are planned, reserved or being picked */
  readonly kits: number;
}

const OPEN = ['planned', 'reserved', 'picking'];
const howMany = sql<number>`count(*)`.as('number');

export async function isEmptyLab(tx: Tx): Promise<boolean> {
  return (await tx.selectFrom('act').select('id').limit(1).executeTakeFirst()) === undefined;
}

export async function readLabCounts(tx: Tx): Promise<LabCounts> {
  const bags = await tx.selectFrom('bag').select(howMany).where('live', '=', 1).executeTakeFirstOrThrow();
  const boards = await tx.selectFrom('board').select(howMany).where('live', '=', 1).executeTakeFirstOrThrow();
  const kits = await tx.selectFrom('build').select(howMany).where('state', 'in', OPEN).executeTakeFirstOrThrow();
  return {
    empty: await isEmptyLab(tx),
    demo: (await readSetting(tx, 'demo')) !== null,
    bags: bags.number,
    boards: boards.number,
    kits: kits.number,
  };
}
