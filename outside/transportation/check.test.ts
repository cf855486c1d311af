import assert from 'node:assert/strict';
import { test } from 'node:test';
import type { Model, Row } from '#core/kit/model.ts';
import { solve } from '#solver/solve.ts';

interface Shipping {
  readonly supply: readonly number[];
  readonly demand: readonly number[];
  readonly cost: readonly (readonly number[])[];
}

/** Column `i × demands + j` ships from i to j. */
function transportation({ supply, demand, cost }: Shipping, whole = false): Model {
  const at = (i: number, j: number): number => i * demand.length + j;
  return {
    sense: 'min',
    columns: supply.flatMap((_, i) =>
      demand.map((_, j) => ({ name: `${i} to ${j}`, cost: cost[i]?.[j] ?? 0, low: 0, high: Infinity, whole })),
    ),
    rows: [
      ...supply.map((most, i): Row => ({
        name: `supply ${i}`,
        low: 0,
        high: most,
        terms: demand.map((_, j) => [at(i, j), 1] as const),
      })),
      ...demand.map((least, j): Row => ({
        name: `demand ${j}`,
        low: least,
        high: Infinity,
        terms: supply.map((_, i) => [at(i, j), 1] as const),
      })),
    ],
  };
}

/** Choose the fewest of `count` so that every set holds a chosen one. */
function hitting(count: number, sets: readonly (readonly number[])[]): Model {
  return {
    sense: 'min',
    columns: Array.from({ length: count }, (_, at) => ({ name: `choose ${at}`, cost: 1, low: 0, high: 1, whole: true })),
    rows: sets.map((set, at): Row => ({ name: `set ${at}`, low: 1, high: Infinity, terms: set.map((one) => [one, 1] as const) })),
  };
}

/** Triples of points of Z3^dimensions that add up to nought. */
function steinerTriples(dimensions: number): number[][] {
  const size = 3 ** dimensions;
  const third = (a: number, b: number): number => {
    let [sum, place] = [0, 1];
    for (let d = 0; d < dimensions; d += 1, place *= 3)
      sum += ((6 - (Math.floor(a / place) % 3) - (Math.floor(b / place) % 3)) % 3) * place;
    return sum;
  };
  const all = Array.from({ length: size }, (_, at) => at);
  return all.flatMap((a) => all.flatMap((b) => (a < b && b < third(a, b) ? [[a, b, third(a, b)]] : [])));
}

async function optimum(model: Model): Promise<{ objective: number; values: readonly number[] }> {
  const { proof, objective, values } = await solve(model);
  assert.equal(proof, 'optimal');
  return { objective, values };
}

void test('Dantzig: canneries and markets', async () => {
  const cost = [
    [2.5, 1.7, 1.8],
    [2.5, 1.8, 1.4],
  ].map((row) => row.map((distance) => (distance * 90) / 1000));
  const { objective } = await optimum(transportation({ supply: [350, 600], demand: [325, 300, 275], cost }));
  assert.ok(Math.abs(objective - 153.675) < 1e-6);
});

void test('Powerco: power plants and cities', async () => {
  const model = transportation(
    {
      supply: [35, 50, 40],
      demand: [45, 20, 30, 30],
      cost: [
        [8, 6, 10, 9],
        [9, 12, 13, 7],
        [14, 9, 16, 5],
      ],
    },
    true,
  );
  assert.equal((await optimum(model)).objective, 1020);
});

void test('P&T: canneries and warehouses', async () => {
  const cost = [
    [464, 513, 654, 867],
    [352, 416, 690, 791],
    [995, 682, 388, 685],
  ];
  assert.equal(
    (await optimum(transportation({ supply: [75, 125, 100], demand: [80, 65, 70, 85], cost }, true))).objective,
    152_535,
  );
});

void test('Machineco: four jobs for four machines', async () => {
  const ones = [1, 1, 1, 1];
  const { objective } = await optimum(
    transportation(
      {
        supply: ones,
        demand: ones,
        cost: [
          [14, 5, 8, 7],
          [2, 12, 6, 5],
          [7, 8, 3, 9],
          [2, 4, 6, 10],
        ],
      },
      true,
    ),
  );
  assert.equal(objective, 15);
});

void test('Kilroy County: fire stations', async () => {
  const { objective, values } = await optimum(
    hitting(6, [
      [0, 1],
      [0, 1, 5],
      [2, 3],
      [2, 3, 4],
      [3, 4, 5],
      [1, 4, 5],
    ]),
  );
  assert.equal(objective, 2);
  assert.deepEqual(values, [0, 1, 0, 1, 0, 0]);
});

void test('Steiner triples of 9 and of 27 points', async () => {
  assert.equal((await optimum(hitting(9, steinerTriples(2)))).objective, 5);
  assert.equal((await optimum(hitting(27, steinerTriples(3)))).objective, 18);
});

const WAREHOUSES = {
  fixed: 30,
  capacity: [1, 4, 2, 1, 3],
  cost: [
    [20, 24, 11, 25, 30],
    [28, 27, 82, 83, 74],
    [74, 97, 71, 96, 70],
    [2, 55, 73, 69, 61],
    [46, 96, 59, 83, 4],
    [42, 22, 29, 67, 59],
    [1, 5, 73, 59, 56],
    [10, 73, 13, 43, 96],
    [93, 35, 63, 85, 46],
    [47, 65, 55, 71, 95],
  ],
};

function warehouses(capacity: readonly number[]): Model {
  const { cost, fixed } = WAREHOUSES;
  const open = (w: number): number => cost.length * capacity.length + w;
  const at = (s: number, w: number): number => s * capacity.length + w;
  const binary = (name: string, price: number): Model['columns'][number] => ({ name, cost: price, low: 0, high: 1, whole: true });
  return {
    sense: 'min',
    columns: [
      ...cost.flatMap((row, s) => row.map((price, w) => binary(`${s} from ${w}`, price))),
      ...capacity.map((_, w) => binary(`open ${w}`, fixed)),
    ],
    rows: [
      ...cost.map((row, s): Row => ({ name: `store ${s}`, low: 1, high: 1, terms: row.map((_, w) => [at(s, w), 1] as const) })),
      ...capacity.map((most, w): Row => ({
        name: `holds ${w}`,
        low: -Infinity,
        high: 0,
        terms: [...cost.map((_, s) => [at(s, w), 1] as const), [open(w), -most]],
      })),
    ],
  };
}

void test('warehouses with a fixed cost, with and without capacities', async () => {
  assert.equal((await optimum(warehouses(WAREHOUSES.capacity))).objective, 383);
  assert.equal((await optimum(warehouses([10, 10, 10, 10, 10]))).objective, 328);
});

void test('knapsack', async () => {
  const [weights, prices] = [
    [23, 31, 29, 44, 53, 38, 63, 85, 89, 82],
    [92, 57, 49, 68, 60, 43, 67, 84, 87, 72],
  ];
  const model: Model = {
    sense: 'max',
    columns: prices.map((cost, at) => ({ name: `item ${at}`, cost, low: 0, high: 1, whole: true })),
    rows: [{ name: 'weight', low: 0, high: 165, terms: weights.map((weight, at) => [at, weight] as const) }],
  };
  assert.equal((await optimum(model)).objective, 309);
});
