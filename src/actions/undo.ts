import { opposite } from '#core/stock/moves.ts';
import { done, refuse, type Outcome } from '#core/stock/refusal.ts';
import { findAct, type KnownAct } from '#db/acts.ts';
import { bagsById } from '#db/bags.ts';
import type { Tx } from '#db/database.ts';
import {
  bagChangesOf,
  movementsAfter,
  movementsOf,
  postBagChanges,
  postMovements,
  type NewBagChange,
  type NewMovement,
} from '#db/ledger.ts';
import { action, type Action, type Warning } from './action.ts';
import { balancesOf, brokenPromises } from './balances.ts';
import { begin } from './begin.ts';
import type { ActKind, UndoInput, UndoResult } from './inputs.ts';
import { runningBalances } from './kit-takes.ts';
import { UNWIND } from './unwind.ts';

/**
 * Takes an act back by one of the same kind with the opposite sign: once, and not an undo itself. Refused where a bag would go
 * below zero, with the later movements named, and where what the act made is in use.
 */
export const undo: Action<UndoInput, UndoResult> = action('undo', async (tx, clock, who, input) => {
  const act = await findAct(tx, input.act.toLowerCase());
  if (!act) return refuse('no-such-act', { act: input.act });
  if (act.undoes !== null) return refuse('not-undoable', { act: act.id, why: 'is-undo' });
  if (act.undoneBy !== null) return refuse('undone-already', { act: act.id });
  const kind = act.kind as ActKind; // as: only `begin` writes kinds
  const unwind = UNWIND[kind];
  const trouble = unwind?.trouble ? await unwind.trouble(tx, act) : null;
  if (trouble) return { ok: false, refusal: trouble };
  const movements = await oppositeMovements(tx, act);
  if (!movements.ok) return movements;

  const begun = await begin(tx, clock, who, input, { kind, undoes: act.id });
  if (!begun.ok) return begun;
  const change = begun.value;
  await postMovements(tx, input.id, change, movements.value);
  await postBagChanges(tx, input.id, change, await oppositeChanges(tx, act));
  const recount = await countedSince(tx, act);
  await postBagChanges(tx, input.id, change, recount);
  const also = unwind?.after ? await unwind.after(tx, act, input.id, change) : [];

  const moved = [...new Set([...movements.value.map((movement) => movement.bag), ...also])];
  const bags = await balancesOf(tx, moved);
  const numbers = await bagsById(
    tx,
    recount.map((one) => one.bag),
  );
  const warnings: Warning[] = await brokenPromises(tx, (await bagsById(tx, moved)).values());
  for (const { number } of numbers.values()) warnings.push({ code: 'on-count-list', args: { bag: number } });
  return done({ act: input.id, repeat: false, change, warnings, undoes: act.id, kind, bags });
});

/** The act's movements with the opposite sign, the last one first. */
async function oppositeMovements(tx: Tx, act: KnownAct): Promise<Outcome<NewMovement[]>> {
  const movements = await movementsOf(tx, act.id);
  const balances = await runningBalances(
    tx,
    movements.map((movement) => movement.bag),
  );
  const found: NewMovement[] = [];
  for (const movement of movements.toReversed()) {
    const move = opposite(balances.held(movement.bag), movement);
    if (!move) return refuse('below-zero', await belowZero(tx, movement.bag, movement.seq, balances.bag(movement.bag).number));
    const back = { bag: movement.bag, lot: movement.lot, buildLine: movement.buildLine, ...move };
    found.push(back);
    balances.move(back);
  }
  return done(found);
}

/** The movements that stand in the way: `picked:-5, picked:-3`, and their acts. */
async function belowZero(tx: Tx, bag: string, seq: number, number: number): Promise<Record<string, string | number>> {
  const later = await movementsAfter(tx, bag, seq);
  return {
    bag: number,
    later: later.map((movement) => `${movement.kind}:${movement.delta}`).join(', '),
    acts: [...new Set(later.map((movement) => movement.act))].join(', '),
  };
}

/** Back to what was, where it still is what the act made it. */
async function oppositeChanges(tx: Tx, act: KnownAct): Promise<NewBagChange[]> {
  const changes = await bagChangesOf(tx, act.id);
  const bags = await bagsById(
    tx,
    changes.map((change) => change.bag),
  );
  return changes.flatMap(({ bag: id, field, before, after }) => {
    const bag = bags.get(id);
    const now = field === 'state' ? bag?.state : field === 'to_count' ? (bag?.toCount ? '1' : '0') : bag?.live ? '1' : '0';
    return now === after ? [{ bag: id, field, before: after, after: before }] : [];
  });
}

/** A bag that was counted after the act was right then; taking the act back makes it doubtful, so it is to be counted again. */
async function countedSince(tx: Tx, act: KnownAct): Promise<NewBagChange[]> {
  const last = new Map((await movementsOf(tx, act.id)).map((movement) => [movement.bag, movement.seq]));
  const bags = await bagsById(tx, [...last.keys()]);
  const found: NewBagChange[] = [];
  for (const [id, seq] of last) {
    const counted = (await movementsAfter(tx, id, seq)).some((movement) => movement.kind === 'counted');
    if (counted) found.push({ bag: id, field: 'to_count', before: bags.get(id)?.toCount ? '1' : '0', after: '1' });
  }
  return found;
}
