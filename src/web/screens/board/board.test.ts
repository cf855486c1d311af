import assert from 'node:assert/strict';
import { test } from 'node:test';
import type { BoardLine } from '#api/boards.ts';
import {
  asksOf,
  bagOf,
  countsOf,
  groupOf,
  limitsOf,
  lineWithBag,
  reachingOf,
  rowsOf,
  standingOf,
  stepFrom,
  whyOf,
} from './board.ts';

const line = (row: number, told: Partial<BoardLine> = {}): BoardLine => ({
  row,
  refs: [`R${row}`],
  need: 10,
  spare: 0,
  verdict: 'exact',
  bags: [{ bag: 100 + row, take: 10 }],
  because: [],
  short: 0,
  demand: `d${row}`,
  asks: '4k7',
  said: { name: `part ${row}`, rest: '' },
  fitted: true,
  later: false,
  chosen: null,
  holds: null,
  nearest: null,
  waits: null,
  free: 20,
  left: 10,
  reaches: 20,
  doubts: [],
  ...told,
});

const heading = line(2, { need: 0, reaches: null, because: [{ code: 'not-a-part', text: 'not a part' }] });
const unfitted = line(3, { need: 0, reaches: null, fitted: false });
const later = line(4, { need: 0, reaches: null, later: true });

void test('what needs nothing stands at the end, each kind under its head', () => {
  const rows = rowsOf([heading, unfitted, later, line(5), line(6)]);
  assert.deepEqual(
    rows.map(({ key }) => key),
    ['5', '6', 'later', '4', 'unfitted', '3', 'noPart', '2'],
  );
  assert.equal(groupOf(heading), 'noPart');
  assert.deepEqual(rowsOf([]), []);
});

void test('an accepted check is no open one, and lines that need nothing are counted nowhere', () => {
  const accepted = line(7, { verdict: 'check', chosen: { bag: 9, accept: true, reason: null } });
  assert.equal(standingOf(accepted), 'accepted');
  assert.deepEqual(countsOf([heading, unfitted, later, accepted, line(8, { verdict: 'check' }), line(9)]), {
    exact: 1,
    serves: 0,
    accepted: 1,
    check: 1,
    missing: 0,
  });
});

void test('a row says what its columns do not say, at most two reasons, and the reason of a choice', () => {
  const because = [
    { code: 'short', text: '0 free, 2 needed' },
    { code: 'not-stated', text: 'no voltage' },
    { code: 'same', text: 'the value is the same' },
    { code: 'safety', text: 'for safety' },
    { code: 'estimate', text: 'an estimate' },
  ];
  assert.equal(whyOf({ because, chosen: null }), 'no voltage; for safety');
  const accepted = [{ code: 'accepted', text: 'accepted, because “old stock”' }];
  assert.equal(whyOf({ because: accepted, chosen: { bag: 1, accept: true, reason: null } }), '');
  assert.equal(
    whyOf({ because: accepted, chosen: { bag: 1, accept: true, reason: 'old stock' } }),
    'accepted, because “old stock”',
  );
});

void test('a row shows the bag that it takes from, else the one to look at', () => {
  assert.equal(bagOf(line(2)), 102);
  assert.equal(bagOf(line(2, { bags: [], nearest: 7 })), 7);
  assert.equal(bagOf(line(2, { bags: [] })), null);
});

void test('a limit is said by its line: the one that lacks most of the bag, once, in the order of the lines', () => {
  const lines = [
    line(2, { bags: [{ bag: 1, take: 5 }], short: 0, need: 10 }),
    line(3, { bags: [{ bag: 1, take: 5 }], short: 5, need: 20, free: 15 }),
    line(4, { bags: [], short: 10, free: 0, verdict: 'missing' }),
    line(5, { bags: [], short: 10, free: 0, verdict: 'check', nearest: 8 }),
  ];
  const limitedBy = [
    { line: 5, reaches: 0 },
    { line: 4, reaches: 0 },
    { bag: 1, reaches: 7 },
  ];
  assert.deepEqual(limitsOf({ lines, limitedBy, boards: 10 }), [
    { bag: 1, line: 3, name: 'part 3', free: 15, perBoard: 2, toCheck: false },
    { bag: null, line: 4, name: 'part 4', free: 0, perBoard: 1, toCheck: false },
    { bag: null, line: 5, name: 'part 5', free: 0, perBoard: 1, toCheck: true },
  ]);
});

void test('the five lines that reach least are drawn from nothing, and the rest is said by its least', () => {
  const lines = [30, 7, 9, 12, 13, 14, 15].map((reaches, at) => line(at + 2, { reaches }));
  const { least, rest } = reachingOf([...lines, unfitted], 10);
  assert.deepEqual(
    least.map((one) => [one.boards, one.short, one.length]),
    [
      [7, true, 7 / 16],
      [9, true, 9 / 16],
      [12, false, 12 / 16],
      [13, false, 13 / 16],
      [14, false, 14 / 16],
    ],
  );
  assert.equal(least[0]?.goal, 10 / 16);
  assert.equal(rest, 15);
  assert.deepEqual(reachingOf([unfitted], 10), { least: [], rest: null });
});

void test('Up and Down walk the lines over the heads, and stay at the ends', () => {
  const rows = rowsOf([unfitted, line(5), line(6)]);
  assert.equal(stepFrom(rows, null, 1), 5);
  assert.equal(stepFrom(rows, 6, 1), 3);
  assert.equal(stepFrom(rows, 3, 1), 3);
  assert.equal(stepFrom(rows, 5, -1), 5);
  assert.equal(stepFrom(rows, null, -1), 3);
  assert.equal(stepFrom([], null, 1), null);
});

void test('a bag number jumps to the line that takes from it before one that only comes near it', () => {
  const lines = [line(2, { bags: [], nearest: 50 }), line(3, { bags: [{ bag: 50, take: 1 }] })];
  assert.equal(lineWithBag(lines, 50), 3);
  assert.equal(lineWithBag(lines.slice(0, 1), 50), 2);
  assert.equal(lineWithBag(lines, 51), null);
});

void test('a short text of the BOM stands as it was written, a long one as it was read', () => {
  assert.equal(asksOf({ asks: '4,7k 1% 0805' }), '4,7k 1% 0805');
  assert.equal(asksOf({ asks: '1u 16V X7R Capacitor_SMD:C_0805_2012Metric' }), null);
});
