import type { Tx } from './engine.ts';

/** What else uses a bag that an act made. */
export interface Touch {
  readonly bag: string;
  readonly number: number;
  /** kind of the act, or `build`, `choice` */
  readonly by: string;
}

/** What touched the live bags that an act made, apart from that act, and from acts that were undone and their undoing. */
export async function touchesOf(tx: Tx, act: string): Promise<Touch[]> {
  const made = tx.selectFrom('bag').where('bag.made_by', '=', act).where('bag.live', '=', 1);
  const moved = await made
    .innerJoin('movement', 'movement.bag', 'bag.id')
    .innerJoin('act', 'act.id', 'movement.act')
    .leftJoin('act as later', 'later.undoes', 'act.id')
    .select(['bag.id as bag', 'bag.number', 'act.kind as by'])
    .where('movement.act', '!=', act)
    .where('act.undoes', 'is', null)
    .where('later.id', 'is', null)
    .orderBy('movement.seq')
    .execute();
  const changed = await made
    .innerJoin('bag_change', 'bag_change.bag', 'bag.id')
    .innerJoin('act', 'act.id', 'bag_change.act')
    .leftJoin('act as later', 'later.undoes', 'act.id')
    .select(['bag.id as bag', 'bag.number', 'act.kind as by'])
    .where('bag_change.act', '!=', act)
    .where('act.undoes', 'is', null)
    .where('later.id', 'is', null)
    .orderBy('bag.number')
    .execute();
  const built = await made
    .innerJoin('kit_take', 'kit_take.bag', 'bag.id')
    .innerJoin('build_line', 'build_line.id', 'kit_take.build_line')
    .innerJoin('build', 'build.id', 'build_line.build')
    .select(['bag.id as bag', 'bag.number'])
    .where('build.state', '!=', 'undone')
    .orderBy('bag.number')
    .execute();
  const chosen = await made
    .innerJoin('choice', 'choice.bag', 'bag.id')
    .innerJoin('board', 'board.id', 'choice.board')
    .select(['bag.id as bag', 'bag.number'])
    .where('board.live', '=', 1)
    .orderBy('bag.number')
    .execute();
  return [
    ...moved,
    ...changed,
    ...built.map((row) => ({ ...row, by: 'build' })),
    ...chosen.map((row) => ({ ...row, by: 'choice' })),
  ];
}
