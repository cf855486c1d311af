import { sql } from 'kysely';
import type { Tx } from './engine.ts';
import { readChange } from './change.ts';
import { checkLater } from './check-later.ts';
import { grouped } from './rows.ts';

/** What a check may find; each is a fault of ours or of the disk, never of a person. */
export type LabFaultCode =
  | 'sum' // {bag, onHand, sum}: on hand is not the sum of the movements
  | 'sure-sum' // {bag, sure, sum}
  | 'bounds' // {bag, onHand, sure}: not 0 ≤ sure ≤ on hand
  | 'balance' // {bag, seq, balance}: below zero at some time
  | 'number-twice' // {number}
  | 'gone-holds' // {bag, onHand}: a bag that is no more still holds something
  | 'promise' // {build, bag, reserved, wanted}: what is reserved is not what open takes still want
  | 'planned' // {build}: a planned build without a board that is there
  | 'later' // {board, demand, kept}: what is left off for now is not what the acts say
  | 'act-open' // {act}: an act without its answer
  | 'act-order' // {act, change, last}: a change number beyond the last one
  | 'undo-kind' // {act, undoes}: an undo of another kind, or of an undo
  | 'undo-sum' // {act, bag}: an undo that is not the opposite
  | 'seq' // {found, last}: a gap in the order of movements
  | 'part-facts' // {part}: facts and key of a part differ
  | 'bag-changed' // {bag, changed, last}
  | 'unreadable'; // {what, error}: the records of it can't be read

export interface LabFault {
  readonly code: LabFaultCode;
  readonly args: Readonly<Record<string, string | number>>;
}

/** Proves the lab from its own records: nothing found is a lab whose stock is what its movements say. */
export async function checkLab(tx: Tx): Promise<LabFault[]> {
  const found: LabFault[] = [];
  let last: number = Number.MAX_SAFE_INTEGER;
  const parts: readonly (readonly [name: string, check: () => Promise<LabFault[]>])[] = [
    ['change', async () => ((last = await readChange(tx)), [])],
    ['bags', () => checkBags(tx, last)],
    ['movements', () => checkBalances(tx)],
    ['promises', () => checkPromises(tx)],
    ['planned', () => checkPlanned(tx)],
    ['later', () => checkLater(tx)],
    ['acts', () => checkActs(tx, last)],
    ['undos', () => checkUndos(tx)],
    ['parts', () => checkParts(tx)],
  ];
  for (const [name, check] of parts) found.push(...(await guarded(tx, name, check)));
  return found;
}

/** One part of the check, from which the transaction recovers where the records can't be read. */
async function guarded(tx: Tx, name: string, check: () => Promise<LabFault[]>): Promise<LabFault[]> {
  await sql`savepoint checked`.execute(tx);
  try {
    return await check();
  } catch (error) {
    return [unreadable(name, error)];
  } finally {
    await sql`rollback to savepoint checked`.execute(tx);
  }
}

/** What a check can't read is a fault of the lab too. */
function unreadable(what: string, error: unknown): LabFault {
  return fault('unreadable', { what, error: error instanceof Error ? error.message : String(error) });
}

function fault(code: LabFaultCode, args: LabFault['args']): LabFault {
  return { code, args };
}

async function checkBags(tx: Tx, last: number): Promise<LabFault[]> {
  const bags = await tx
    .selectFrom('bag')
    .leftJoin('movement', 'movement.bag', 'bag.id')
    .select(['bag.id', 'bag.number', 'bag.on_hand', 'bag.sure', 'bag.live', 'bag.changed'])
    .select((eb) => [
      eb.fn.sum<number | null>('movement.delta').as('delta'),
      eb.fn.sum<number | null>('movement.sure_delta').as('sure_delta'),
    ])
    .groupBy(['bag.id', 'bag.number', 'bag.on_hand', 'bag.sure', 'bag.live', 'bag.changed'])
    .orderBy('bag.number')
    .execute();
  const live = grouped(
    bags.filter((bag) => bag.live === 1),
    (bag) => bag.number,
  );
  const twice = [...live].filter(([, same]) => same.length > 1).map(([number]) => fault('number-twice', { number }));
  return [...twice, ...bags.flatMap((bag) => bagFaults(bag, last))];
}

type SummedBag = {
  number: number;
  on_hand: number;
  sure: number;
  live: number;
  changed: number;
  delta: number | null;
  sure_delta: number | null;
};

function bagFaults({ number, on_hand: onHand, sure, live, changed, delta, sure_delta }: SummedBag, last: number): LabFault[] {
  const found: LabFault[] = [];
  if (onHand !== (delta ?? 0)) found.push(fault('sum', { bag: number, onHand, sum: delta ?? 0 }));
  if (sure !== (sure_delta ?? 0)) found.push(fault('sure-sum', { bag: number, sure, sum: sure_delta ?? 0 }));
  if (sure < 0 || sure > onHand) found.push(fault('bounds', { bag: number, onHand, sure }));
  if (live === 0 && onHand !== 0) found.push(fault('gone-holds', { bag: number, onHand }));
  if (changed > last) found.push(fault('bag-changed', { bag: number, changed, last }));
  return found;
}

/** Plays all movements once more: no bag was ever below zero, and no seq is missing. */
async function checkBalances(tx: Tx): Promise<LabFault[]> {
  const rows = await tx
    .selectFrom('movement')
    .innerJoin('bag', 'bag.id', 'movement.bag')
    .select(['movement.seq', 'movement.bag', 'movement.delta', 'bag.number'])
    .orderBy('movement.seq')
    .execute();
  const held = new Map<string, number>();
  const found: LabFault[] = [];
  rows.forEach(({ seq, bag, delta, number }, at) => {
    const balance = (held.get(bag) ?? 0) + delta;
    held.set(bag, balance);
    if (balance < 0) found.push(fault('balance', { bag: number, seq, balance }));
    if (seq !== at + 1 && rows[at - 1]?.seq !== seq - 1) found.push(fault('seq', { found: seq, last: rows[at - 1]?.seq ?? 0 }));
  });
  return found;
}

