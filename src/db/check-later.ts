import type { LabFault } from './check.ts';
import type { Tx } from './engine.ts';
import type { LaterMemo } from './later.ts';

/** Plays all `fit-later` acts once more: what is left off for now is what they say. */
export async function checkLater(tx: Tx): Promise<LabFault[]> {
  const acts = await tx
    .selectFrom('act')
    .leftJoin('act as first', 'first.id', 'act.undoes')
    .select(['act.undoes', 'act.memo', 'first.memo as first_memo'])
    .where('act.kind', '=', 'fit-later')
    .orderBy('act.change')
    .execute();
  const wanted = new Set<string>();
  for (const { undoes, memo, first_memo } of acts) {
    const { board, demand, before, after } = JSON.parse(first_memo ?? memo) as LaterMemo; // as: `fitLater` wrote it
    const key = JSON.stringify([board, demand]);
    if (undoes === null ? after : before) wanted.add(key);
    else wanted.delete(key);
  }
  const rows = await tx.selectFrom('later').select(['board', 'demand']).execute();
  const kept = new Set(rows.map(({ board, demand }) => JSON.stringify([board, demand])));
  return [...wanted.symmetricDifference(kept)].map((key) => {
    const [board = '', demand = ''] = JSON.parse(key) as string[]; // as: written above
    return { code: 'later', args: { board, demand, kept: kept.has(key) ? 1 : 0 } };
  });
}
