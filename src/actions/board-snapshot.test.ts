import assert from 'node:assert/strict';
import { randomUUID } from 'node:crypto';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { after, before, test } from 'node:test';
import { readBoard } from '#db/boards.ts';
import { openDatabase, type Lab } from '#db/database.ts';
import { boardLines } from './board-lines.ts';
import { followReach } from './board-reach.ts';
import { followStock } from './follow-stock.ts';
import { perform } from './perform.ts';
import { pick } from './pick.ts';
import { readFile } from './read-file.ts';
import { receive } from './receive.ts';
import { saveBoard } from './save-board.ts';

const CLOCK = { now: () => '2026-03-01T09:00:00.000Z' };
const WHO = { name: 'test', device: null };
const home = mkdtempSync(join(tmpdir(), 'bagatelle-snapshot-'));
let lab: Lab;

const linesOf = (text: string) => {
  const read = readFile(new TextEncoder().encode(text), 'bom.csv');
  assert.ok(read.ok);
  return read.value.rows;
};
const picked = async (quantity: number): Promise<void> => {
  assert.ok((await perform(lab, pick, CLOCK, WHO, { id: randomUUID(), bag: 1, quantity })).ok);
};

before(async () => {
  lab = await openDatabase({ home });
  const [part] = linesOf('Qty,Value,Package\n1,4k7 1%,0805\n').map((row) => row.part);
  assert.ok(part);
  assert.ok((await perform(lab, receive, CLOCK, WHO, { id: randomUUID(), items: [{ quantity: 40, part }] })).ok);
  const lines = linesOf('Reference,Qty,Value,Package\nR1,1,4k7,0805\n');
  const board = { id: randomUUID(), board: 'blinker', source: 'bom.csv', lines };
  assert.ok((await perform(lab, saveBoard, CLOCK, WHO, board)).ok);
});

after(async () => {
  await lab.close();
  rmSync(home, { recursive: true });
});

void test('the lines of a board are of one change, though the stock moves on while they are planned', async () => {
  const stock = followStock(lab);
  const revision = await lab.read((tx) => readBoard(tx, 'blinker'));
  assert.ok(revision);
  const now = await stock.current();
  const before = now.bag(1)?.onHand ?? 0;
  let waits = false;
  // as the stock in memory is where another takes the bag away in the first turn in which the plan waits
  const working = boardLines({ ...now, bag: (number) => (waits ? null : now.bag(number)) }, revision, 10);
  waits = true;
  const { lines } = await working;
  assert.deepEqual(
    lines.map(({ free, left, reaches, holds }) => [free, left, reaches, holds?.onHand]),
    [[before, before - 10, before, before]],
  );
});

void test('who asks at the same change how many boards can be made shares one answer', async () => {
  let reads = 0;
  const counted: Lab = { ...lab, read: (fn) => ((reads += 1), lab.read(fn)) };
  const reach = followReach(counted, followStock(lab));
  const told = await Promise.all([reach.current(), reach.current(), reach.current()]);
  assert.deepEqual([reads, new Set(told).size], [1, 1]);
  await reach.current();
  assert.equal(reads, 1);
  await picked(1);
  const later = await reach.current();
  assert.deepEqual([reads, later.boards[0]?.buildable], [2, (told[0]?.boards[0]?.buildable ?? 0) - 1]);
});

void test('a look at the boards that fails is told to whoever asked, and made again for the next', async () => {
  let fails = true;
  const failing: Lab = { ...lab, read: (fn) => (fails ? Promise.reject(new Error('no disk')) : lab.read(fn)) };
  const reach = followReach(failing, followStock(lab));
  await assert.rejects(reach.current(), /no disk/);
  fails = false;
  assert.equal((await reach.current()).boards.length, 1);
});
