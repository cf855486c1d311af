import assert from 'node:assert/strict';
import { randomUUID } from 'node:crypto';
import { test } from 'node:test';
import { fitLater } from '#actions/fit-later.ts';
import { followStock } from '#actions/follow-stock.ts';
import { planBuild } from '#actions/plan-build.ts';
import { planOpen } from '#actions/plan-open.ts';
import { reserveBom } from '#actions/reserve-bom.ts';
import { saveBoard } from '#actions/save-board.ts';
import { savedBom } from '#actions/saved-bom.ts';
import { undo } from '#actions/undo.ts';
import { demandKey } from '#core/part/demand-key.ts';
import { readBoard } from '#db/boards.ts';
import { checkLab } from '#db/check.ts';
import type { Lab } from '#db/database.ts';
import { writeLater } from '#db/later.ts';
import { readKit } from '#db/read-builds.ts';
import { act, CLOCK, did, fill, refusedBy, resistor, row, withLab, WHO, type Store } from './lab.ts';

const BOARD = { board: 'Heron' };
const OFF = demandKey(resistor(200));
const LINES = [
  row(2, resistor(100), { refs: ['R1'], quantity: null }),
  row(3, resistor(200), { refs: ['R2', 'R3'], quantity: null }),
  row(4, resistor(200), { refs: ['R4'], quantity: null }),
];

/** A board for which ten of the one part are there, and none of the other. */
async function heron(lab: Lab): Promise<void> {
  await fill(lab, 10);
  await did(act(lab, saveBoard, { ...BOARD, lines: LINES }));
}

async function laterOf(lab: Lab): Promise<readonly string[] | undefined> {
  return (await lab.read((tx) => readBoard(tx, BOARD.board)))?.later;
}

/** Rules of lines that are left off a board for now, on any engine the same. */
export function laterSuite(store: Store): void {
  const rule = (name: string, fn: (lab: Lab) => Promise<void>): void => {
    void test(`${store.engine}: ${name}`, () =>
      withLab(store, async (lab) => {
        await fn(lab);
        assert.deepEqual(await lab.read(checkLab), []);
      }));
  };

  rule('what is fitted later needs nothing, in plans, planned builds and reservations, and in later revisions', async (lab) => {
    await heron(lab);
    await did(act(lab, planBuild, { ...BOARD, boards: 3 }));
    const plan = async (): Promise<unknown> => {
      const { all } = await planOpen(lab, followStock(lab), [], { spares: false });
      return all.map(({ build, lines }) => [build.buildable, lines.map(({ need, because }) => [need, because[0]?.code])]);
    };
    assert.deepEqual(await plan(), [
      [
        0,
        [
          [3, 'same'],
          [6, 'short'],
          [3, 'short'],
        ],
      ],
    ]);
    const { warnings } = await did(act(lab, fitLater, { ...BOARD, demand: OFF, later: true, row: 4 }));
    assert.deepEqual(warnings, [{ code: 'same-demand', args: { row: 4, rows: '3' } }]);
    assert.deepEqual(await plan(), [
      [
        3,
        [
          [3, 'same'],
          [0, 'later'],
          [0, 'later'],
        ],
      ],
    ]);
    await did(act(lab, saveBoard, { ...BOARD, lines: LINES.slice(0, 2) }));
    const input = { id: randomUUID(), of: BOARD, boards: 2, spares: false };
    const reserved = await reserveBom(lab, followStock(lab), CLOCK, WHO, input, () => savedBom(lab, BOARD));
    const build = (reserved.ok ? reserved.value.result.builds[0]?.build : null) ?? assert.fail('not reserved');
    const kit = await lab.read((tx) => readKit(tx, build));
    assert.deepEqual(
      kit?.takes.map(({ bag, planned }) => [bag, planned]),
      [[1, 2]],
    );
  });

  rule('fit later is taken back once, and not after it was changed again', async (lab) => {
    await heron(lab);
    const wish = { ...BOARD, demand: OFF };
    const first = await did(act(lab, fitLater, { ...wish, later: true }));
    await refusedBy(act(lab, fitLater, { ...wish, later: true }), 'nothing-to-do');
    const again = await did(act(lab, fitLater, { ...wish, later: false }));
    assert.deepEqual(await laterOf(lab), []);
    assert.equal((await refusedBy(act(lab, undo, { act: first.act }), 'not-undoable'))['why'], 'changed-since');
    await did(act(lab, undo, { act: again.act }));
    assert.deepEqual(await laterOf(lab), [OFF]);
    await did(act(lab, undo, { act: first.act }));
    assert.deepEqual(await laterOf(lab), []);
    await refusedBy(act(lab, fitLater, { ...wish, demand: 'resistor|no such', later: true }), 'not-valid');
    await refusedBy(act(lab, fitLater, { ...wish, board: 'Egret', later: true }), 'no-such-board');
  });

  void test(`${store.engine}: a demand that no act left off is found by the check`, () =>
    withLab(store, async (lab) => {
      await heron(lab);
      const board = (await lab.read((tx) => readBoard(tx, BOARD.board)))?.board.id ?? '';
      await lab.transact((tx) => writeLater(tx, board, OFF, true));
      assert.deepEqual(await lab.read(checkLab), [{ code: 'later', args: { board, demand: OFF, kept: 1 } }]);
    }));
}
