import assert from 'node:assert/strict';
import { randomUUID } from 'node:crypto';
import { test } from 'node:test';
import { choose } from '#actions/choose.ts';
import { finishBuild } from '#actions/finish-build.ts';
import { followStock } from '#actions/follow-stock.ts';
import { pickForBuild } from '#actions/pick-for-build.ts';
import { planBom } from '#actions/plan-bom.ts';
import { receive } from '#actions/receive.ts';
import { reserveBom } from '#actions/reserve-bom.ts';
import { saveBoard } from '#actions/save-board.ts';
import { undo } from '#actions/undo.ts';
import type { ReadRow } from '#core/bom/bom.ts';
import { demandKey } from '#core/part/demand-key.ts';
import { readPart } from '#core/part/read-part.ts';
import type { Because } from '#core/serve/verdict.ts';
import { readBoard } from '#db/boards.ts';
import { checkLab } from '#db/check.ts';
import type { Lab } from '#db/database.ts';
import { readActs } from '#db/history.ts';
import { readKit } from '#db/read-builds.ts';
import { act, CLOCK, did, fill, refusedBy, resistor, row, withLab, WHO, type Store } from './lab.ts';

const FUSE = readPart('fuse 5x20 1 A slow 250 V').part;
const STRONGER = readPart('fuse 5x20 2 A slow 250 V').part;
const BOARD = { board: 'Lantern' };
const FUSES = [row(2, FUSE, { refs: ['F1'], quantity: null }), row(5, FUSE, { refs: ['F2'], quantity: null })];

async function lantern(lab: Lab): Promise<void> {
  await did(act(lab, receive, { items: [FUSE, STRONGER].map((part) => ({ quantity: 20, part })) }));
  await did(act(lab, saveBoard, { ...BOARD, lines: FUSES }));
}

/** What is said of the first line of the board, and what is taken for it. */
async function firstLine(lab: Lab): Promise<{ because: readonly Because[]; bags: number[] }> {
  const found = (await lab.read((tx) => readBoard(tx, BOARD.board))) ?? assert.fail('no board');
  const { lines } = await planBom(await followStock(lab).current(), { rows: found.lines, choices: found.choices }, 1, {
    spares: false,
  });
  const [line] = lines;
  return { because: line?.because ?? [], bags: (line?.takes ?? []).map(({ bag }) => bag) };
}

async function reserved(
  lab: Lab,
  lines: readonly ReadRow[],
  boards: number,
  anyway = false,
): Promise<ReturnType<typeof reserveBom>> {
  const input = { id: randomUUID(), of: { rows: lines }, boards, spares: false, ...(anyway && { anyway }) };
  const found = { ok: true as const, value: { name: 'Lantern', rows: lines, choices: [] } };
  return reserveBom(lab, followStock(lab), CLOCK, WHO, input, () => Promise.resolve(found));
}

/** Rules of what only a person can decide, on any engine the same. */
export function decidingSuite(store: Store): void {
  const rule = (name: string, fn: (lab: Lab) => Promise<void>): void => {
    void test(`${store.engine}: ${name}`, () =>
      withLab(store, async (lab) => {
        await fn(lab);
        assert.deepEqual(await lab.read(checkLab), []);
      }));
  };

  rule(
    'a bag of which a stated fact is below or different is taken only with a reason, loudly where it protects people',
    async (lab) => {
      await lantern(lab);
      const wish = { ...BOARD, demand: demandKey(FUSE), row: 2, bag: 2, accept: true };
      const against = await refusedBy(act(lab, choose, wish), 'override');
      assert.deepEqual(against, { bag: 2, row: 2, why: 'differs', fact: 'value', has: '2 A', asked: '1 A' });
      await refusedBy(act(lab, choose, { ...wish, reason: '  ' }), 'override');
      const { act: id, warnings } = await did(act(lab, choose, { ...wish, reason: 'only for the test bench' }));
      assert.deepEqual(
        warnings.map(({ code }) => code),
        ['safety-by-hand', 'same-demand'],
      );
      assert.deepEqual(warnings[1]?.args, { row: 2, rows: '5' });
      const { because, bags } = await firstLine(lab);
      assert.deepEqual(bags, [2]);
      assert.ok(because.some(({ code, args }) => code === 'accepted' && args['reason'] === 'only for the test bench'));
      assert.equal((await lab.read((tx) => readActs(tx, { limit: 1 })))[0]?.note, 'only for the test bench');
      await did(act(lab, undo, { act: id }));
      assert.deepEqual((await firstLine(lab)).bags, [1]);
    },
  );

  rule('a choice that replaces another says which, and its reason goes when it is taken back', async (lab) => {
    await lantern(lab);
    const wish = { ...BOARD, demand: demandKey(FUSE), accept: true };
    await did(act(lab, choose, { ...wish, bag: 2, reason: 'test bench' }));
    const { act: id, warnings } = await did(act(lab, choose, { ...wish, bag: 1 }));
    assert.deepEqual(warnings.at(-1), { code: 'choice-replaced', args: { bag: 2 } });
    assert.ok((await firstLine(lab)).because.every(({ args }) => args['reason'] === undefined));
    await did(act(lab, undo, { act: id }));
    assert.ok((await firstLine(lab)).because.some(({ args }) => args['reason'] === 'test bench'));
  });

  rule('nothing is promised where not one board can be built, unless that is meant', async (lab) => {
    await fill(lab, 3);
    const lines = [row(2, resistor(100), { refs: ['R1', 'R2', 'R3', 'R4'], quantity: null })];
    const refused = await reserved(lab, lines, 2);
    assert.deepEqual(refused, { ok: false, refusal: { code: 'nothing-made', args: { boards: 2 } } });
    assert.equal((await reserved(lab, lines, 2, true)).ok, true);
  });

  rule('more than a cell wants is booked and said; how many boards were made is asked where lines are short', async (lab) => {
    await fill(lab, 50, 3);
    const lines = [
      row(2, resistor(100), { refs: ['R1', 'R2'], quantity: null }),
      row(3, resistor(200), { refs: ['R3', 'R4'], quantity: null }),
    ];
    const outcome = await reserved(lab, lines, 2);
    const build = (outcome.ok ? outcome.value.result.builds[0]?.build : null) ?? assert.fail('not reserved');
    const takes = (await lab.read((tx) => readKit(tx, build)))?.takes ?? [];
    const picks = takes.map(({ id, planned, bag }) => ({ take: id, quantity: bag === 1 ? 9 : planned }));
    const { warnings } = await did(act(lab, pickForBuild, { build, picks }));
    assert.deepEqual(warnings, [
      {
        code: 'cell-over',
        args: { tray: 1, cell: takes.find(({ bag }) => bag === 1)?.cell ?? 0, bag: 1, planned: 4, picked: 9, over: 5 },
      },
    ]);
    assert.deepEqual(await refusedBy(act(lab, finishBuild, { build }), 'made-unknown'), {
      build: 'Lantern',
      boards: 2,
      lines: 1,
    });
    const finished = await did(act(lab, finishBuild, { build, made: 2 }));
    assert.deepEqual(finished.warnings, [{ code: 'short-lines', args: { made: 2, lines: 1 } }]);
    await did(act(lab, undo, { act: finished.act }));
    assert.deepEqual((await did(act(lab, finishBuild, { build, made: 1 }))).warnings, []);
  });
}
