import assert from 'node:assert/strict';
import { test } from 'node:test';
import * as fc from 'fast-check';
import { uncontended } from '#core/kit/alone.ts';
import { splitIndependent } from '#core/kit/groups.ts';
import type { Flow } from '#core/kit/flow.ts';
import type { Demand } from '#core/kit/kit.ts';
import { problemOf } from '#core/kit/problem.ts';
import { USUAL_SPARES } from '#core/kit/spares.data.ts';
import { bruteBest, flowOf, tupleOf } from '#test/brute-kit.ts';
import { bagOf, candidateOf, demandOf, needOf, smallLabs, stockOf } from '#test/small-labs.ts';
import { planKit } from './plan-kit.ts';
import { SolveStopped } from '#solver/limits.ts';

const LONG = process.env['BAGATELLE_LONG'] === '1';
const runs = (usual: number, long: number): { seed: number; numRuns: number } => ({
  seed: 20261125,
  numRuns: LONG ? long : usual,
});
const SMALL = { bags: 3, lines: 4, holds: 5, boards: 2, sparse: 1 };

for (const size of [
  SMALL,
  { bags: 4, lines: 3, holds: 3, boards: 2, sparse: 2 },
  { bags: 2, lines: 5, holds: 6, boards: 2, sparse: 3 },
]) {
  void test(`a plan is the best of all plans there are, on every aim in order (${size.bags} bags, ${size.lines} lines)`, async () => {
    let [solved, worse] = [0, 0];
    await fc.assert(
      fc.asyncProperty(smallLabs(size), async (lab) => {
        const plan = await planKit(lab.stock, lab.demands);
        const problem = problemOf(lab.stock, lab.demands);
        const best = bruteBest(lab);
        assert.equal(plan.proof, 'optimal');
        assert.deepEqual(tupleOf(problem, flowOf(problem, plan)), best);
        const unsolved = await planKit(lab.stock, lab.demands, { solve: () => Promise.reject(new SolveStopped()) });
        if (unsolved.proof === 'gap') solved += 1;
        if (tupleOf(problem, flowOf(problem, unsolved)).join() !== best.join()) worse += 1;
      }),
      runs(500, 10_000),
    );
    assert.ok(solved > 50 && worse > 5, `too few labs ask for the solver: ${solved} do, ${worse} are worse without it`);
  });
}

void test('where nothing is contended the closed form is the best of all plans', () => {
  let closed = 0;
  fc.assert(
    fc.property(smallLabs({ bags: 4, lines: 1, holds: 5, boards: 4, sparse: 1 }), (lab) => {
      const problem = problemOf(lab.stock, lab.demands);
      const flow: Flow = problem.lines.map(() => new Map());
      for (const group of splitIndependent(problem)) {
        const takes = uncontended(problem, group);
        if (takes === null) return;
        for (const [line, of] of takes) flow[line] = of;
      }
      closed += 1;
      assert.deepEqual(tupleOf(problem, flow), bruteBest(lab));
    }),
    runs(2000, 50_000),
  );
  assert.ok(closed > 1500, String(closed));
});

void test('the same stock gives the same plan, whatever the order in which bags and candidates are written', async () => {
  await fc.assert(
    fc.asyncProperty(smallLabs(SMALL), async ({ stock, demands }) => {
      const turned = demands.map((demand) => ({
        ...demand,
        needs: demand.needs.map((need) => ({ ...need, candidates: need.candidates.toReversed() })),
      }));
      const plan = await planKit(stock, demands);
      const again = await planKit({ ...stock, bags: stock.bags.toReversed() }, turned);
      const takes = (of: typeof plan): unknown =>
        of.builds.map(({ build, lines }) => [build, lines.map(({ line, takes }) => [line, takes])]);
      assert.deepEqual(takes(again), takes(plan));
    }),
    runs(150, 3000),
  );
});

void test('spares come from what is left and change nothing else', async () => {
  await fc.assert(
    fc.asyncProperty(smallLabs({ ...SMALL, holds: 9 }), async ({ stock, demands }) => {
      const [bare, spared] = [await planKit(stock, demands), await planKit(stock, demands, { spares: USUAL_SPARES })];
      const shorts = (of: typeof bare): unknown =>
        of.builds.map(({ buildable, lines }) => [buildable, lines.map(({ line, short }) => [line, short])]);
      assert.deepEqual(shorts(spared), shorts(bare));
    }),
    runs(100, 2000),
  );
});

