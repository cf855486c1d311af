import assert from 'node:assert/strict';
import { test } from 'node:test';
import type { BoxPicture } from '#api/bags.ts';
import type { KitAct, KitTakeView } from '#api/kits.ts';
import { sayStands } from '#say/en/place-words.ts';
import {
  afterPick,
  allAtOnce,
  boxWalks,
  cautionsOf,
  cellOf,
  comingStops,
  emptiedBags,
  fewerCells,
  handAnswer,
  isEnough,
  lacks,
  lastPick,
  namedStop,
  pickedBy,
  readSkipped,
  skipStop,
  slotsOf,
  stopAfter,
  stopName,
  toTake,
  traysOf,
  writeSkipped,
} from './walk.ts';

function take(bag: number, more: Partial<KitTakeView> = {}): KitTakeView {
  return {
    id: `${String(bag).padStart(8, '0')}-0000-4000-8000-000000000000`,
    line: `line ${bag}`,
    bag,
    code: 'R-0805-1K0-F',
    text: '1k 1% 0805',
    said: { name: '1 kΩ', rest: 'Resistor' },
    unit: 'piece',
    box: 'A',
    place: null,
    tray: 1,
    cell: bag,
    refs: [`R${bag}`],
    planned: 5,
    spare: 1,
    picked: 0,
    returned: 0,
    state: 'open',
    onHand: 20,
    expected: 0,
    cautions: [],
    settled: false,
    ...more,
  };
}
const done = (bag: number, more: Partial<KitTakeView> = {}): KitTakeView => take(bag, { picked: 5, state: 'done', ...more });
const bagsOf = (takes: readonly KitTakeView[]): number[] => takes.map(({ bag }) => bag);

void test('the walk is grouped by box in its own order, and a done box has nothing open', () => {
  const walks = boxWalks([done(9, { box: 'E' }), take(3), done(5), take(1, { box: null })]);
  assert.deepEqual(
    walks.map(({ box, takes, open }) => [box, bagsOf(takes), bagsOf(open)]),
    [
      ['E', [9], []],
      ['A', [3, 5], [3]],
      [null, [1], [1]],
    ],
  );
});

void test('what is skipped comes last, in the order of skipping, and again to the very end', () => {
  const takes = [take(1), take(2), take(3), done(4)];
  const [one, two] = takes;
  if (!one || !two) assert.fail();
  const skipped = skipStop(skipStop([], one), two);
  assert.deepEqual(bagsOf(comingStops(takes, skipped)), [3, 1, 2]);
  assert.deepEqual(bagsOf(comingStops(takes, skipStop(skipped, one))), [3, 2, 1]);
  assert.deepEqual(readSkipped(writeSkipped(skipped)), skipped);
  assert.deepEqual(readSkipped(undefined), []);
});

void test('the next open stop is found forwards and backwards, round the ends, over those that are done', () => {
  const takes = [take(1), done(2), take(3), take(4)];
  const at = (bag: number): KitTakeView => takes.find((one) => one.bag === bag) ?? assert.fail();
  assert.equal(stopAfter(takes, at(1))?.bag, 3);
  assert.equal(stopAfter(takes, at(4))?.bag, 1);
  assert.equal(stopAfter(takes, at(3), -1)?.bag, 1);
  assert.equal(stopAfter(takes, at(1), -1)?.bag, 4);
  assert.equal(stopAfter([take(1)], take(1)), null);
});

void test('a stop is named in the address by the beginning of its id', () => {
  const takes = [take(1), take(2)];
  assert.equal(namedStop(takes, stopName(take(2)))?.bag, 2);
  assert.equal(namedStop(takes, 'nothing'), null);
  assert.equal(namedStop(takes, undefined), null);
});

void test('of a stop that was picked in part the rest is to take', () => {
  assert.deepEqual([toTake(take(1, { picked: 3 })), toTake(take(1, { picked: 8 }))], [2, 0]);
});

void test('a cell is named with its tray only where there are several', () => {
  assert.deepEqual(cellOf([take(1), take(2)], take(1)), { cell: 1, tray: null });
  assert.deepEqual(cellOf([take(1), take(2, { tray: 2 })], take(1)), { cell: 1, tray: 1 });
});

const BOX: BoxPicture = {
  name: 'A',
  places: 6,
  lifts: 0,
  order: 0,
  says: '',
  bags: [
    { bag: 1, standing: 'holds' },
    { bag: 2, standing: 'exhausted' },
    { bag: 3, standing: 'holds' },
    { bag: 4, standing: 'holds' },
  ],
};

void test('in the look into a box the meant bag, those of today and those that were picked stand out', () => {
  assert.deepEqual(slotsOf(BOX, [take(1), done(3), take(4)], 4), ['todo', 'empty', 'got', 'hit', 'free', 'free']);
});

