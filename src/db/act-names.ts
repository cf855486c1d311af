import type { Tx } from './engine.ts';

interface ActOf {
  readonly id: string;
  /** of the act itself, or of the one that it takes back; as JSON */
  readonly memo: string;
}

/** What each act was for, by its id: the board, with its revision where one was saved, or the build. Others are left out. */
export async function actNames(tx: Tx, acts: readonly ActOf[]): Promise<ReadonlyMap<string, string>> {
  if (acts.length === 0) return new Map();
  const memos = new Map(acts.map((act) => [act.id, memoOf(act)]));
  const [boards, builds, saved, begun] = await Promise.all([
    namesOf(
      tx,
      'board',
      [...memos.values()].flatMap(({ board }) => board ?? []),
    ),
    namesOf(
      tx,
      'build',
      [...memos.values()].flatMap(({ build }) => build ?? []),
    ),
    revisionsOf(
      tx,
      acts.map(({ id }) => id),
    ),
    buildsOf(
      tx,
      acts.map(({ id }) => id),
    ),
  ]);
  const names = new Map<string, string>();
  for (const { id } of acts) {
    const { board, build } = memos.get(id) ?? {};
    const name = saved.get(id) ?? begun.get(id) ?? builds.get(build ?? '') ?? boards.get(board ?? '');
    if (name !== undefined) names.set(id, name);
  }
  return names;
}

/** The board and the build that an act's memo names. */
function memoOf({ memo }: ActOf): { readonly board?: string; readonly build?: string } {
  const read = JSON.parse(memo) as { board?: unknown; build?: unknown } | null; // as: any memo may lack both
  return {
    ...(typeof read?.board === 'string' && { board: read.board }),
    ...(typeof read?.build === 'string' && { build: read.build }),
  };
}

async function namesOf(tx: Tx, table: 'board' | 'build', ids: readonly string[]): Promise<Map<string, string>> {
  if (ids.length === 0) return new Map();
  const rows = await tx
    .selectFrom(table)
    .select(['id', 'name'])
    .where('id', 'in', [...new Set(ids)])
    .execute();
  return new Map(rows.map(({ id, name }) => [id, name]));
}

async function revisionsOf(tx: Tx, acts: readonly string[]): Promise<Map<string, string>> {
  const rows = await tx
    .selectFrom('revision')
    .innerJoin('board', 'board.id', 'revision.board')
    .select(['revision.act', 'revision.name as revision', 'board.name'])
    .where('revision.act', 'in', [...acts])
    .execute();
  return new Map(rows.map(({ act, name, revision }) => [act, `${name}, revision ${revision}`]));
}

async function buildsOf(tx: Tx, acts: readonly string[]): Promise<Map<string, string>> {
  const rows = await tx
    .selectFrom('build')
    .select(['act', 'name'])
    .where('act', 'in', [...acts])
    .execute();
  return new Map(rows.map(({ act, name }) => [act, name]));
}
