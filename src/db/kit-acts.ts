import type { Tx } from './engine.ts';

/** An act of a build: what a person did with its kit, and what became of it. */
export interface KitActEntry {
  readonly act: string;
  readonly kind: string;
  readonly who: string;
  readonly happenedAt: string;
  readonly undoes: string | null;
  readonly undoneBy: string | null;
  /** ids of the takes that it touched */
  readonly takes: readonly string[];
  /** that it moved between bags and trays */
  readonly pieces: number;
}

/** What the acts on a kit keep for their undo, as far as it is read here. */
interface Memo {
  readonly build?: string;
  readonly takes?: readonly { readonly take: string; readonly picked: number; readonly returned: number }[];
  readonly planned?: readonly string[];
}

const OF_BUILDS = ['planned', 'reserved', 'picked-for-build', 'built', 'leftovers-returned', 'cancelled'];

/** The acts of a build and what took them back, the newest first. */
export async function readKitActs(tx: Tx, build: string): Promise<KitActEntry[]> {
  const rows = await tx
    .selectFrom('act')
    .leftJoin('act as later', 'later.undoes', 'act.id')
    .leftJoin('act as first', 'first.id', 'act.undoes')
    .leftJoin('build', (join) =>
      join
        .on('build.id', '=', build)
        .on((eb) => eb.or([eb('build.act', '=', eb.ref('act.id')), eb('build.act', '=', eb.ref('act.undoes'))])),
    )
    .select(['act.id', 'act.kind', 'act.who', 'act.happened_at', 'act.undoes', 'act.memo', 'first.memo as first_memo'])
    .select(['later.id as undone_by', 'build.id as made'])
    .where('act.kind', 'in', OF_BUILDS)
    .where((eb) =>
      eb.or([eb('build.id', 'is not', null), eb('act.memo', 'like', `%${build}%`), eb('first.memo', 'like', `%${build}%`)]),
    )
    .orderBy('act.change', 'desc')
    .execute();
  return rows.map((row): KitActEntry => {
    const memo = JSON.parse(row.first_memo ?? row.memo) as Memo | null; // as: the acts on builds wrote it
    const takes = memo?.takes ?? [];
    return {
      act: row.id,
      kind: row.kind,
      who: row.who,
      happenedAt: row.happened_at,
      undoes: row.undoes,
      undoneBy: row.undone_by,
      takes: takes.map(({ take }) => take),
      pieces: takes.reduce((sum, { picked, returned }) => sum + picked + returned, 0),
    };
  });
}
