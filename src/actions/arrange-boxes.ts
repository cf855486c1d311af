import { done, refuse, type Refusal } from '#core/stock/refusal.ts';
import type { Box } from '#core/stock/stock.ts';
import { readBoxes, writeOrder, type BoxOrder, type OrderMemo } from '#db/boxes.ts';
import { action, type Action } from './action.ts';
import { begin } from './begin.ts';
import type { ArrangeBoxesInput, ArrangeBoxesResult } from './inputs.ts';

/**
 * Puts all boxes into the order in which they stand. Beside each other every one is at hand; in a stack a box costs as many lifts as
 * boxes stand on it. The walk of the next plan follows; a kit that is reserved keeps its own, since its sheet is printed.
 */
export const arrangeBoxes: Action<ArrangeBoxesInput, ArrangeBoxesResult> = action(
  'arrangeBoxes',
  async (tx, clock, who, input) => {
    const known = await readBoxes(tx);
    const trouble = orderTrouble(known, input.boxes);
    if (trouble) return { ok: false, refusal: trouble };
    const after = input.boxes.map((name, at): BoxOrder => ({
      name,
      order: at + 1,
      lifts: input.standing === 'stacked' ? at : 0,
    }));
    const before = known.map(({ name, order, lifts }): BoxOrder => ({ name, order, lifts }));
    if (isSame(before, after)) return refuse('nothing-to-do');
    const memo: OrderMemo = { before, after };
    const begun = await begin(tx, clock, who, input, { kind: 'boxes-arranged', memo });
    if (!begun.ok) return begun;
    await writeOrder(tx, after);
    return done({ act: input.id, repeat: false, change: begun.value, warnings: [], boxes: await readBoxes(tx) });
  },
);

/** Every box is named, and once. */
function orderTrouble(known: readonly Box[], names: readonly string[]): Refusal | null {
  const there = new Set(known.map(({ name }) => name));
  const strange = names.find((name) => !there.has(name));
  if (strange !== undefined) return { code: 'no-such-box', args: { box: strange } };
  const twice = names.find((name, at) => names.indexOf(name) !== at);
  if (twice !== undefined) return { code: 'box-twice', args: { box: twice } };
  const named = new Set(names);
  const left = known.find(({ name }) => !named.has(name));
  return left ? { code: 'box-left-out', args: { box: left.name } } : null;
}

function isSame(before: readonly BoxOrder[], after: readonly BoxOrder[]): boolean {
  return after.every(({ name, order, lifts }, at) => {
    const box = before[at];
    return box?.name === name && box.order === order && box.lifts === lifts;
  });
}
