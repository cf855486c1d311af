import assert from 'node:assert/strict';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { after, test } from 'node:test';
import type { Bag } from '#core/stock/stock.ts';
import { readBoards } from '#db/boards.ts';
import { checkLab } from '#db/check.ts';
import { openDatabase, type Lab } from '#db/database.ts';
import { readActs } from '#db/history.ts';
import { readBuilds } from '#db/read-builds.ts';
import { readStock } from '#db/read-stock.ts';
import { Refused } from '#db/refused.ts';
import { BAG_GROUPS } from './delivery-items.ts';
import { DEMO_SEED, fillDemo } from './fill.ts';
import { chance } from './random.ts';
import { BENCH, GREENHOUSE, TIDE } from './scenario/boards.data.ts';
import { story } from './story.ts';

const folder = mkdtempSync(join(tmpdir(), 'bagatelle-demo-test-'));
const labs: Lab[] = [];
after(async () => {
  for (const lab of labs) await lab.close();
  rmSync(folder, { recursive: true, force: true });
});

async function demoLab(name: string, seed?: number): Promise<Lab> {
  const lab = await openDatabase({ home: join(folder, name) });
  labs.push(lab);
  await fillDemo(lab, null, seed);
  return lab;
}

/** A lab as it can be told apart: what the database gives ids to by chance is left out. */
async function picture(lab: Lab): Promise<unknown> {
  const [stock, acts, builds] = await lab.read(
    async (tx) => [await readStock(tx), await readActs(tx, { limit: 10_000 }), await readBuilds(tx)] as const,
  );
  return {
    bags: stock.bags.map(({ id: _id, partId: _partId, ...bag }) => bag),
    boxes: stock.boxes,
    acts,
    builds: builds.map(({ id: _id, ...build }) => build),
  };
}

const lab = await demoLab('first');
const stock = await lab.read(readStock);
const bag = (number: number): Bag => {
  const found = stock.bags.find((one) => one.number === number);
  assert.ok(found, `bag ${number}`);
  return found;
};

void test('the demo is about 260 bags in five boxes, all with numbers of their own', () => {
  assert.deepEqual(
    stock.boxes.map(({ name }) => name),
    ['A', 'B', 'C', 'D', 'E'],
  );
  assert.equal(stock.bags.length, BAG_GROUPS.flatMap(({ bags }) => bags).length);
  assert.ok(stock.bags.length > 230 && stock.bags.length < 270, String(stock.bags.length));
  assert.ok(stock.boxes.every(({ name, places }) => stock.bags.filter(({ box }) => box === name).length <= places));
});

void test('the same seed gives the same lab, another seed another story', async () => {
  assert.deepEqual(await picture(await demoLab('again', DEMO_SEED)), await picture(lab));
  assert.notDeepEqual(story(chance(DEMO_SEED + 1)), story(chance(DEMO_SEED)));
});

void test('every number of the demo is what its history says', async () => {
  assert.deepEqual(await lab.read(checkLab), []);
});

void test('the demo shows what a lab meets: exhausted, astray, salvaged, estimated, promised, to be counted', async () => {
  assert.equal(bag(138).onHand, 0);
  assert.equal(bag(172).onHand, 0);
  assert.equal(bag(161).state, 'astray');
  assert.equal(bag(108).state, 'salvaged');
  assert.ok(bag(78).holder === 'reel' && bag(78).sure < bag(78).onHand);
  assert.equal(bag(269).sure, 0);
  assert.ok(stock.bags.some(({ reserved }) => reserved > 0));
  assert.ok(bag(167).toCount && bag(167).onHand === 0);
  const states = new Set((await lab.read(readBuilds)).map(({ state }) => state));
  assert.deepEqual(states, new Set(['reserved', 'cancelled', 'built']));
  assert.deepEqual(
    (await lab.read(readBoards)).map(({ name, revisions }) => `${name} ${revisions.length}`),
    [`${BENCH} 2`, `${GREENHOUSE} 2`, `${TIDE} 2`],
  );
});

void test('who fills a lab that another is filling is told that it holds something', async () => {
  await assert.rejects(fillDemo(lab), (error) => error instanceof Refused && error.refusal.code === 'not-empty');
});
