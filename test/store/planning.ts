import assert from 'node:assert/strict';
import { randomUUID } from 'node:crypto';
import { test } from 'node:test';
import { cancelBuild } from '#actions/cancel-build.ts';
import { followStock } from '#actions/follow-stock.ts';
import type { PlanBuildInput } from '#actions/inputs.ts';
import { pickForBuild } from '#actions/pick-for-build.ts';
import { planBuild } from '#actions/plan-build.ts';
import { planAsked, planOpen, type Wish } from '#actions/plan-open.ts';
import { reserveBom, type ReserveBomInput } from '#actions/reserve-bom.ts';
import { reservePlanned } from '#actions/reserve-planned.ts';
import { saveBoard } from '#actions/save-board.ts';
import { undo } from '#actions/undo.ts';
import { checkLab } from '#db/check.ts';
import type { Lab } from '#db/database.ts';
import { readBuilds, readKit } from '#db/read-builds.ts';
import { act, CLOCK, did, fill, heldIn, refusedBy, resistor, row, withLab, WHO, type Store } from './lab.ts';

const BARE = { spares: false };
/** Two of the 100 ohm resistors of bag 1 for each board. */
const LINES = [row(2, resistor(100), { refs: ['R1', 'R2'], quantity: null })];
const WISH: Wish = { name: 'asked', boards: 3, rows: LINES, choices: [] };

async function keep(lab: Lab, name: string, more: Partial<PlanBuildInput> = {}): Promise<{ act: string; build: string }> {
  return did(act(lab, planBuild, { board: 'Fox lamp', boards: 3, name, ...more }));
}

/** Who gets how many boards, the first served first. */
async function gets(lab: Lab, ...wishes: Wish[]): Promise<[name: string, boards: number][]> {
  const { all } = await planOpen(lab, followStock(lab), wishes, BARE);
  return all.map(({ open, build }) => [open.name, build.buildable]);
}

async function states(lab: Lab): Promise<string[]> {
  return (await lab.read(readBuilds)).map(({ name, state }) => `${name} ${state}`);
}

function reserve(lab: Lab, build: string, id: string = randomUUID()) {
  return reservePlanned(lab, followStock(lab), CLOCK, WHO, { id, build, ...BARE });
}

function reserveRows(lab: Lab, wanted: Pick<ReserveBomInput, 'boards' | 'name' | 'priority'>) {
  const input = { id: randomUUID(), of: { rows: LINES }, ...wanted, ...BARE };
  return reserveBom(lab, followStock(lab), CLOCK, WHO, input, () => Promise.resolve({ ok: true, value: WISH }));
}

