import assert from 'node:assert/strict';
import { test } from 'node:test';
import type { Fact, Kind, Part } from '#core/part/part.ts';
import { bagOf, stockOf } from '#test/small-labs.ts';
import type { PlannedBuild, PlannedLine } from './kit.ts';
import { route } from './route.ts';
import { withSpares } from './spares.ts';
import { USUAL_SPARES } from './spares.data.ts';
import { trays } from './trays.ts';

const part = (kind: Kind, body: string): Part => {
  const fact: Fact = { key: 'package', value: body, unit: null, origin: 'stated' };
  return { kind, facts: { package: fact }, text: '' };
};
const bags = [
  bagOf(1, 50, { part: part('connector', 'JST-XH'), box: 'B', place: '3' }),
  bagOf(2, 50, { part: part('resistor', '0402'), box: 'A', place: '10' }),
  bagOf(3, 14, { part: part('capacitor', '0402'), box: 'A', place: '2' }),
  bagOf(4, 50, { part: part('ic', 'SOIC-8'), box: null, place: 'window sill' }),
];
const line = (refs: string[], takes: PlannedLine['takes'], row = 1): PlannedLine => ({
  line: refs[0] ?? '',
  row,
  refs,
  need: takes.reduce((sum, { take }) => sum + take, 0),
  spare: 0,
  short: 0,
  verdict: 'exact',
  because: [],
  takes,
});
const build: PlannedBuild = {
  build: 'b',
  boards: 1,
  buildable: 1,
  buildableWithChecks: 1,
  limitedBy: [],
  lines: [
    line(['J1'], [{ bag: 1, take: 1 }]),
    line(['R10', 'R11'], [{ bag: 2, take: 2 }]),
    line(
      ['R2'],
      [
        { bag: 2, take: 8 },
        { bag: 3, take: 12 },
      ],
    ),
    line(['U1'], [{ bag: 4, take: 1 }]),
  ],
};

void test('cells are numbered in the order of soldering, then by refs as people count', () => {
  const cells = trays(build.lines, new Map(bags.map((bag) => [bag.number, bag])), 3);
  assert.deepEqual(
    cells.map(({ line, tray, cell }) => [line, tray, cell]),
    [
      ['R2', 1, 1],
      ['R10', 1, 2],
      ['U1', 1, 3],
      ['J1', 2, 1],
    ],
  );
});

void test('the walk goes box by box and place by place, a bag once; bags of one line share its cell', () => {
  const stops = route(build, stockOf(bags));
  assert.deepEqual(
    stops.map(({ box, bag, take, cell }) => [box, bag, take, cell]),
    [
      ['A', 3, 12, 1],
      ['A', 2, 8, 1],
      ['A', 2, 2, 2],
      ['B', 1, 1, 4],
      [null, 4, 1, 3],
    ],
  );
});

void test('small chips get spares, from opened bags and never more than is left', () => {
  const [spared] = withSpares([build], stockOf(bags), USUAL_SPARES);
  assert.deepEqual(
    spared?.lines.map(({ spare }) => spare),
    [0, 5, 5, 0],
  );
  const tight = withSpares([{ ...build, lines: [line(['C1'], [{ bag: 3, take: 12 }])] }], stockOf(bags), USUAL_SPARES);
  assert.deepEqual(tight[0]?.lines[0]?.takes, [{ bag: 3, take: 14 }]);
});
