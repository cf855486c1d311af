import assert from 'node:assert/strict';
import { test } from 'node:test';
import { cancelBuild } from '#actions/cancel-build.ts';
import { choose } from '#actions/choose.ts';
import { count } from '#actions/count.ts';
import { finishBuild } from '#actions/finish-build.ts';
import { pickForBuild } from '#actions/pick-for-build.ts';
import { pick } from '#actions/pick.ts';
import { reserveKit } from '#actions/reserve-kit.ts';
import { returnLeftovers } from '#actions/return-leftovers.ts';
import { saveBoard } from '#actions/save-board.ts';
import { setAside } from '#actions/set-aside.ts';
import { undo } from '#actions/undo.ts';
import type { Plan, PlannedLine } from '#core/kit/kit.ts';
import { readBoard, readBoards } from '#db/boards.ts';
import { checkLab } from '#db/check.ts';
import type { Lab } from '#db/database.ts';
import { readKitActs } from '#db/kit-acts.ts';
import { readBuilds, readKit, type Kit } from '#db/read-builds.ts';
import { act, bagOf, did, fill, heldIn, refusedBy, resistor, row, withLab, type Store } from './lab.ts';

/** A plan that takes so many from bags 1, 2, 3 …, a line for each. */
export function planOf(...takes: readonly number[]): Plan {
  const lines = takes.map((take, at): PlannedLine => ({
    line: `b/${at + 1}`,
    row: at + 2,
    refs: [`R${at + 1}`],
    need: take,
    spare: 0,
    short: 0,
    verdict: 'exact',
    because: [],
    takes: [{ bag: at + 1, take }],
  }));
  return {
    proof: 'optimal',
    gap: 0,
    builds: [{ build: 'b', boards: 2, buildable: 2, buildableWithChecks: 2, limitedBy: [], lines }],
  };
}

async function reserve(lab: Lab, plan: Plan): Promise<{ act: string; build: string }> {
  const change = await lab.change();
  const result = await did(act(lab, reserveKit, { plan, change, builds: [{ key: 'b', name: 'Fox lamp' }] }));
  return { act: result.act, build: result.builds[0]?.build ?? '' };
}

async function kitOf(lab: Lab, build: string): Promise<Kit> {
  return (await lab.read((tx) => readKit(tx, build))) ?? assert.fail(`no kit ${build}`);
}

