import assert from 'node:assert/strict';
import { test } from 'node:test';
import { bagOf, candidateOf, demandOf, needOf, stockOf } from '#test/small-labs.ts';
import { checkPlan } from './check-plan.ts';
import type { Plan, PlannedLine } from './kit.ts';

const stock = stockOf([bagOf(1, 10, { reserved: 2 }), bagOf(2, 5), bagOf(3, 5), bagOf(4, 5, { state: 'astray' })]);
const demands = [
  demandOf('b', 4, [
    needOf('b/1', 2, [candidateOf(1), candidateOf(2, 'serves'), candidateOf(3, 'check'), candidateOf(4)]),
    needOf('b/2', 1, [candidateOf(2), candidateOf(3, 'missing')]),
  ]),
];
const line = (name: string, need: number, takes: PlannedLine['takes'], short = 0, spare = 0): PlannedLine => ({
  line: name,
  row: 1,
  refs: [name],
  need,
  spare,
  short,
  verdict: 'exact',
  because: [],
  takes,
});
const plan = (lines: PlannedLine[], buildable = 4): Plan => ({
  proof: 'optimal',
  gap: 0,
  builds: [{ build: 'b', boards: 4, buildable, buildableWithChecks: buildable, limitedBy: [], lines }],
});
const one = line('b/1', 8, [{ bag: 1, take: 8 }]);
const two = line('b/2', 4, [{ bag: 2, take: 4 }]);

void test('a good plan has no faults', () => {
  assert.deepEqual(checkPlan(plan([one, two]), stock, demands), []);
  assert.deepEqual(checkPlan(plan([one, line('b/2', 4, [{ bag: 2, take: 5 }], 0, 1)]), stock, demands), []);
});

const PLANTED: readonly (readonly [name: string, plan: Plan, code: string])[] = [
  ['a bag gives more than is free', plan([line('b/1', 8, [{ bag: 1, take: 9 }], 0, 1), two]), 'bag-over'],
  [
    'two lines together take more than is free',
    plan([
      line('b/1', 8, [
        { bag: 1, take: 6 },
        { bag: 2, take: 2 },
      ]),
      two,
    ]),
    'bag-over',
  ],
  ['the takes do not add up', plan([line('b/1', 8, [{ bag: 1, take: 7 }]), two]), 'sum'],
  ['a spare is not counted', plan([one, line('b/2', 4, [{ bag: 2, take: 5 }])]), 'sum'],
  [
    'a check that nobody accepted',
    plan([
      line('b/1', 8, [
        { bag: 1, take: 6 },
        { bag: 3, take: 2 },
      ]),
      two,
    ]),
    'not-allowed',
  ],
  ['a bag that is missing something', plan([one, line('b/2', 4, [{ bag: 3, take: 4 }])]), 'not-allowed'],
  ['a bag that is no candidate', plan([one, line('b/2', 4, [{ bag: 1, take: 4 }])]), 'not-allowed'],
  [
    'a bag that is astray',
    plan([
      line('b/1', 8, [
        { bag: 1, take: 4 },
        { bag: 4, take: 4 },
      ]),
      two,
    ]),
    'bag-unknown',
  ],
  ['a bag that does not exist', plan([line('b/1', 8, [{ bag: 9, take: 8 }]), two]), 'bag-unknown'],
  [
    'half a piece',
    plan([
      line('b/1', 8, [
        { bag: 1, take: 7.5 },
        { bag: 2, take: 0.5 },
      ]),
      two,
    ]),
    'not-whole',
  ],
  [
    'less than nothing',
    plan([
      line('b/1', 8, [
        { bag: 1, take: 9 },
        { bag: 2, take: -1 },
      ]),
      two,
    ]),
    'not-whole',
  ],
  [
    'a bag named twice in a line',
    plan([
      line('b/1', 8, [
        { bag: 1, take: 4 },
        { bag: 1, take: 4 },
      ]),
      two,
    ]),
    'bag-twice',
  ],
  ['a line is forgotten', plan([one]), 'line-missing'],
  ['a line nobody asked for', plan([one, two, line('b/3', 1, [{ bag: 3, take: 1 }])]), 'line-unknown'],
  ['a line planned twice', plan([one, two, two]), 'line-unknown'],
  ['another need', plan([line('b/1', 6, [{ bag: 1, take: 6 }]), two], 3), 'need'],
  ['more boards than are complete', plan([line('b/1', 8, [{ bag: 1, take: 7 }], 1), two], 4), 'buildable'],
  ['fewer boards than are complete', plan([one, two], 3), 'buildable'],
  ['a short beside a bag that has some', plan([line('b/1', 8, [{ bag: 1, take: 7 }], 1), two], 3), 'short-avoidable'],
];

for (const [name, bad, code] of PLANTED) {
  void test(`a planted fault is found: ${name}`, () => {
    const found = checkPlan(bad, stock, demands).map((fault) => fault.code);
    assert.ok(
      found.some((one) => one === code),
      `${code} not among ${found.join()}`,
    );
  });
}

void test('a spare that causes a short is found', () => {
  const tight = stockOf([bagOf(1, 5)]);
  const both = [demandOf('b', 1, [needOf('b/1', 3, [candidateOf(1)]), needOf('b/2', 2, [candidateOf(1)])])];
  const lines = [line('b/1', 3, [{ bag: 1, take: 4 }], 0, 1), line('b/2', 2, [{ bag: 1, take: 1 }], 1)];
  const bad: Plan = {
    proof: 'optimal',
    gap: 0,
    builds: [{ build: 'b', boards: 1, buildable: 0, buildableWithChecks: 0, limitedBy: [], lines }],
  };
  assert.deepEqual(
    checkPlan(bad, tight, both).map(({ code }) => code),
    ['short-avoidable'],
  );
});