void test('a bag in the hand is right, or is told where it belongs and which way the right one is', () => {
  const stop = take(1);
  const ask = (bag: number) => handAnswer(bag, stop, [stop, take(4)], [BOX], [{ bag: 50 }]);
  assert.deepEqual(ask(1), { kind: 'right' });
  assert.deepEqual(ask(99), { kind: 'unknown', bag: 99 });
  const four = ask(4);
  assert.ok(four.kind === 'wrong');
  assert.deepEqual([four.box, four.depth?.rank, four.apart, four.also?.bag], ['A', 3, -2, 4]);
  const loose = ask(50);
  assert.ok(loose.kind === 'wrong');
  assert.deepEqual([loose.box, loose.apart, loose.also], [null, null, null]);
});

void test('the last pick is the newest that is not undone; one of another is told apart', () => {
  const act = (name: string, more: Partial<KitAct> = {}): KitAct => ({
    act: name,
    kind: 'picked-for-build',
    who: 'Ines',
    happenedAt: '2026-01-01T00:00:00Z',
    undoes: null,
    undoneBy: null,
    takes: [take(1).id],
    pieces: 5,
    ...more,
  });
  const acts = [act('u', { undoes: 'c' }), act('c', { undoneBy: 'u' }), act('b'), act('a', { takes: [take(2).id] })];
  assert.equal(lastPick(acts)?.act, 'b');
  assert.equal(lastPick([]), null);
  assert.equal(pickedBy(acts, take(1), new Set())?.act, 'b');
  assert.equal(pickedBy(acts, take(1), new Set(['b'])), null);
});

void test('bags of one line share their cell, which is in only when both are', () => {
  const takes = [done(1, { cell: 1 }), take(2, { cell: 1 }), done(3, { cell: 2 }), take(4, { tray: 2, cell: 1 })];
  assert.deepEqual(
    traysOf(takes, takes[3] ?? null).map(({ tray, cells }) => [tray, cells.map(({ state, takes: of }) => [state, of.length])]),
    [
      [
        1,
        [
          ['waiting', 2],
          ['in', 1],
        ],
      ],
      [2, [['next', 1]]],
    ],
  );
});

void test('a bag is emptied when all its open stops together take what it holds', () => {
  const two = [take(7, { onHand: 10, id: 'a' }), take(7, { onHand: 10, id: 'b' })];
  assert.deepEqual(emptiedBags(two), [7]);
  assert.deepEqual(emptiedBags([...two.slice(1), take(8)]), []);
});

void test('each caution of its parts is said once for the kit, in the same order', () => {
  assert.deepEqual(cautionsOf([take(1), take(2)]), []);
  const takes = [take(1, { cautions: ['fuses'] }), take(2, { cautions: ['cells', 'mains'] }), take(3, { cautions: ['fuses'] })];
  assert.deepEqual(cautionsOf(takes), ['cells', 'mains', 'fuses']);
});

void test('depth is said by rank, part of the box and neighbour', () => {
  assert.equal(sayStands({ rank: 11, of: 60, after: 130 }), '11th of 60, near the front, after 130');
  assert.equal(sayStands({ rank: 1, of: 3, after: null }), '1st of 3, at the front');
  assert.equal(sayStands({ rank: 2, of: 3, after: 8 }), '2nd of 3, in the middle, after 8');
  assert.equal(sayStands({ rank: 60, of: 60, after: 179 }), '60th of 60, at the back, after 179');
  assert.equal(sayStands({ rank: 1, of: 1, after: null }), '1st of 1, at the front');
});

void test('all of a box leaves out what was skipped, until nothing else is left or it is meant again', () => {
  const takes = [take(1), take(2), take(3), take(4, { box: 'B' })];
  const [a] = boxWalks(takes);
  const at = (skipped: readonly number[], meant: number | null = null): number[] => {
    const names = takes.filter(({ bag }) => skipped.includes(bag)).map(stopName);
    return a ? bagsOf(allAtOnce(a, takes, names, takes.find(({ bag }) => bag === meant) ?? null)) : [];
  };
  assert.deepEqual([at([]), at([2]), at([2], 2), at([1, 2, 3]), at([1, 2, 3, 4])], [[1, 2, 3], [1, 3], [1, 2, 3], [], [1, 2, 3]]);
});

void test('what was skipped stays so after a pick', () => {
  assert.deepEqual(afterPick({ take: 'a', skipped: 'b' }, { take: 'a', skipped: 'b' }, take(3)), {
    skipped: 'b',
    take: stopName(take(3)),
  });
});

void test('a cell has enough without its spares, and what came back lies in it no more', () => {
  assert.deepEqual([isEnough(take(1), 4), isEnough(take(1), 3), isEnough(take(1, { picked: 2 }), 2)], [true, false, true]);
  const lacking = [done(1), done(2, { picked: 4 }), done(3, { picked: 3 }), done(4, { returned: 2 }), take(5)];
  assert.deepEqual(bagsOf(lacking.filter(lacks)), [3, 4]);
  const two = [done(1, { cell: 6, picked: 3, spare: 0 }), done(2, { cell: 6, spare: 0 }), done(3, { cell: 7, picked: 4 })];
  assert.deepEqual(fewerCells(two), [{ where: { cell: 6, tray: null }, lies: 8, planned: 10 }]);
});
