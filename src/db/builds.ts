import { randomUUID } from 'node:crypto';
import type { PlannedLine } from '#core/kit/kit.ts';
import type { Tx } from './engine.ts';
import { chunks } from './rows.ts';

export type BuildState = 'planned' | 'reserved' | 'picking' | 'built' | 'cancelled' | 'undone';

export interface NewBuild {
  readonly id: string;
  readonly name: string;
  readonly board: string | null;
  readonly revision: string | null;
  readonly boards: number;
  readonly state: 'planned' | 'reserved';
  readonly priority: number;
  readonly due: string | null;
  readonly buildable: number;
  readonly proof: string;
}

export async function insertBuild(tx: Tx, act: string, build: NewBuild): Promise<void> {
  await tx
    .insertInto('build')
    .values({ ...build, made: null, act })
    .execute();
}

/** Enters the lines of a build; answers their ids by the plan's name of the line. */
export async function insertBuildLines(tx: Tx, build: string, lines: readonly PlannedLine[]): Promise<Map<string, string>> {
  const rows = lines.map((line, at) => ({
    id: randomUUID(),
    build,
    ord: at + 1,
    key: line.line,
    row: line.row,
    refs: JSON.stringify(line.refs),
    need: line.need,
    spare: line.spare,
    short: line.short,
    verdict: line.verdict,
    because: JSON.stringify(line.because),
  }));
  for (const some of chunks(rows)) await tx.insertInto('build_line').values(some).execute();
  return new Map(rows.map((row) => [row.key, row.id]));
}

/** A take of a kit: its line, its bag, its cell, and what became of it. */
export interface Take {
  readonly id: string;
  readonly line: string;
  readonly bag: string;
  readonly planned: number;
  readonly picked: number;
  readonly returned: number;
  readonly state: 'open' | 'done';
  readonly tray: number;
  readonly cell: number;
}

export interface NewTake {
  readonly line: string;
  readonly bag: string;
  readonly planned: number;
  readonly ord: number;
  readonly tray: number;
  readonly cell: number;
}

export async function insertTakes(tx: Tx, takes: readonly NewTake[]): Promise<void> {
  const rows = takes.map(({ line, ...take }) => ({
    id: randomUUID(),
    build_line: line,
    ...take,
    picked: 0,
    returned: 0,
    state: 'open' as const,
  }));
  for (const some of chunks(rows)) await tx.insertInto('kit_take').values(some).execute();
  const promises = takes.map(({ line, bag, planned }) => ({ build_line: line, bag, quantity: planned }));
  for (const some of chunks(promises)) await tx.insertInto('reservation').values(some).execute();
}

export interface KnownBuild {
  readonly id: string;
  readonly name: string;
  readonly boards: number;
  readonly made: number | null;
  readonly state: BuildState;
}

export async function findBuild(tx: Tx, id: string): Promise<KnownBuild | null> {
  const row = await tx
    .selectFrom('build')
    .select(['id', 'name', 'boards', 'made', 'state'])
    .where('id', '=', id)
    .executeTakeFirst();
  return row ? { ...row, state: row.state as BuildState } : null; // as: a CHECK of the table holds the words
}

/** Builds that an act made. */
export async function buildsOfAct(tx: Tx, act: string): Promise<string[]> {
  const rows = await tx.selectFrom('build').select('id').where('act', '=', act).execute();
  return rows.map((row) => row.id);
}

/** Takes of a build, in the order of the walk. */
export async function takesOf(tx: Tx, build: string): Promise<Take[]> {
  const rows = await tx
    .selectFrom('kit_take')
    .innerJoin('build_line', 'build_line.id', 'kit_take.build_line')
    .selectAll('kit_take')
    .where('build_line.build', '=', build)
    .orderBy('kit_take.ord')
    .execute();
  return rows.map(({ id, build_line, bag, planned, picked, returned, state, tray, cell }) => ({
    id,
    line: build_line,
    bag,
    planned,
    picked,
    returned,
    state,
    tray,
    cell,
  }));
}

/** Lines of a build: what each needs for all boards, and what the plan lacked. */
export async function linesOf(tx: Tx, build: string): Promise<{ id: string; need: number; short: number }[]> {
  return tx.selectFrom('build_line').select(['id', 'need', 'short']).where('build', '=', build).execute();
}

export async function setBuild(tx: Tx, id: string, state: BuildState, made: number | null): Promise<void> {
  await tx.updateTable('build').set({ state, made }).where('id', '=', id).execute();
}

/** A planned build gets its plan: its lines and takes are entered beside. */
export async function setReserved(tx: Tx, id: string, plan: Pick<NewBuild, 'buildable' | 'proof'>): Promise<void> {
  await tx
    .updateTable('build')
    .set({ ...plan, state: 'reserved' })
    .where('id', '=', id)
    .execute();
}

/**
 * A reserved build is only planned again. Its lines, which movements may name, go to a build of their own that `act` undoes,
 * so that the next plan of this one begins without any.
 */
export async function planAgain(tx: Tx, id: string, act: string): Promise<void> {
  const build = await tx.selectFrom('build').selectAll().where('id', '=', id).executeTakeFirstOrThrow();
  const before = randomUUID();
  await tx
    .insertInto('build')
    .values({ ...build, id: before, state: 'undone', act })
    .execute();
  await tx.updateTable('build_line').set({ build: before }).where('build', '=', id).execute();
  await tx
    .updateTable('build')
    .set({ state: 'planned', ...NO_PLAN })
    .where('id', '=', id)
    .execute();
}

/** What stands for the plan of a build that has none. */
export const NO_PLAN = { buildable: 0, proof: 'none' } as const;

export async function setTake(tx: Tx, take: Pick<Take, 'id' | 'picked' | 'returned' | 'state'>): Promise<void> {
  const { id, picked, returned, state } = take;
  await tx.updateTable('kit_take').set({ picked, returned, state }).where('id', '=', id).execute();
}

/**
 * Makes the promises of a build what they must be: of each open take what is planned and not picked, while the build stands.
 * Answers the bags whose promise changed.
 */
export async function settlePromises(tx: Tx, build: string): Promise<string[]> {
  const known = await findBuild(tx, build);
  const stands = known?.state === 'reserved' || known?.state === 'picking';
  const takes = await takesOf(tx, build);
  const lines = [...new Set(takes.map((take) => take.line))];
  const kept = new Map<string, number>();
  for (const some of chunks(lines)) {
    const rows = await tx.selectFrom('reservation').selectAll().where('build_line', 'in', some).execute();
    for (const row of rows) kept.set(`${row.build_line} ${row.bag}`, row.quantity);
  }
  const changed: string[] = [];
  for (const { line, bag, planned, picked, state } of takes) {
    const wanted = stands && state === 'open' ? Math.max(0, planned - picked) : 0;
    if (wanted === (kept.get(`${line} ${bag}`) ?? 0)) continue;
    changed.push(bag);
    await tx.deleteFrom('reservation').where('build_line', '=', line).where('bag', '=', bag).execute();
    if (wanted > 0) await tx.insertInto('reservation').values({ build_line: line, bag, quantity: wanted }).execute();
  }
  return changed;
}
