import assert from 'node:assert/strict';
import { randomUUID } from 'node:crypto';
import { test } from 'node:test';
import { followStock } from '#actions/follow-stock.ts';
import { pickForBuild } from '#actions/pick-for-build.ts';
import { receive } from '#actions/receive.ts';
import { reserveBom } from '#actions/reserve-bom.ts';
import { saveBoard } from '#actions/save-board.ts';
import { savedBom } from '#actions/saved-bom.ts';
import { undo } from '#actions/undo.ts';
import { readBagPage, type BagPage } from '#db/bag-page.ts';
import type { Lab } from '#db/database.ts';
import { readActs } from '#db/history.ts';
import { act, CLOCK, did, fill, refusedBy, resistor, row, withLab, WHO, type Store } from './lab.ts';

const BOARD = { board: 'Heron' };
const LINES = [
  row(2, resistor(100), { refs: ['R1', 'R2'], quantity: null }),
  row(3, resistor(100), { refs: ['R7'], quantity: null }),
];

async function page(lab: Lab): Promise<BagPage> {
  return (await lab.read((tx) => readBagPage(tx, 1))) ?? assert.fail('no bag 1');
}

/** Two boards promised from bag 1; answers the build. */
async function reserved(lab: Lab): Promise<string> {
  const input = { id: randomUUID(), of: BOARD, boards: 2, spares: false };
  const done = await did(reserveBom(lab, followStock(lab), CLOCK, WHO, input, () => savedBom(lab, BOARD)));
  return done.result.builds[0]?.build ?? '';
}

/** What is known of one bag, on any engine the same. */
export function bagPageSuite(store: Store): void {
  void test(`${store.engine}: a bag knows what its movements were for, its promises, the boards, and bags with the same part`, () =>
    withLab(store, async (lab) => {
      const part = resistor(100);
      await did(act(lab, receive, { items: [{ quantity: 20, part, bag: 1, lot: { supplier: 'Quayside' } }] }));
      await did(act(lab, receive, { items: [{ quantity: 3, sure: 1, part, bag: 2, box: 'A', fresh: true }] }));
      await refusedBy(act(lab, receive, { items: [{ quantity: 3, part, bag: 2, fresh: true }] }), 'number-taken');
      await did(act(lab, saveBoard, { ...BOARD, lines: LINES }));
      const build = await reserved(lab);
      const promised = await page(lab);
      assert.deepEqual(promised.reservedFor, [{ build, name: 'Heron', quantity: 6 }]);
      assert.deepEqual(
        promised.alike.map(({ number, onHand, sure, box }) => [number, onHand, sure, box]),
        [[2, 3, 1, 'A']],
      );
      const picked = await did(act(lab, pickForBuild, { build }));
      const used = await page(lab);
      assert.deepEqual([used.reservedFor, used.usedOn], [[], [{ board: 'Heron', refs: ['R1', 'R2', 'R7'] }]]);
      assert.deepEqual(
        used.movements.map((one) => [one.kind, one.for, one.onHand, one.undoneBy]),
        [
          ['received', 'Quayside', 20, null],
          ['picked-for-build', 'Heron', 16, null],
          ['picked-for-build', 'Heron', 14, null],
        ],
      );
      const undone = await did(act(lab, undo, { act: picked.act }));
      const after = await page(lab);
      assert.deepEqual([after.usedOn, after.bag.onHand, after.reservedFor[0]?.quantity], [[], 20, 6]);
      assert.deepEqual(
        after.movements.map((one) => one.undoneBy),
        [null, undone.act, undone.act, null, null],
      );
    }));

  void test(`${store.engine}: an act names its first bags, and says how many more there are`, () =>
    withLab(store, async (lab) => {
      await fill(lab, 1, 1, 1, 1, 1, 1, 1, 1);
      await fill(lab, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1);
      const twice = [5, 6].map((quantity) => ({ quantity, part: resistor(100), bag: 1 }));
      await did(act(lab, receive, { items: twice }));
      const acts = await lab.read((tx) => readActs(tx, { limit: 9 }));
      assert.deepEqual(
        acts.map(({ movements, bags, more }) => [movements, bags.length, more]),
        [
          [2, 1, 0],
          [11, 8, 3],
          [8, 8, 0],
        ],
      );
    }));
}
