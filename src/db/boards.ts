import { randomUUID } from 'node:crypto';
import type { Choice, ReadRow } from '#core/bom/bom.ts';
import type { Tx } from './engine.ts';
import { readLater } from './later.ts';
import { chunks } from './rows.ts';

export interface RevisionSummary {
  readonly id: string;
  readonly name: string;
  readonly source: string | null;
  readonly lines: number;
  /** instant at which it was saved */
  readonly saved: string;
}

export interface BoardSummary {
  readonly id: string;
  readonly name: string;
  /** oldest first; the last is the one that a new build takes */
  readonly revisions: readonly RevisionSummary[];
}

/** A revision with its lines as they were read, and what was chosen for the board. */
export interface BoardRevision {
  readonly board: { readonly id: string; readonly name: string };
  readonly revision: RevisionSummary;
  readonly lines: readonly ReadRow[];
  readonly choices: readonly Choice[];
  /** demands whose lines are left off for now */
  readonly later: readonly string[];
}

/** Live boards by name, each with its live revisions. */
export async function readBoards(tx: Tx): Promise<BoardSummary[]> {
  const boards = await tx.selectFrom('board').select(['id', 'name']).where('live', '=', 1).orderBy('name').execute();
  const revisions = await revisionRows(tx).orderBy('revision.ord').execute();
  return boards.map(({ id, name }) => ({ id, name, revisions: revisions.filter((one) => one.board === id).map(summary) }));
}

/** A board's newest revision, or the one of that name; null where there is none. */
export async function readBoard(tx: Tx, board: string, revision?: string): Promise<BoardRevision | null> {
  const found = await findBoard(tx, board);
  if (!found) return null;
  const wanted = revisionRows(tx).where('revision.board', '=', found.id).orderBy('revision.ord', 'desc').limit(1);
  const row = await (revision === undefined ? wanted : wanted.where('revision.name', '=', revision)).executeTakeFirst();
  if (!row) return null;
  const lines = await tx.selectFrom('line').select('read').where('revision', '=', row.id).orderBy('ord').execute();
  return {
    board: found,
    revision: summary(row),
    lines: lines.map((line) => JSON.parse(line.read) as ReadRow), // as: `insertRevision` wrote it
    choices: await readChoices(tx, found.id),
    later: await readLater(tx, found.id),
  };
}

/** What was chosen for a board, by demand. */
export async function readChoices(tx: Tx, boardId: string): Promise<Choice[]> {
  const rows = await tx
    .selectFrom('choice')
    .innerJoin('bag', 'bag.id', 'choice.bag')
    .select(['choice.demand', 'bag.number', 'choice.accept'])
    .where('choice.board', '=', boardId)
    .where('bag.live', '=', 1)
    .orderBy('choice.demand')
    .execute();
  const reasons = await readReasons(tx, boardId);
  return rows.map(({ demand, number, accept }) => {
    const reason = reasons.get(demand);
    return { demand, bag: number, accept: accept === 1, ...(reason !== undefined && { reason }) };
  });
}

/** What an undo of a choice must know, and why it was made. */
export interface ChoiceMemo {
  readonly board: string;
  readonly demand: string;
  readonly before: KeptChoice | null;
  readonly after: KeptChoice | null;
  readonly reason?: string;
}

/** Why the choices that hold were made: the reason of the newest act for each demand that was not taken back. */
async function readReasons(tx: Tx, boardId: string): Promise<Map<string, string | undefined>> {
  const acts = await tx
    .selectFrom('act')
    .leftJoin('act as later', 'later.undoes', 'act.id')
    .select('act.memo')
    .where('act.kind', '=', 'chosen')
    .where('act.undoes', 'is', null)
    .where('later.id', 'is', null)
    .where('act.memo', 'like', `%${boardId}%`)
    .orderBy('act.change')
    .execute();
  const memos = acts.map(({ memo }) => JSON.parse(memo) as ChoiceMemo); // as: `choose` wrote it
  return new Map(memos.map(({ demand, reason }) => [demand, reason]));
}

