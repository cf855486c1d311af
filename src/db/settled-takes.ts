import type { Tx } from './engine.ts';

/** What an act on leftovers keeps, as far as it is read here. */
interface Memo {
  readonly build: string;
  readonly made: number | null;
  readonly takes: readonly { readonly take: string; readonly returned: number }[];
}

/** Tells of a take whether what was left of it is said to be used up or lost, and that was not taken back. */
export type IsSettled = (take: string, made: number | null) => boolean;

/**
 * What is lost never comes back: a return of 0 from a cell says so. It speaks of as many boards as were made then; where other
 * boards are said to be made since, it is to be asked again.
 */
export async function settledTakes(tx: Tx, build: string | null): Promise<IsSettled> {
  const rows = await tx
    .selectFrom('act')
    .leftJoin('act as later', 'later.undoes', 'act.id')
    .select('act.memo')
    .where('act.kind', '=', 'leftovers-returned')
    .where('act.undoes', 'is', null)
    .where('later.id', 'is', null)
    .where('act.memo', 'like', `%${build ?? '"returned":0'}%`)
    .execute();
  const memos = rows.map(({ memo }) => JSON.parse(memo) as Memo); // as: `returnLeftovers` wrote it
  const settled = new Set(
    memos.flatMap(({ made, takes }) => takes.filter(({ returned }) => returned === 0).map(({ take }) => `${take} ${made}`)),
  );
  return (take, made) => made !== null && settled.has(`${take} ${made}`);
}
