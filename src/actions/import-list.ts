import { randomUUID } from 'node:crypto';
import { putIn } from '#core/stock/moves.ts';
import { MOST_NUMBER } from '#core/stock/bag-number.ts';
import { done, refuse } from '#core/stock/refusal.ts';
import { insertBags, takenNumbers, type NewBag } from '#db/bags.ts';
import { ensureBoxes } from '#db/boxes.ts';
import type { Tx } from '#db/database.ts';
import { postMovements, type NewMovement } from '#db/ledger.ts';
import { insertLots, type NewLot } from '#db/lots.ts';
import { ensureParts } from '#db/parts.ts';
import { sayPart } from '#say/en/said.ts';
import { action, type Action } from './action.ts';
import { begin } from './begin.ts';
import { MOST, nameTrouble, quantityTrouble } from './checks.ts';
import type { ImportInput, ImportResult, MadeBag } from './inputs.ts';
import { partOfRow } from './part-key.ts';
import { clashOf, planImport, type ImportPlan, type PlannedBag } from './plan-import.ts';

/** What an import would do with the lab as it is now; writes nothing. */
export async function previewImport(tx: Tx, input: Pick<ImportInput, 'rows' | 'box'>): Promise<ImportPlan> {
  return planImport(input.rows, await takenNumbers(tx), input.box ?? null);
}

/** Makes a list real: parts, bags and what they hold, in one act that can be taken back whole while nothing else touched it. */
export const importList: Action<ImportInput, ImportResult> = action(
  'importList',
  async (tx, clock, who, input) => {
    const unnamed = nameTrouble('box', input.box);
    if (unnamed) return { ok: false, refusal: unnamed };
    const plan = planImport(input.rows, await takenNumbers(tx), input.box ?? null);
    const clash = clashOf(plan);
    if (clash) return { ok: false, refusal: clash };
    if (plan.bags.length === 0) return refuse('nothing-to-do');
    const tooMany = plan.bags.find((bag) => bag.quantity > MOST);
    const trouble = tooMany ? quantityTrouble('quantity', tooMany.quantity, 0) : null;
    if (trouble) return { ok: false, refusal: { ...trouble, args: { ...trouble.args, row: tooMany?.row.row ?? 0 } } };
    const beyond = plan.bags.find(({ number }) => number > MOST_NUMBER);
    if (beyond)
      return refuse('out-of-range', { field: 'bag', received: beyond.number, least: 1, most: MOST_NUMBER, row: beyond.row.row });
    const begun = await begin(tx, clock, who, input, { kind: 'imported', note: input.source });
    if (!begun.ok) return begun;

    const change = begun.value;
    if (input.box) await ensureBoxes(tx, input.id, [input.box], input.boxPlaces);
    await ensureBoxes(
      tx,
      input.id,
      plan.bags.flatMap((bag) => bag.box ?? []),
    );
    const parts = await ensureParts(
      tx,
      plan.bags.map((bag) => partOfRow(bag.row)),
    );
    const bags = plan.bags.map((bag) => ({ planned: bag, row: newBag(bag, parts) }));
    await insertBags(
      tx,
      input.id,
      change,
      bags.map((bag) => bag.row),
    );
    const lots = bags.flatMap(({ planned, row }) =>
      planned.row.supplier ? [{ bag: row.id, lot: listedLot(planned.row.supplier, row.part) }] : [],
    );
    await insertLots(
      tx,
      input.id,
      lots.map((one) => one.lot),
    );
    const lotOf = new Map(lots.map((one) => [one.bag, one.lot.id]));
    const movements = bags
      .filter(({ planned }) => planned.quantity > 0)
      .map(({ planned, row }): NewMovement => ({
        bag: row.id,
        lot: lotOf.get(row.id) ?? null,
        ...putIn(planned.quantity, planned.sure),
      }));
    await postMovements(tx, input.id, change, movements);

    const numbers = plan.bags.map((bag) => bag.number);
    return done({
      act: input.id,
      repeat: false,
      change,
      warnings: [],
      bags: bags.length,
      parts: parts.size,
      pieces: plan.bags.reduce((sum, bag) => sum + bag.quantity, 0),
      first: numbers.reduce((least, number) => Math.min(least, number), Infinity),
      last: numbers.reduce((most, number) => Math.max(most, number), 0),
      toCount: plan.bags.filter((bag) => bag.toCount).map((bag) => bag.number),
      skipped: plan.skipped,
      made: madeOf(plan.bags),
    });
  },
  ({ rows }) => rows.forEach(partOfRow),
);

/** bags that are named at once */
const MOST_MADE = 200;

function madeOf(bags: readonly PlannedBag[]): MadeBag[] {
  const rank = ({ row, stated }: PlannedBag): number => (row.doubts.length > 0 ? 0 : stated ? 2 : 1);
  return bags
    .toSorted((a, b) => rank(a) - rank(b) || a.number - b.number)
    .slice(0, MOST_MADE)
    .map(({ row, number, text, box, place, stated }) => {
      const { name, rest } = sayPart(row.part);
      const said = [name, rest].filter(Boolean).join(', ') || text;
      return { row: row.row, bag: number, name: said, box, place, numbered: !stated, doubts: row.doubts.length };
    });
}

function newBag(bag: PlannedBag, parts: ReadonlyMap<string, string>): NewBag {
  const part = parts.get(bag.key);
  if (part === undefined) throw new Error(`row ${bag.row.row} without its part`);
  return {
    id: randomUUID(),
    number: bag.number,
    part,
    text: bag.text,
    holder: bag.row.kept?.holder ?? 'zip-bag',
    unit: bag.row.kept?.unit ?? 'piece',
    box: bag.box,
    place: bag.place,
    state: bag.row.kept?.state ?? 'sound',
    toCount: bag.toCount,
  };
}

/** A list names the supplier; the day of the delivery is not known from it, and is left open. */
function listedLot(supplier: string, part: string): NewLot {
  return {
    id: randomUUID(),
    part,
    supplier,
    received: null,
    dateCode: null,
    label: null,
    priceMicros: null,
    currency: null,
    pricePieces: null,
  };
}
