import type { BagState, BagUnit, Holder } from '#core/stock/stock.ts';
import { builtOnce } from './built-once.ts';
import type { Tx } from './engine.ts';
import { chunks, grouped } from './rows.ts';

/** A bag as an act sees it. */
export interface HeldBag {
  readonly id: string;
  readonly number: number;
  readonly part: string;
  readonly partKey: string;
  readonly unit: BagUnit;
  readonly box: string | null;
  readonly state: BagState;
  readonly onHand: number;
  readonly sure: number;
  readonly reserved: number;
  readonly toCount: boolean;
  readonly live: boolean;
  readonly madeBy: string;
}

export interface NewBag {
  readonly id: string;
  readonly number: number;
  readonly part: string;
  readonly text: string;
  readonly holder: Holder;
  readonly unit: BagUnit;
  readonly box: string | null;
  readonly place: string | null;
  readonly state: BagState;
  readonly toCount: boolean;
}

const heldBags = (tx: Tx) =>
  tx
    .selectFrom('bag')
    .innerJoin('part', 'part.id', 'bag.part')
    .selectAll('bag')
    .select(['part.key as part_key'])
    .select((eb) =>
      eb
        .selectFrom('reservation')
        .select((of) => of.fn.sum<number>('reservation.quantity').as('promised'))
        .whereRef('reservation.bag', '=', 'bag.id')
        .as('promised'),
    );

type HeldRow = Awaited<ReturnType<ReturnType<typeof heldBags>['execute']>>[number];

function heldBag(row: HeldRow): HeldBag {
  return {
    id: row.id,
    number: row.number,
    part: row.part,
    partKey: row.part_key,
    unit: row.unit as BagUnit, // as: a CHECK of the table holds the words
    box: row.box,
    state: row.state as BagState, // as: a CHECK of the table holds the words
    onHand: row.on_hand,
    sure: row.sure,
    reserved: row.promised ?? 0,
    toCount: row.to_count === 1,
    live: row.live === 1,
    madeBy: row.made_by,
  };
}

const liveBag = builtOnce<{ number: number }, HeldRow>((tx, put) =>
  heldBags(tx).where('bag.number', '=', put('number')).where('bag.live', '=', 1),
);

/** The live bag of that number, or null. */
export async function findBag(tx: Tx, number: number): Promise<HeldBag | null> {
  const [row] = await liveBag(tx, { number });
  return row ? heldBag(row) : null;
}

/** Live bags by number. */
export async function findBags(tx: Tx, numbers: readonly number[]): Promise<Map<number, HeldBag>> {
  const found = new Map<number, HeldBag>();
  for (const some of chunks([...new Set(numbers)])) {
    for (const row of await heldBags(tx).where('bag.number', 'in', some).where('bag.live', '=', 1).execute()) {
      found.set(row.number, heldBag(row));
    }
  }
  return found;
}

/** Bags by id, live or not. */
export async function bagsById(tx: Tx, ids: readonly string[]): Promise<Map<string, HeldBag>> {
  const found = new Map<string, HeldBag>();
  for (const some of chunks([...new Set(ids)])) {
    for (const row of await heldBags(tx).where('bag.id', 'in', some).execute()) found.set(row.id, heldBag(row));
  }
  return found;
}

/** Ids of the live bags that an act made. */
export async function bagsMadeBy(tx: Tx, act: string): Promise<string[]> {
  const rows = await tx.selectFrom('bag').select('id').where('made_by', '=', act).where('live', '=', 1).execute();
  return rows.map((row) => row.id);
}

/** Numbers of all live bags. */
export async function takenNumbers(tx: Tx): Promise<Set<number>> {
  const rows = await tx.selectFrom('bag').select('number').where('live', '=', 1).execute();
  return new Set(rows.map((row) => row.number));
}

/** What is written on the live bags of those numbers. */
export async function bagTexts(tx: Tx, numbers: readonly number[]): Promise<Map<number, string>> {
  const found = new Map<number, string>();
  for (const some of chunks([...new Set(numbers)])) {
    const rows = await tx
      .selectFrom('bag')
      .select(['number', 'text'])
      .where('number', 'in', some)
      .where('live', '=', 1)
      .execute();
    for (const { number, text } of rows) found.set(number, text);
  }
  return found;
}

/** Enters bags with nothing in them; what they hold comes by movements. */
export async function insertBags(tx: Tx, act: string, change: number, bags: readonly NewBag[]): Promise<void> {
  for (const some of chunks(bags)) {
    await tx
      .insertInto('bag')
      .values(
        some.map((bag) => ({
          id: bag.id,
          number: bag.number,
          part: bag.part,
          text: bag.text,
          holder: bag.holder,
          unit: bag.unit,
          box: bag.box,
          place: bag.place,
          state: bag.state,
          on_hand: 0,
          sure: 0,
          oldest: null,
          to_count: bag.toCount ? 1 : 0,
          live: 1,
          made_by: act,
          changed: change,
        })),
      )
      .execute();
  }
}

/** Marks bags as changed, so that followers read them again. */
export async function touchBags(tx: Tx, change: number, ids: readonly string[]): Promise<void> {
  for (const some of chunks([...new Set(ids)])) {
    await tx.updateTable('bag').set({ changed: change }).where('id', 'in', some).execute();
  }
}

/** Names of the builds that a bag is promised to, in the order of their priority. */
export async function promisesOf(tx: Tx, bag: string): Promise<{ build: string; name: string; quantity: number }[]> {
  return tx
    .selectFrom('reservation')
    .innerJoin('build_line', 'build_line.id', 'reservation.build_line')
    .innerJoin('build', 'build.id', 'build_line.build')
    .select((eb) => ['build.id as build', 'build.name', eb.fn.sum<number>('reservation.quantity').as('quantity')])
    .where('reservation.bag', '=', bag)
    .groupBy(['build.id', 'build.name', 'build.priority'])
    .orderBy('build.priority')
    .orderBy('build.name')
    .execute();
}

/** Names of the builds that pieces are promised to, by the number of the bag. */
export async function promisedBags(tx: Tx): Promise<Map<number, string[]>> {
  const rows = await tx
    .selectFrom('reservation')
    .innerJoin('build_line', 'build_line.id', 'reservation.build_line')
    .innerJoin('build', 'build.id', 'build_line.build')
    .innerJoin('bag', 'bag.id', 'reservation.bag')
    .select(['bag.number', 'build.name'])
    .distinct()
    .orderBy('bag.number')
    .orderBy('build.name')
    .execute();
  const found = grouped(rows, (row) => row.number);
  return new Map([...found].map(([number, promises]) => [number, promises.map(({ name }) => name)]));
}
