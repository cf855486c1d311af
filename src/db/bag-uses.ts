import type { Tx } from './engine.ts';

/** What a build still has promised of a bag. */
export interface BagPromise {
  readonly build: string;
  readonly name: string;
  readonly quantity: number;
}

/** Open builds that have pieces of the bag promised, by name. */
export async function promisesOf(tx: Tx, bag: string): Promise<BagPromise[]> {
  return tx
    .selectFrom('reservation')
    .innerJoin('build_line', 'build_line.id', 'reservation.build_line')
    .innerJoin('build', 'build.id', 'build_line.build')
    .select((eb) => ['build.id as build', 'build.name', eb.fn.sum<number>('reservation.quantity').as('quantity')])
    .where('reservation.bag', '=', bag)
    .groupBy(['build.id', 'build.name'])
    .orderBy('build.name')
    .orderBy('build.id')
    .execute();
}

/** Where pieces of a bag went: a board, and the refs on it. */
export interface BagUse {
  readonly board: string;
  readonly refs: readonly string[];
}

/** Boards whose builds took from the bag and did not bring all of it back; the newest build first, each board once. */
export async function usesOf(tx: Tx, bag: string): Promise<BagUse[]> {
  const rows = await tx
    .selectFrom('kit_take')
    .innerJoin('build_line', 'build_line.id', 'kit_take.build_line')
    .innerJoin('build', 'build.id', 'build_line.build')
    .innerJoin('board', 'board.id', 'build.board')
    .innerJoin('act', 'act.id', 'build.act')
    .select(['board.name as board', 'build_line.refs'])
    .where('kit_take.bag', '=', bag)
    .whereRef('kit_take.picked', '>', 'kit_take.returned')
    .where('build.state', '!=', 'undone')
    .orderBy('act.change', 'desc')
    .orderBy('build.name')
    .orderBy('build_line.ord')
    .execute();
  const uses = new Map<string, Set<string>>();
  for (const { board, refs } of rows) {
    const known = uses.get(board) ?? new Set<string>();
    for (const ref of JSON.parse(refs) as string[]) known.add(ref); // as: `insertBuildLines` wrote it
    uses.set(board, known);
  }
  return [...uses].map(([board, refs]) => ({ board, refs: [...refs] }));
}
