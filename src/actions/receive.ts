import { randomUUID } from 'node:crypto';
import { putIn } from '#core/stock/moves.ts';
import { MOST_NUMBER } from '#core/stock/bag-number.ts';
import { done, refuse, type Outcome, type Refusal } from '#core/stock/refusal.ts';
import { findBags, insertBags, takenNumbers, type HeldBag, type NewBag } from '#db/bags.ts';
import { ensureBoxes } from '#db/boxes.ts';
import type { Tx } from '#db/database.ts';
import { postMovements, type NewMovement } from '#db/ledger.ts';
import { insertLots, type NewLot } from '#db/lots.ts';
import { ensureParts } from '#db/parts.ts';
import { action, type Action } from './action.ts';
import { balancesOf } from './balances.ts';
import { nextNumber } from './bag-numbers.ts';
import { begin } from './begin.ts';
import { dateTrouble, firstTrouble, labDay, nameTrouble, quantityTrouble, rangeTrouble } from './checks.ts';
import type { LotInput, ReceivedItem, ReceiveInput, ReceiveResult } from './inputs.ts';
import { newPart, partKey } from './part-key.ts';

/** Where an item of a delivery goes: into a bag that is there, or into a new one of that number. */
interface Placed {
  readonly item: ReceivedItem;
  readonly number: number;
  readonly bag: HeldBag | null;
}

/** Takes a delivery in: one act, one lot for each item. */
export const receive: Action<ReceiveInput, ReceiveResult> = action('receive', async (tx, clock, who, input) => {
  if (input.items.length === 0) return refuse('nothing-to-do');
  for (const item of input.items) {
    const trouble = itemTrouble(item);
    if (trouble) return { ok: false, refusal: trouble };
  }
  const placed = await place(tx, input.items);
  if (!placed.ok) return placed;
  const begun = await begin(tx, clock, who, input, { kind: 'received' });
  if (!begun.ok) return begun;

  const change = begun.value;
  const fresh = placed.value.filter((one) => one.bag === null);
  await ensureBoxes(
    tx,
    input.id,
    fresh.flatMap((one) => one.item.box ?? []),
  );
  const parts = await ensureParts(
    tx,
    fresh.flatMap((one) => (one.item.part ? [newPart(one.item.part)] : [])),
  );
  const bags = fresh.map((one) => newBag(one, parts));
  await insertBags(tx, input.id, change, bags);

  const made = new Map(bags.map((bag) => [bag.number, bag]));
  const lots: NewLot[] = [];
  const movements: NewMovement[] = [];
  for (const { item, number, bag } of placed.value) {
    const target = bag ?? made.get(number);
    if (!target) throw new Error(`bag ${number} was neither found nor made`);
    const lot = newLot(item.lot ?? {}, target.part, input.happenedAt ?? clock.now());
    lots.push(lot);
    movements.push({ bag: target.id, lot: lot.id, ...putIn(item.quantity, item.sure) });
  }
  await insertLots(tx, input.id, lots);
  await postMovements(tx, input.id, change, movements);
  return done({
    act: input.id,
    repeat: false,
    change,
    warnings: [],
    bags: await balancesOf(
      tx,
      movements.map((one) => one.bag),
    ),
  });
});

function itemTrouble(item: ReceivedItem): Refusal | null {
  return firstTrouble(
    quantityTrouble('quantity', item.quantity),
    item.sure === undefined ? null : rangeTrouble('sure', item.sure, 0, item.quantity),
    item.bag === undefined ? null : rangeTrouble('bag', item.bag, 1, MOST_NUMBER),
    nameTrouble('box', item.box),
    nameTrouble('place', item.place),
    item.lot?.received === undefined ? null : dateTrouble('received', item.lot.received),
    item.part || item.bag !== undefined
      ? null
      : { code: 'not-valid', args: { field: 'part', received: '', expected: 'part-or-bag' } },
  );
}

/** A number that is there takes more of its own part; another part may not have it. A second item may go into the same new bag. */
async function place(tx: Tx, items: readonly ReceivedItem[]): Promise<Outcome<Placed[]>> {
  const known = await findBags(
    tx,
    items.flatMap((item) => item.bag ?? []),
  );
  const taken = await takenNumbers(tx);
  for (const item of items) if (item.bag !== undefined) taken.add(item.bag);
  let next = nextNumber(taken);
  const fresh = new Set<number>();
  const placed: Placed[] = [];
  for (const item of items) {
    const number = item.bag ?? next++;
    const bag = known.get(number) ?? null;
    if (number > MOST_NUMBER) return refuse('out-of-range', { field: 'bag', received: number, least: 1, most: MOST_NUMBER });
    if (bag && item.part && (item.fresh === true || partKey(item.part) !== bag.partKey))
      return refuse('number-taken', { number });
    if (!bag && !item.part) return refuse('no-such-bag', { bag: number });
    if (!bag && fresh.has(number)) return refuse('number-taken', { number });
    if (!bag) fresh.add(number);
    placed.push({ item, number, bag });
  }
  return done(placed);
}

function newBag({ item, number }: Placed, parts: ReadonlyMap<string, string>): NewBag {
  const part = item.part && parts.get(partKey(item.part));
  if (!item.part || !part) throw new Error(`a new bag ${number} without its part`);
  return {
    id: randomUUID(),
    number,
    part,
    text: item.part.text,
    holder: item.holder ?? 'zip-bag',
    unit: item.unit ?? 'piece',
    box: item.box ?? null,
    place: item.place ?? null,
    state: item.state ?? 'sound',
    toCount: false,
  };
}

function newLot(lot: LotInput, part: string, happenedAt: string): NewLot {
  return {
    id: randomUUID(),
    part,
    supplier: lot.supplier ?? null,
    received: lot.received ?? labDay(happenedAt),
    dateCode: lot.dateCode ?? null,
    label: lot.label ?? null,
    priceMicros: lot.price?.micros ?? null,
    currency: lot.price?.currency ?? null,
    pricePieces: lot.price?.pieces ?? null,
  };
}
