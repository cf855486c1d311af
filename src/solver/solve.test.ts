import assert from 'node:assert/strict';
import { test } from 'node:test';
import * as fc from 'fast-check';
import type { Model, Row } from '#core/kit/model.ts';
import { broken, rounded } from './check-solution.ts';
import { exhaustive } from './exhaustive.ts';
import { solve } from './solve.ts';

const LONG = process.env['BAGATELLE_LONG'] === '1';

const models = fc
  .record({
    sense: fc.constantFrom<Model['sense']>('min', 'max'),
    costs: fc.array(fc.integer({ min: -6, max: 6 }), { minLength: 1, maxLength: 4 }),
    highs: fc.array(fc.integer({ min: 0, max: 4 }), { minLength: 4, maxLength: 4 }),
    rows: fc.array(
      fc.record({
        terms: fc.array(fc.integer({ min: -4, max: 4 }), { minLength: 4, maxLength: 4 }),
        low: fc.integer({ min: -8, max: 6 }),
        width: fc.integer({ min: 0, max: 12 }),
      }),
      { maxLength: 4 },
    ),
  })
  .map(({ sense, costs, highs, rows }): Model => ({
    sense,
    columns: costs.map((cost, at) => ({ name: `x${at}`, cost, low: 0, high: highs[at] ?? 1, whole: true })),
    rows: rows.map(({ terms, low, width }, row): Row => ({
      name: `r${row}`,
      low,
      high: low + width,
      terms: terms.flatMap((coefficient, at) => (at < costs.length && coefficient !== 0 ? [[at, coefficient] as const] : [])),
    })),
  }));

void test('the solver finds what trying everything finds, and says so when there is nothing', async () => {
  await fc.assert(
    fc.asyncProperty(models, async (model) => {
      const [answer, truth] = [await solve(model), exhaustive(model)];
      assert.equal(answer.proof, truth.proof);
      if (truth.proof === 'optimal') assert.equal(answer.objective, truth.objective);
    }),
    { seed: 20261125, numRuns: LONG ? 20_000 : 600 },
  );
});

const column = (name: string, cost: number, high = Infinity, whole = false): Model['columns'][number] => ({
  name,
  cost,
  low: 0,
  high,
  whole,
});

void test('what is open has no optimum, and what contradicts itself no solution', async () => {
  assert.equal((await solve({ sense: 'max', columns: [column('x', 1)], rows: [] })).proof, 'unbounded');
  assert.equal(
    (await solve({ sense: 'max', columns: [column('x', 1, 3)], rows: [{ name: 'r', low: 5, high: 9, terms: [[0, 1]] }] })).proof,
    'infeasible',
  );
  assert.equal((await solve({ sense: 'min', columns: [], rows: [] })).proof, 'optimal');
});

void test('an answer is looked at again: a broken row is named, a half is no whole number', () => {
  const model: Model = {
    sense: 'min',
    columns: [column('x', 1, 3, true)],
    rows: [{ name: 'at least two', low: 2, high: 9, terms: [[0, 1]] }],
  };
  assert.deepEqual(broken(model, [1]), ['at least two']);
  assert.deepEqual(broken(model, [4]), ['x']);
  assert.equal(rounded(model, [1.5]), null);
  assert.deepEqual(rounded(model, [1.9999999]), [2]);
});

/** Steiner triples of the affine geometry AG(3,3): hitting all of them is known to be slow to prove. */
function hittingSet(): Model {
  const points = Array.from({ length: 27 }, (_, at) => [Math.floor(at / 9), Math.floor(at / 3) % 3, at % 3] as const);
  const rows = points.flatMap((a, i) =>
    points.flatMap((b, j) => {
      const third = [0, 1, 2].map((axis) => (6 - (a[axis] ?? 0) - (b[axis] ?? 0)) % 3);
      const k = (third[0] ?? 0) * 9 + (third[1] ?? 0) * 3 + (third[2] ?? 0);
      return i < j && j < k
        ? [
            {
              name: `${i} ${j} ${k}`,
              low: 1,
              high: Infinity,
              terms: [
                [i, 1],
                [j, 1],
                [k, 1],
              ] as const,
            },
          ]
        : [];
    }),
  );
  return { sense: 'min', columns: points.map((_, at) => column(`p${at}`, 1, 1, true)), rows };
}

void test('at its limit of nodes the solver hands over the best it has, with its gap, and the same twice', async () => {
  const [first, second] = [
    await solve(hittingSet(), { nodes: 1, seconds: 60 }),
    await solve(hittingSet(), { nodes: 1, seconds: 60 }),
  ];
  assert.ok(first.objective >= 18 && first.bound <= 18);
  assert.deepEqual(second, first);
  assert.equal(first.proof === 'optimal', first.gap === 0);
});

void test('the event loop stays free while the solver works, and giving up ends it at once', async () => {
  const stop = new AbortController();
  let turns = 0;
  const clock = setInterval(() => {
    if ((turns += 1) === 3) stop.abort();
  }, 1);
  const hard = { ...hittingSet(), columns: hittingSet().columns.map((one, at) => ({ ...one, cost: 1000 + at })) };
  await assert.rejects(solve(hard, { nodes: 1e6, seconds: 60, signal: stop.signal }));
  clearInterval(clock);
  assert.ok(turns >= 3);
  assert.equal((await solve({ sense: 'max', columns: [column('x', 1, 3, true)], rows: [] })).objective, 3);
});

void test('who gives up ends only what was asked by him; whoever waits behind gets an answer', async () => {
  const [first, third] = [new AbortController(), new AbortController()];
  const easy: Model = { sense: 'max', columns: [column('x', 1, 3, true)], rows: [] };
  const hard = { ...hittingSet(), columns: hittingSet().columns.map((one, at) => ({ ...one, cost: 1000 + at })) };
  const limits = { nodes: 1e6, seconds: 60 };
  const running = solve(hard, { ...limits, signal: first.signal });
  const [waiting, dropped] = [solve(easy), solve(hard, { ...limits, signal: third.signal })];
  third.abort(new Error('not needed'));
  first.abort(new Error('enough'));
  await assert.rejects(running, /enough/);
  await assert.rejects(dropped, /not needed/);
  assert.equal((await waiting).objective, 3);
});
