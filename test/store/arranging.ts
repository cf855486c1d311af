import assert from 'node:assert/strict';
import { test } from 'node:test';
import { arrangeBoxes } from '#actions/arrange-boxes.ts';
import { followStock } from '#actions/follow-stock.ts';
import { planBom } from '#actions/plan-bom.ts';
import { receive } from '#actions/receive.ts';
import { undo } from '#actions/undo.ts';
import { readBoxes } from '#db/boxes.ts';
import { checkLab } from '#db/check.ts';
import type { Lab } from '#db/database.ts';
import { readActs } from '#db/history.ts';
import { act, did, refusedBy, resistor, row, withLab, type Store } from './lab.ts';

const BOXES = ['A', 'B', 'C'] as const;

/** Bag 1 in box A, bag 2 in B, bag 3 in C. */
async function threeBoxes(lab: Lab): Promise<void> {
  const items = BOXES.map((box, at) => ({ quantity: 10, part: resistor((at + 1) * 100), bag: at + 1, box }));
  await did(act(lab, receive, { items }));
}

async function order(lab: Lab): Promise<string> {
  return (await lab.read(readBoxes)).map(({ name, order: at, lifts }) => `${name}${at}/${lifts}`).join(' ');
}

/** Boxes in the order in which a kit of all three parts is walked. */
async function walk(lab: Lab): Promise<string> {
  const now = await followStock(lab).current();
  const rows = [300, 100, 200].map((ohms, at) => row(at + 2, resistor(ohms), { refs: [`R${at + 1}`], quantity: null }));
  const { route } = await planBom(now, { rows, choices: [] }, 1, { spares: false });
  return route.map(({ box }) => box).join('');
}

/** Rules of how the boxes stand, on any engine the same. */
export function arrangingSuite(store: Store): void {
  const rule = (name: string, fn: (lab: Lab) => Promise<void>): void => {
    void test(`${store.engine}: ${name}`, () =>
      withLab(store, async (lab) => {
        await threeBoxes(lab);
        await fn(lab);
        assert.deepEqual(await lab.read(checkLab), []);
      }));
  };

  rule('a stack costs as many lifts as boxes stand on it, and the walk of a kit follows', async (lab) => {
    assert.equal(await walk(lab), 'ABC');
    await did(act(lab, arrangeBoxes, { boxes: ['C', 'A', 'B'], standing: 'stacked' }));
    assert.equal(await order(lab), 'C1/0 A2/1 B3/2');
    assert.equal(await walk(lab), 'CAB');
    await did(act(lab, arrangeBoxes, { boxes: ['C', 'A', 'B'], standing: 'beside' }));
    assert.equal(await order(lab), 'C1/0 A2/0 B3/0');
    assert.equal((await lab.read((tx) => readActs(tx, { limit: 1 })))[0]?.kind, 'boxes-arranged');
  });

  rule('an order is taken back as it was, unless the boxes were moved again', async (lab) => {
    const first = await did(act(lab, arrangeBoxes, { boxes: ['B', 'A', 'C'], standing: 'stacked' }));
    const second = await did(act(lab, arrangeBoxes, { boxes: ['C', 'B', 'A'], standing: 'beside' }));
    assert.equal((await refusedBy(act(lab, undo, { act: first.act }), 'not-undoable'))['why'], 'changed-since');
    await did(act(lab, undo, { act: second.act }));
    assert.equal(await order(lab), 'B1/0 A2/1 C3/2');
    await did(act(lab, undo, { act: first.act }));
    assert.equal(await order(lab), 'A1/0 B2/0 C3/0');
  });

  rule('an order is of all boxes, each once; the one that there is needs no act', async (lab) => {
    const arrange = (boxes: readonly string[], standing: 'beside' | 'stacked' = 'beside') =>
      act(lab, arrangeBoxes, { boxes, standing });
    assert.deepEqual(await refusedBy(arrange(['A', 'B']), 'box-left-out'), { box: 'C' });
    assert.deepEqual(await refusedBy(arrange(['A', 'B', 'C', 'Zebra']), 'no-such-box'), { box: 'Zebra' });
    assert.deepEqual(await refusedBy(arrange(['A', 'B', 'B']), 'box-twice'), { box: 'B' });
    await refusedBy(arrange(['A', 'B', 'C']), 'nothing-to-do');
    assert.equal(await order(lab), 'A1/0 B2/0 C3/0');
  });
}