void test('the first build gets its boards whole before the second gets any', async () => {
  const needs = (build: string): ReturnType<typeof needOf>[] => [needOf(`${build}/1`, 2, [candidateOf(1)])];
  const plan = await planKit(stockOf([bagOf(1, 7)]), [
    demandOf('late', 3, needs('late'), 1, '2026-12-24'),
    demandOf('soon', 2, needs('soon'), 1, '2026-12-01'),
  ]);
  assert.deepEqual(
    plan.builds.map(({ build, buildable, limitedBy }) => [build, buildable, limitedBy]),
    [
      ['soon', 2, []],
      ['late', 1, [{ bag: 1, reaches: 1 }]],
    ],
  );
  assert.equal(plan.builds[1]?.lines[0]?.short, 3);
});

void test('what could be built with the open checks is the most of all plans in which they are accepted', async () => {
  await fc.assert(
    fc.asyncProperty(smallLabs(SMALL), async ({ stock, demands }) => {
      for (const { build, buildableWithChecks } of (await planKit(stock, demands)).builds) {
        const upTo = problemOf(stock, demands).builds.findIndex((one) => one.build === build);
        const opened = problemOf(stock, demands)
          .builds.slice(0, upTo + 1)
          .map((one) => (one.build === build ? accepting(one) : one));
        assert.equal(buildableWithChecks, -(bruteBest({ stock, demands: opened })[upTo] ?? 0));
      }
    }),
    runs(300, 5000),
  );
});

void test('three lines on one bag share its pieces, also where they are still to be checked', async () => {
  for (const verdict of ['check', 'exact'] as const) {
    const needs = [1, 2, 3].map((line) => needOf(`b/${line}`, 1, [candidateOf(1, line === 1 ? 'exact' : verdict)]));
    const [plan] = (await planKit(stockOf([bagOf(1, 10)]), [demandOf('b', 12, needs)])).builds;
    assert.equal(plan?.buildableWithChecks, 3);
  }
});

function accepting(demand: Demand): Demand {
  const needs = demand.needs.map((need) => ({
    ...need,
    candidates: need.candidates.map((one) => ({ ...one, accepted: one.verdict === 'check' || one.accepted })),
  }));
  return { ...demand, needs };
}

void test('checks are planned when they were accepted, and counted when they were not', async () => {
  const stock = stockOf([bagOf(1, 3), bagOf(2, 9)]);
  const open = demandOf('b', 5, [needOf('b/1', 1, [candidateOf(1), candidateOf(2, 'check')])]);
  const [plan] = (await planKit(stock, [open])).builds;
  assert.deepEqual([plan?.buildable, plan?.buildableWithChecks], [3, 5]);
  const [accepted] = (
    await planKit(stock, [demandOf('b', 5, [needOf('b/1', 1, [candidateOf(1), candidateOf(2, 'check', true)])])])
  ).builds;
  assert.deepEqual(accepted?.lines[0]?.takes, [
    { bag: 1, take: 3 },
    { bag: 2, take: 2 },
  ]);
});

void test('a line that no bag answers is named as what limits the build', async () => {
  const [plan] = (
    await planKit(stockOf([bagOf(1, 9)]), [demandOf('b', 2, [needOf('b/1', 1, [candidateOf(1)]), needOf('b/2', 1, [])])])
  ).builds;
  assert.deepEqual([plan?.buildable, plan?.limitedBy], [0, [{ line: 'b/2', reaches: 0 }]]);
});

void test('without a solver a plan keeps its boards and its fewest shorts, and says that it is not proved', async () => {
  const lines = [needOf('b/1', 1, [candidateOf(1), candidateOf(2)]), needOf('b/2', 1, [candidateOf(1)])];
  const plan = await planKit(stockOf([bagOf(1, 3), bagOf(2, 3)]), [demandOf('b', 3, lines)], {
    solve: () => Promise.reject(new SolveStopped()),
  });
  assert.deepEqual([plan.proof, plan.builds[0]?.buildable], ['gap', 3]);
  const broken = new Error('a bug of ours');
  await assert.rejects(
    planKit(stockOf([bagOf(1, 3), bagOf(2, 3)]), [demandOf('b', 3, lines)], { solve: () => Promise.reject(broken) }),
    broken,
    'only a stop is made a gap',
  );
});

void test('pieces that complete no board go to the first build: a later one never makes it shorter', async () => {
  const demands = ['late', 'soon'].map((build, at) =>
    demandOf(build, 3, [needOf(`${build}/1`, 2, [candidateOf(1), candidateOf(2)]), needOf(`${build}/2`, 1, [])], 2 - at),
  );
  const [soon, late] = (await planKit(stockOf([bagOf(1, 3), bagOf(2, 4)]), demands)).builds;
  assert.deepEqual([soon?.build, soon?.lines[0]?.short, late?.lines[0]?.short], ['soon', 0, 5]);
});