async function checkPromises(tx: Tx): Promise<LabFault[]> {
  const takes = await tx
    .selectFrom('kit_take')
    .innerJoin('build_line', 'build_line.id', 'kit_take.build_line')
    .innerJoin('build', 'build.id', 'build_line.build')
    .innerJoin('bag', 'bag.id', 'kit_take.bag')
    .leftJoin('reservation', (join) =>
      join.onRef('reservation.build_line', '=', 'kit_take.build_line').onRef('reservation.bag', '=', 'kit_take.bag'),
    )
    .select([
      'build.name',
      'build.state as build_state',
      'bag.number',
      'kit_take.planned',
      'kit_take.picked',
      'kit_take.state',
      'reservation.quantity',
    ])
    .execute();
  const wrong = takes.flatMap(({ name, build_state, number, planned, picked, state, quantity }) => {
    const stands = build_state === 'reserved' || build_state === 'picking';
    const wanted = stands && state === 'open' ? Math.max(0, planned - picked) : 0;
    const reserved = quantity ?? 0;
    return reserved === wanted ? [] : [fault('promise', { build: name, bag: number, reserved, wanted })];
  });
  const stray = await tx
    .selectFrom('reservation')
    .innerJoin('build_line', 'build_line.id', 'reservation.build_line')
    .innerJoin('build', 'build.id', 'build_line.build')
    .innerJoin('bag', 'bag.id', 'reservation.bag')
    .leftJoin('kit_take', (join) =>
      join.onRef('kit_take.build_line', '=', 'reservation.build_line').onRef('kit_take.bag', '=', 'reservation.bag'),
    )
    .select(['build.name', 'bag.number', 'reservation.quantity'])
    .where('kit_take.id', 'is', null)
    .execute();
  return [
    ...wrong,
    ...stray.map(({ name, number, quantity }) => fault('promise', { build: name, bag: number, reserved: quantity, wanted: 0 })),
  ];
}

/** A planned build is nothing but its board, so the revision must be there. */
async function checkPlanned(tx: Tx): Promise<LabFault[]> {
  const builds = await tx
    .selectFrom('build')
    .leftJoin('revision', (join) => join.onRef('revision.id', '=', 'build.revision').on('revision.live', '=', 1))
    .select('build.name')
    .where('build.state', '=', 'planned')
    .where('revision.id', 'is', null)
    .execute();
  return builds.map(({ name }) => fault('planned', { build: name }));
}

async function checkActs(tx: Tx, last: number): Promise<LabFault[]> {
  const acts = await tx
    .selectFrom('act')
    .select(['id', 'change'])
    .where((eb) => eb.or([eb('result', '=', ''), eb('body_hash', '=', ''), eb('change', '>', last)]))
    .execute();
  return acts.map(({ id, change }) =>
    change > last ? fault('act-order', { act: id, change, last }) : fault('act-open', { act: id }),
  );
}

/** An undo is of the kind of what it undoes, came later, and posts the opposite of each of its bags. */
async function checkUndos(tx: Tx): Promise<LabFault[]> {
  const undos = await tx
    .selectFrom('act as undo')
    .innerJoin('act as first', 'first.id', 'undo.undoes')
    .select([
      'undo.id',
      'undo.kind',
      'undo.change',
      'first.id as first_id',
      'first.kind as first_kind',
      'first.change as first_change',
      'first.undoes as first_undoes',
    ])
    .execute();
  const wrong = undos
    .filter((one) => one.kind !== one.first_kind || one.first_undoes !== null || one.change <= one.first_change)
    .map((one) => fault('undo-kind', { act: one.id, undoes: one.first_id }));
  const sums = await tx
    .selectFrom('act as undo')
    .innerJoin('movement', (join) =>
      join.on((eb) => eb.or([eb('movement.act', '=', eb.ref('undo.id')), eb('movement.act', '=', eb.ref('undo.undoes'))])),
    )
    .innerJoin('bag', 'bag.id', 'movement.bag')
    .select((eb) => ['undo.id', 'bag.number', eb.fn.sum<number>('movement.delta').as('left_over')])
    .where('undo.undoes', 'is not', null)
    .groupBy(['undo.id', 'bag.id', 'bag.number'])
    .having((eb) => eb.fn.sum('movement.delta'), '!=', 0)
    .execute();
  return [...wrong, ...sums.map(({ id, number }) => fault('undo-sum', { act: id, bag: number }))];
}

/** The key of a part names each of its facts. */
async function checkParts(tx: Tx): Promise<LabFault[]> {
  const parts = await tx.selectFrom('part').select(['id', 'key', 'code']).execute();
  const facts = grouped(await tx.selectFrom('part_fact').selectAll().execute(), (fact) => fact.part);
  return parts.flatMap(({ id, key, code }) => {
    const own = (facts.get(id) ?? []).map(({ key, value, unit, origin }) => JSON.stringify([key, value, unit, origin]));
    const named = new Set(factsOfKey(key).map((fact) => JSON.stringify(fact)));
    return named.size === own.length && own.every((fact) => named.has(fact)) ? [] : [fault('part-facts', { part: code })];
  });
}

/** The facts that a key names; none where it is no key. */
function factsOfKey(key: string): readonly unknown[] {
  try {
    const parsed: unknown = JSON.parse(key);
    const facts: unknown = Array.isArray(parsed) ? parsed[1] : null;
    return Array.isArray(facts) ? facts : [];
  } catch {
    return [];
  }
}
