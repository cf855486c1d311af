import assert from 'node:assert/strict';
import { randomUUID } from 'node:crypto';
import { test } from 'node:test';
import { choose } from '#actions/choose.ts';
import { followStock } from '#actions/follow-stock.ts';
import { pick } from '#actions/pick.ts';
import { receive } from '#actions/receive.ts';
import { reserveBom } from '#actions/reserve-bom.ts';
import { savedBom } from '#actions/saved-bom.ts';
import { saveBoard } from '#actions/save-board.ts';
import { undo } from '#actions/undo.ts';
import { demandKey } from '#core/part/demand-key.ts';
import type { Lab } from '#db/database.ts';
import { act, bagOf, CLOCK, did, fill, heldIn, resistor, row, withLab, WHO, type Store } from './lab.ts';

const LINES = [row(2, resistor(100), { refs: ['R1', 'R2'], quantity: null })];
const OF = { board: 'Owl' };

function reserve(lab: Lab, id: string) {
  const input = { id, of: OF, boards: 2, spares: false };
  return reserveBom(lab, followStock(lab), CLOCK, WHO, input, () => savedBom(lab, OF));
}

/** Rules of what is asked once more under the same id, on any engine the same. */
export function repeatingSuite(store: Store): void {
  const rule = (name: string, fn: Parameters<typeof withLab>[1]): void =>
    void test(`${store.engine}: ${name}`, () => withLab(store, fn));

  rule(
    'a reservation asked for again answers what was promised, whatever became of stock, choices and revisions',
    async (lab) => {
      await fill(lab, 10);
      await did(act(lab, saveBoard, { board: 'Owl', lines: LINES }));
      const id = randomUUID();
      const first = await did(reserve(lab, id));
      assert.deepEqual([first.planned.build.buildable, await heldIn(lab, 1)], [2, [10, 10, 6]]);
      const again = async (): Promise<void> => {
        const { planned, all, result } = await did(reserve(lab, id));
        assert.deepEqual([planned, all, result], [first.planned, first.all, { ...first.result, repeat: true }]);
      };
      await did(act(lab, pick, { bag: 1, quantity: 9 }));
      await again();
      await did(act(lab, choose, { board: 'Owl', demand: demandKey(resistor(100)), bag: 1, accept: true }));
      await again();
      await did(act(lab, saveBoard, { board: 'Owl', lines: [row(2, resistor(220))] }));
      await again();
      const other = await reserveBom(lab, followStock(lab), CLOCK, WHO, { id, of: OF, boards: 3, spares: false }, () =>
        savedBom(lab, OF),
      );
      assert.equal(other.ok ? 'done' : other.refusal.code, 'id-reused');
    },
  );

  rule('a verb is known by its written name, not by that of a function; an id is the same in capitals', async (lab) => {
    await fill(lab, 10);
    const id = 'abcdef00-0000-4000-8000-00000000000a';
    const first = await did(act(lab, pick, { id, bag: 1, quantity: 3 }));
    const renamed = Object.assign((...told: Parameters<typeof pick>) => pick(...told), { verb: pick.verb });
    assert.deepEqual(await did(act(lab, renamed, { id: id.toUpperCase(), bag: 1, quantity: 3 })), { ...first, repeat: true });
    assert.equal((await bagOf(lab, 1)).onHand, 7);
    await did(act(lab, undo, { act: id.toUpperCase() }));
    assert.equal((await bagOf(lab, 1)).onHand, 10);
    assert.equal(receive.verb, 'receive');
  });
}
