import type { Refusal } from '#core/stock/refusal.ts';
import type { KnownAct } from '#db/acts.ts';
import { bagsById, bagsMadeBy } from '#db/bags.ts';
import { buildsOfRevision, dropRevision, findChoice, revisionOfAct, writeChoice, type ChoiceMemo } from '#db/boards.ts';
import { dropEmptyBoxes, readBoxes, writeOrder, type OrderMemo } from '#db/boxes.ts';
import type { Tx } from '#db/database.ts';
import { isLater, writeLater, type LaterMemo } from '#db/later.ts';
import { postBagChanges } from '#db/ledger.ts';
import { touchesOf } from '#db/touched.ts';
import type { ActKind } from './inputs.ts';
import { undoBuilt, undoCancelled, undoLeftovers, undoPicked, undoPlanned, undoReserved } from './unwind-kit.ts';

/** What the undo of a kind of act does beyond movements and bag changes. */
export interface Unwind {
  /** why it can't be taken back, or null */
  trouble?(tx: Tx, act: KnownAct): Promise<Refusal | null>;
  /** takes back the rest, under the undo's own id; answers further bags that it concerns */
  after?(tx: Tx, act: KnownAct, undo: string, change: number): Promise<string[]>;
}

/** By kind of act; kinds without an entry are movements and bag changes only. */
export const UNWIND: Readonly<Partial<Record<ActKind, Unwind>>> = {
  received: { after: removeBags },
  imported: { trouble: importTrouble, after: removeBags },
  'board-saved': { trouble: boardTrouble, after: removeRevision },
  chosen: { trouble: choiceTrouble, after: restoreChoice },
  'fit-later': { trouble: laterTrouble, after: restoreLater },
  'boxes-arranged': { trouble: orderTrouble, after: restoreOrder },
  planned: undoPlanned,
  reserved: undoReserved,
  'picked-for-build': undoPicked,
  'leftovers-returned': undoLeftovers,
  built: undoBuilt,
  cancelled: undoCancelled,
};

/** An import is taken back whole, only while nothing else touched its bags. */
async function importTrouble(tx: Tx, act: KnownAct): Promise<Refusal | null> {
  const touches = await touchesOf(tx, act.id);
  if (touches.length === 0) return null;
  const bags = [...new Set(touches.map((touch) => touch.number))].toSorted((a, b) => a - b).join(', ');
  const by = [...new Set(touches.map((touch) => touch.by))].join(', ');
  return { code: 'not-undoable', args: { act: act.id, why: 'touched', bags, by } };
}

/** Bags that the act made and that nothing else uses are no more, and their numbers are free again. */
async function removeBags(tx: Tx, act: KnownAct, undo: string, change: number): Promise<string[]> {
  const used = new Set((await touchesOf(tx, act.id)).map((touch) => touch.bag));
  const bags = await bagsById(tx, await bagsMadeBy(tx, act.id));
  const gone = [...bags.values()].filter((bag) => bag.onHand === 0 && !used.has(bag.id));
  await postBagChanges(
    tx,
    undo,
    change,
    gone.map((bag) => ({ bag: bag.id, field: 'live', before: '1', after: '0' })),
  );
  await dropEmptyBoxes(tx, act.id);
  return [];
}

async function boardTrouble(tx: Tx, act: KnownAct): Promise<Refusal | null> {
  const revision = await revisionOfAct(tx, act.id);
  const builds = revision ? await buildsOfRevision(tx, revision.id) : [];
  return builds.length ? { code: 'not-undoable', args: { act: act.id, why: 'has-builds', builds: builds.join(', ') } } : null;
}

async function removeRevision(tx: Tx, act: KnownAct): Promise<string[]> {
  const revision = await revisionOfAct(tx, act.id);
  if (revision) await dropRevision(tx, revision.id, revision.board);
  return [];
}

async function choiceTrouble(tx: Tx, act: KnownAct): Promise<Refusal | null> {
  const { board, demand, after } = act.memo as ChoiceMemo; // as: `choose` wrote it
  const now = await findChoice(tx, board, demand);
  const same = now?.bag === after?.bag && now?.accept === after?.accept;
  return same ? null : { code: 'not-undoable', args: { act: act.id, why: 'changed-since' } };
}

async function restoreChoice(tx: Tx, act: KnownAct): Promise<string[]> {
  const { board, demand, before } = act.memo as ChoiceMemo; // as: `choose` wrote it
  await writeChoice(tx, board, demand, before);
  return [];
}

async function laterTrouble(tx: Tx, act: KnownAct): Promise<Refusal | null> {
  const { board, demand, after } = act.memo as LaterMemo; // as: `fitLater` wrote it
  const same = (await isLater(tx, board, demand)) === after;
  return same ? null : { code: 'not-undoable', args: { act: act.id, why: 'changed-since' } };
}

async function restoreLater(tx: Tx, act: KnownAct): Promise<string[]> {
  const { board, demand, before } = act.memo as LaterMemo; // as: `fitLater` wrote it
  await writeLater(tx, board, demand, before);
  return [];
}

async function orderTrouble(tx: Tx, act: KnownAct): Promise<Refusal | null> {
  const { after } = act.memo as OrderMemo; // as: `arrangeBoxes` wrote it
  const now = new Map((await readBoxes(tx)).map((box) => [box.name, box]));
  const same = after.every(({ name, order, lifts }) => {
    const box = now.get(name);
    return box === undefined || (box.order === order && box.lifts === lifts);
  });
  return same ? null : { code: 'not-undoable', args: { act: act.id, why: 'changed-since' } };
}

async function restoreOrder(tx: Tx, act: KnownAct): Promise<string[]> {
  await writeOrder(tx, (act.memo as OrderMemo).before); // as: `arrangeBoxes` wrote it
  return [];
}