const revisionRows = (tx: Tx) =>
  tx
    .selectFrom('revision')
    .innerJoin('act', 'act.id', 'revision.act')
    .select(['revision.id', 'revision.board', 'revision.name', 'revision.source', 'act.recorded_at'])
    .select((eb) =>
      eb
        .selectFrom('line')
        .select((line) => line.fn.countAll<number>().as('lines'))
        .whereRef('line.revision', '=', 'revision.id')
        .as('lines'),
    )
    .where('revision.live', '=', 1);

function summary(row: {
  id: string;
  name: string;
  source: string | null;
  recorded_at: string;
  lines: number | null;
}): RevisionSummary {
  return { id: row.id, name: row.name, source: row.source, lines: row.lines ?? 0, saved: row.recorded_at };
}

/** The live board of that name. */
export async function findBoard(tx: Tx, name: string): Promise<{ id: string; name: string } | null> {
  const row = await tx
    .selectFrom('board')
    .select(['id', 'name'])
    .where('name', '=', name)
    .where('live', '=', 1)
    .executeTakeFirst();
  return row ?? null;
}

export async function insertBoard(tx: Tx, name: string): Promise<string> {
  const id = randomUUID();
  await tx.insertInto('board').values({ id, name, live: 1 }).execute();
  return id;
}

/** Names of the live revisions, and the place of the next one. */
export async function revisionNames(tx: Tx, board: string): Promise<{ names: string[]; nextOrd: number }> {
  const rows = await tx.selectFrom('revision').select(['name', 'ord', 'live']).where('board', '=', board).execute();
  const names = rows.filter((row) => row.live === 1).map((row) => row.name);
  return { names, nextOrd: Math.max(0, ...rows.map((row) => row.ord)) + 1 };
}

export interface NewRevision {
  readonly board: string;
  readonly name: string;
  readonly ord: number;
  readonly source: string | null;
  readonly lines: readonly ReadRow[];
}

export async function insertRevision(tx: Tx, act: string, revision: NewRevision): Promise<string> {
  const id = randomUUID();
  const { board, name, ord, source } = revision;
  await tx.insertInto('revision').values({ id, board, name, ord, source, act, live: 1 }).execute();
  const rows = revision.lines.map((line, at) => ({
    id: randomUUID(),
    revision: id,
    ord: at + 1,
    row: line.row,
    read: JSON.stringify(line),
  }));
  for (const some of chunks(rows)) await tx.insertInto('line').values(some).execute();
  return id;
}

/** The revision that a `board-saved` act made. */
export async function revisionOfAct(tx: Tx, act: string): Promise<{ id: string; board: string } | null> {
  return (await tx.selectFrom('revision').select(['id', 'board']).where('act', '=', act).executeTakeFirst()) ?? null;
}

/** Builds that use a revision and still stand. */
export async function buildsOfRevision(tx: Tx, revision: string): Promise<string[]> {
  const rows = await tx
    .selectFrom('build')
    .select('name')
    .where('revision', '=', revision)
    .where('state', '!=', 'undone')
    .execute();
  return rows.map((row) => row.name);
}

/** Takes a revision back; a board without any is gone as well. */
export async function dropRevision(tx: Tx, revision: string, board: string): Promise<void> {
  await tx.updateTable('revision').set({ live: 0 }).where('id', '=', revision).execute();
  const { names } = await revisionNames(tx, board);
  if (names.length === 0) await tx.updateTable('board').set({ live: 0 }).where('id', '=', board).execute();
}

/** A choice as it is kept: by the bag's id, since numbers may be given anew. */
export interface KeptChoice {
  readonly bag: string;
  readonly accept: boolean;
}

export async function findChoice(tx: Tx, board: string, demand: string): Promise<KeptChoice | null> {
  const row = await tx
    .selectFrom('choice')
    .select(['bag', 'accept'])
    .where('board', '=', board)
    .where('demand', '=', demand)
    .executeTakeFirst();
  return row ? { bag: row.bag, accept: row.accept === 1 } : null;
}

/** Sets or takes away the choice for a demand. */
export async function writeChoice(tx: Tx, board: string, demand: string, choice: KeptChoice | null): Promise<void> {
  await tx.deleteFrom('choice').where('board', '=', board).where('demand', '=', demand).execute();
  if (!choice) return;
  await tx
    .insertInto('choice')
    .values({ board, demand, bag: choice.bag, accept: choice.accept ? 1 : 0 })
    .execute();
}