/** Rules of builds that are planned and compete, on any engine the same. */
export function planningSuite(store: Store): void {
  const rule = (name: string, fn: Parameters<typeof withLab>[1]): void => {
    void test(`${store.engine}: ${name}`, () =>
      withLab(store, async (lab, again) => {
        await fill(lab, 8);
        await did(act(lab, saveBoard, { board: 'Fox lamp', lines: LINES }));
        await fn(lab, again);
        assert.deepEqual(await lab.read(checkLab), []);
      }));
  };

  rule('a planned build promises nothing, is kept once for an id, and competes no more when it is taken back', async (lab) => {
    const id = randomUUID();
    const kept = await did(act(lab, planBuild, { id, board: 'Fox lamp', boards: 3, due: '2026-12-01' }));
    const again = await did(act(lab, planBuild, { id, board: 'Fox lamp', boards: 3, due: '2026-12-01' }));
    assert.deepEqual([again.repeat, again.build, await heldIn(lab, 1)], [true, kept.build, [8, 8, 8]]);
    assert.deepEqual([kept.name, kept.revision, kept.priority, await states(lab)], ['Fox lamp', '1', 5, ['Fox lamp planned']]);
    assert.deepEqual(await gets(lab, WISH), [
      ['Fox lamp', 3],
      ['asked', 1],
    ]);
    await did(act(lab, undo, { act: kept.act }));
    assert.deepEqual([await gets(lab, WISH), await states(lab)], [[['asked', 3]], []]);
  });

  rule('what a planned build is to be is looked at before it is kept', async (lab) => {
    const wish = { board: 'Fox lamp', boards: 3 };
    await refusedBy(act(lab, planBuild, { ...wish, board: 'Owl' }), 'no-such-board');
    await refusedBy(act(lab, planBuild, { ...wish, boards: 0 }), 'out-of-range');
    await refusedBy(act(lab, planBuild, { ...wish, priority: 1.5 }), 'not-whole');
    await refusedBy(act(lab, planBuild, { ...wish, due: '2026-02-30' }), 'not-valid');
    assert.deepEqual(await states(lab), []);
  });

  rule(
    'the last pieces go by priority, then by due date, then as written; what is asked for comes last among equals',
    async (lab) => {
      await keep(lab, 'first written');
      await keep(lab, 'due', { due: '2027-01-01' });
      await keep(lab, 'urgent', { priority: 1, boards: 1 });
      assert.deepEqual(await gets(lab), [
        ['urgent', 1],
        ['due', 3],
        ['first written', 0],
      ]);
      assert.deepEqual(await gets(lab, { ...WISH, due: '2026-12-24' }), [
        ['urgent', 1],
        ['asked', 3],
        ['due', 0],
        ['first written', 0],
      ]);
      assert.deepEqual(
        (await gets(lab, WISH)).map(([name]) => name),
        ['urgent', 'due', 'first written', 'asked'],
      );
    },
  );

  rule('a line that is short because another build comes first says which', async (lab) => {
    await keep(lab, 'first', { boards: 2 });
    await did(reserveRows(lab, { boards: 1, name: 'held', priority: 1 }));
    const { planned } = await planAsked(lab, followStock(lab), WISH, BARE);
    const named = planned.lines[0]?.because.filter(({ code }) => code === 'promised').map(({ args }) => args['build']);
    assert.deepEqual([planned.build.buildable, planned.lines[0]?.short, named], [1, 4, ['held', 'first']]);
    const { planned: enough } = await planAsked(lab, followStock(lab), { ...WISH, boards: 1 }, BARE);
    assert.ok(enough.lines[0]?.because.every(({ code }) => code !== 'promised'));
  });

  rule('reserving the second leaves the first whole, unless the second is asked to come first', async (lab) => {
    const first = await keep(lab, 'first');
    const second = await keep(lab, 'second');
    const held = await did(reserve(lab, second.build));
    assert.deepEqual([await heldIn(lab, 1), await gets(lab)], [[8, 8, 6], [['first', 3]]]);
    await did(act(lab, undo, { act: held.result.act }));
    await did(reserveRows(lab, { boards: 3, name: 'pushed', priority: 1 }));
    assert.deepEqual(await gets(lab), [
      ['first', 1],
      ['second', 0],
    ]);
    assert.equal((await did(reserve(lab, first.build))).planned?.build.buildable, 1);
  });

  rule('a planned build is reserved once, goes on as any other, and is planned again when that is taken back', async (lab) => {
    const { act: planned, build } = await keep(lab, 'lamp');
    const id = randomUUID();
    const held = await did(reserve(lab, build, id));
    assert.deepEqual([held.result.builds[0]?.build, (await did(reserve(lab, build, id))).result.repeat], [build, true]);
    await refusedBy(reserve(lab, build), 'build-state');
    const picked = await did(act(lab, pickForBuild, { build }));
    assert.equal((await refusedBy(act(lab, undo, { act: held.result.act }), 'not-undoable'))['why'], 'build-went-on');
    await did(act(lab, undo, { act: picked.act }));
    assert.equal((await refusedBy(act(lab, undo, { act: planned }), 'not-undoable'))['why'], 'build-went-on');
    await did(act(lab, undo, { act: held.result.act }));
    assert.deepEqual([await states(lab), await heldIn(lab, 1), await gets(lab)], [['lamp planned'], [8, 8, 8], [['lamp', 3]]]);
    await did(reserve(lab, build));
    const kit = await lab.read((tx) => readKit(tx, build));
    assert.deepEqual(
      [kit?.build.state, kit?.lines.length, kit?.takes.map(({ planned: pieces }) => pieces)],
      ['reserved', 1, [6]],
    );
    await did(act(lab, undo, { act: (await did(act(lab, cancelBuild, { build }))).act }));
    assert.deepEqual([await states(lab), await heldIn(lab, 1)], [['lamp reserved'], [8, 8, 2]]);
  });

  rule('a planned build is given up, and that is taken back', async (lab) => {
    const { build } = await keep(lab, 'lamp');
    await refusedBy(act(lab, pickForBuild, { build }), 'build-state');
    const given = await did(act(lab, cancelBuild, { build }));
    assert.deepEqual([await gets(lab), await states(lab)], [[], ['lamp cancelled']]);
    await did(act(lab, undo, { act: given.act }));
    assert.deepEqual(await gets(lab), [['lamp', 3]]);
  });
}