/** Rules of boards, builds and kits, on any engine the same. */
export function buildingSuite(store: Store): void {
  const rule = (name: string, fn: Parameters<typeof withLab>[1]): void => {
    void test(`${store.engine}: ${name}`, () =>
      withLab(store, async (lab, again) => {
        await fn(lab, again);
        assert.deepEqual(await lab.read(checkLab), []);
      }));
  };

  rule('a board keeps its revisions, its lines as read, and its choices from one revision to the next', async (lab) => {
    await fill(lab, 50, 20);
    const lines = [row(2, resistor(100), { refs: ['R1', 'R2'] }), row(3, resistor(200), { refs: ['R3'], fitted: false })];
    const first = await did(act(lab, saveBoard, { board: 'Fox lamp', lines, source: 'fox.csv' }));
    const chosen = await did(act(lab, choose, { board: 'Fox lamp', demand: 'resistor|100', bag: 2, accept: true }));
    await did(act(lab, saveBoard, { board: 'Fox lamp', revision: 'B', lines: lines.slice(0, 1) }));
    const newest = await lab.read((tx) => readBoard(tx, 'Fox lamp'));
    assert.deepEqual(
      [newest?.revision.name, newest?.lines.length, newest?.choices],
      ['B', 1, [{ demand: 'resistor|100', bag: 2, accept: true }]],
    );
    assert.deepEqual((await lab.read((tx) => readBoard(tx, 'Fox lamp', '1')))?.lines, lines);
    assert.deepEqual(
      (await lab.read(readBoards))[0]?.revisions.map((one) => [one.name, one.lines]),
      [
        ['1', 2],
        ['B', 1],
      ],
    );
    await refusedBy(act(lab, saveBoard, { board: 'Fox lamp', revision: 'B', lines }), 'not-valid');
    await refusedBy(act(lab, choose, { board: 'Owl', demand: 'x', bag: 2, accept: false }), 'no-such-board');

    await did(act(lab, undo, { act: chosen.act }));
    assert.deepEqual((await lab.read((tx) => readBoard(tx, 'Fox lamp')))?.choices, []);
    await did(act(lab, undo, { act: first.act }));
    assert.equal(await lab.read((tx) => readBoard(tx, 'Fox lamp', '1')), null);
  });

  rule('a reserved kit keeps its pieces in the bags and out of what is free', async (lab) => {
    await fill(lab, 50, 20);
    const { act: reserved, build } = await reserve(lab, planOf(10, 20));
    assert.deepEqual(
      [await heldIn(lab, 1), await heldIn(lab, 2)],
      [
        [50, 50, 40],
        [20, 20, 0],
      ],
    );
    const stale = await refusedBy(
      act(lab, reserveKit, { plan: planOf(41, 1), change: 1, builds: [{ key: 'b', name: 'Owl' }] }),
      'plan-stale',
    );
    assert.deepEqual(stale, { bags: '1, 2', planned: '41, 1', free: '40, 0' });
    const warned = await did(act(lab, pick, { bag: 2, quantity: 5 }));
    assert.deepEqual(warned.warnings, [{ code: 'promise-broken', args: { bag: 2, free: -5, reserved: 20, builds: 'Fox lamp' } }]);
    await did(act(lab, undo, { act: warned.act }));
    await did(act(lab, undo, { act: reserved }));
    assert.deepEqual([await heldIn(lab, 2), await lab.read(readBuilds)], [[20, 20, 20], []]);
    await refusedBy(act(lab, pickForBuild, { build }), 'no-such-build');
  });

  rule('a bag that is astray is out of plans', async (lab) => {
    await fill(lab, 50);
    await did(act(lab, setAside, { bag: 1, state: 'astray' }));
    await refusedBy(act(lab, reserveKit, { plan: planOf(1), change: 2, builds: [{ key: 'b', name: 'Owl' }] }), 'plan-stale');
  });

  rule('a kit is picked whole or stop by stop; what is left open stays promised', async (lab) => {
    await fill(lab, 50, 20);
    const { build } = await reserve(lab, planOf(10, 20));
    const [one, two] = (await kitOf(lab, build)).takes;
    const first = await did(act(lab, pickForBuild, { build, picks: [{ take: one?.id ?? '', quantity: 4 }] }));
    assert.deepEqual([first.picked, first.open, await heldIn(lab, 1)], [4, 2, [46, 46, 40]]);
    const rest = await did(act(lab, pickForBuild, { build }));
    assert.deepEqual([rest.picked, rest.open, await heldIn(lab, 1), await heldIn(lab, 2)], [26, 0, [40, 40, 40], [0, 0, 0]]);
    await refusedBy(act(lab, pickForBuild, { build }), 'nothing-to-do');
    const more = await did(act(lab, pickForBuild, { build, picks: [{ take: one?.id ?? '', quantity: 1 }] }));
    assert.deepEqual(more.warnings, [{ code: 'picked-again', args: { bag: 1, build: 'Fox lamp', quantity: 1, picked: 10 } }]);
    await did(act(lab, undo, { act: more.act }));
    await did(act(lab, undo, { act: rest.act }));
    assert.deepEqual(
      [await heldIn(lab, 1), await heldIn(lab, 2)],
      [
        [46, 46, 40],
        [20, 20, 0],
      ],
    );
    await did(act(lab, undo, { act: first.act }));
    const kit = await kitOf(lab, build);
    assert.deepEqual(
      [kit.build.state, kit.takes.map((take) => [take.bag, take.picked, take.state])],
      [
        'reserved',
        [
          [1, 0, 'open'],
          [2, 0, 'open'],
        ],
      ],
    );
    assert.equal(two?.planned, 20);
  });

  rule('a short pick lets the promise go and puts the bag on the count list', async (lab) => {
    await fill(lab, 50, 20);
    const { build } = await reserve(lab, planOf(10, 20));
    const take = (await kitOf(lab, build)).takes[1]?.id ?? '';
    const short = await did(act(lab, pickForBuild, { build, picks: [{ take, quantity: 12, short: true }] }));
    assert.deepEqual(
      [short.warnings.map((one) => one.code), await heldIn(lab, 2), (await bagOf(lab, 2)).toCount],
      [['on-count-list'], [8, 8, 8], true],
    );
    await did(act(lab, undo, { act: short.act }));
    assert.deepEqual([await heldIn(lab, 2), (await bagOf(lab, 2)).toCount], [[20, 20, 0], false]);
  });

  rule('a kit that wants more than the record says is refused, unless it is in the hand', async (lab) => {
    await fill(lab, 50, 20);
    const { build } = await reserve(lab, planOf(10, 20));
    await did(act(lab, count, { bag: 2, total: 15 }));
    assert.deepEqual(await refusedBy(act(lab, pickForBuild, { build }), 'not-enough'), { bag: 2, onHand: 15, asked: 20 });
    assert.deepEqual(await heldIn(lab, 1), [50, 50, 40], 'nothing of it was picked');
    const picked = await did(act(lab, pickForBuild, { build, inHand: true }));
    assert.deepEqual([picked.picked, await heldIn(lab, 2), (await bagOf(lab, 2)).toCount], [30, [0, 0, 0], true]);
  });

  rule('when the boards are made, leftovers come back, at most what was picked', async (lab) => {
    await fill(lab, 50, 20);
    const { build } = await reserve(lab, planOf(10, 20));
    const picked = await did(act(lab, pickForBuild, { build }));
    const made = await did(act(lab, finishBuild, { build, made: 1 }));
    await refusedBy(act(lab, pickForBuild, { build }), 'build-state');
    const take = (await kitOf(lab, build)).takes[0]?.id ?? '';
    await refusedBy(act(lab, returnLeftovers, { build, returns: [{ take, quantity: 11 }] }), 'out-of-range');
    const back = await did(act(lab, returnLeftovers, { build, returns: [{ take, quantity: 3 }] }));
    assert.deepEqual(back.bags, [{ bag: 1, onHand: 43, sure: 43, free: 43 }]);
    assert.equal((await refusedBy(act(lab, undo, { act: picked.act }), 'not-undoable'))['why'], 'build-went-on');
    await did(act(lab, undo, { act: back.act }));
    await did(act(lab, undo, { act: made.act }));
    await did(act(lab, undo, { act: picked.act }));
    assert.deepEqual(
      [await heldIn(lab, 1), await heldIn(lab, 2)],
      [
        [50, 50, 40],
        [20, 20, 0],
      ],
    );
  });

  rule('a build knows its acts, the newest first, with what they touched and what took them back', async (lab) => {
    await fill(lab, 50, 20);
    const { act: reserved, build } = await reserve(lab, planOf(10, 20));
    await reserve(lab, planOf(1));
    const take = (await kitOf(lab, build)).takes[0]?.id ?? '';
    const picked = await did(act(lab, pickForBuild, { build, picks: [{ take, quantity: 6 }] }));
    const undone = await did(act(lab, undo, { act: picked.act }));
    const acts = await lab.read((tx) => readKitActs(tx, build));
    assert.deepEqual(
      acts.map((one) => [one.act, one.undoes, one.undoneBy, one.takes, one.pieces]),
      [
        [undone.act, picked.act, null, [take], 6],
        [picked.act, null, undone.act, [take], 6],
        [reserved, null, null, [], 0],
      ],
    );
  });

  rule('a build that is given up frees its promises and takes back what was picked', async (lab) => {
    await fill(lab, 50, 20);
    const { act: reserved, build } = await reserve(lab, planOf(10, 20));
    const take = (await kitOf(lab, build)).takes[0]?.id ?? '';
    await did(act(lab, pickForBuild, { build, picks: [{ take, quantity: 6 }] }));
    const cancelled = await did(act(lab, cancelBuild, { build }));
    assert.deepEqual([cancelled.returned, await heldIn(lab, 1), await heldIn(lab, 2)], [6, [50, 50, 50], [20, 20, 20]]);
    assert.equal((await refusedBy(act(lab, undo, { act: reserved }), 'not-undoable'))['why'], 'build-went-on');
    await did(act(lab, undo, { act: cancelled.act }));
    assert.deepEqual(
      [await heldIn(lab, 1), await heldIn(lab, 2), (await kitOf(lab, build)).build.state],
      [[44, 44, 40], [20, 20, 0], 'picking'],
    );
  });
}
