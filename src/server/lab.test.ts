import assert from 'node:assert/strict';
import { randomUUID } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { after, before, test } from 'node:test';
import { checkLab } from '#db/check.ts';
import { dumpLab } from '#db/dump.ts';
import { httpLab, type HttpLab, type HttpTold } from '#test/http-lab.ts';

let http: HttpLab;

before(async () => {
  http = await httpLab();
});

after(() => http.end());

const dumpOf = ({ lab }: HttpLab): Promise<string[]> => lab.read((tx) => Array.fromAsync(dumpLab(tx, lab.engine)));

async function found(words: string): Promise<number> {
  const { body } = await http.get(`/api/find?words=${words}`);
  return (body['found'] as readonly unknown[]).length; // as: the schema of find
}

async function lab(): Promise<HttpTold['body']> {
  return (await http.get('/api/lab')).body;
}

void test('a new lab is empty, and says so', async () => {
  const { empty, demo, bags, kits, lan, you } = await lab();
  assert.deepEqual([empty, demo, bags, kits, lan, you], [true, false, 0, 0, false, { name: 'somebody', here: true }]);
  const none = await http.act('/api/lab/clear', {});
  assert.deepEqual([none.status, none.body['code']], [409, 'not-demo']);
});

void test('the demo fills an empty lab once; others are answered meanwhile; then the lab is not empty', async () => {
  const id = randomUUID();
  let longest = 0;
  const ended = { yes: false };
  const first = http.act('/api/lab/demo', { id }).finally(() => (ended.yes = true));
  while (!ended.yes) {
    const began = performance.now();
    assert.equal((await http.get('/api/bags')).status, 200);
    longest = Math.max(longest, performance.now() - began);
  }
  const told = await first;
  assert.deepEqual([told.status, told.body['bags'], told.body['boards']], [201, 258, 3]);
  assert.ok(longest < 3000, `a reader waited ${Math.round(longest)} ms`);
  const again = await http.act('/api/lab/demo', { id });
  assert.deepEqual([again.status, again.body], [200, told.body]);
  const other = await http.act('/api/lab/demo', {});
  assert.deepEqual([other.status, other.body['code']], [409, 'not-empty']);
  const restore = await http.upload('/api/lab/restore', 'anything');
  assert.deepEqual([restore.status, restore.body['code']], [409, 'not-empty']);
  const { empty, demo, bags, boxes, boards, kits } = await lab();
  assert.deepEqual([empty, demo, bags, boxes, boards, kits], [false, true, 258, 5, 3, 1]);
  assert.deepEqual(await http.lab.read(checkLab), []);
});

void test('clearing the demo keeps a backup, empties everything, and the change number goes on rising', async () => {
  assert.ok((await found('100n')) > 0);
  const [before, dump] = [await http.lab.change(), await dumpOf(http)];
  const id = randomUUID();
  const cleared = await http.act('/api/lab/clear', { id });
  assert.deepEqual([cleared.status, cleared.body['change']], [201, before + 1]);
  const backups = join(http.lab.where, 'backups');
  assert.deepEqual(readdirSync(backups), [cleared.body['backup']]);
  assert.deepEqual(readFileSync(join(backups, String(cleared.body['backup'])), 'utf8'), `${dump.join('\n')}\n`);
  assert.equal(await found('100n'), 0, 'the stock in memory is empty too');
  const { empty, demo, bags, boards } = await lab();
  assert.deepEqual([empty, demo, bags, boards], [true, false, 0, 0]);
  const again = await http.act('/api/lab/clear', { id });
  assert.deepEqual([again.status, again.body], [200, cleared.body]);
});

void test('the ledger is closed again after a clearing', async () => {
  const bag = await http.act('/api/movements', { kind: 'received', bag: 1, quantity: 1 });
  assert.equal(bag.status, 404);
  const list = await http.upload(
    `/api/imports?name=list.csv&id=${randomUUID()}`,
    'Bag,Qty,Description\n1,12,3k3 1% 0603 resistor\n',
  );
  assert.equal(list.status, 201);
  await assert.rejects(
    http.lab.transact((tx) => tx.deleteFrom('movement').execute()),
    /append-only/,
  );
  assert.equal((await http.act('/api/lab/clear', {})).body['code'], 'not-demo', 'a lab of somebody is never cleared');
  assert.equal((await http.act('/api/undo', { act: list.body['id'] })).status, 201);
  assert.equal((await lab())['empty'], false, 'something was done in it, and undone');
});

void test('a backup goes out whole and comes into an empty lab; what is none leaves it empty', async () => {
  const from = await httpLab();
  try {
    await from.act('/api/lab/demo', {});
    const answer = await fetch(`${from.url}/api/backup`);
    assert.match(answer.headers.get('content-disposition') ?? '', /^attachment; filename="bagatelle-\d{4}-\d\d-\d\d\.jsonl"$/);
    const text = await answer.text();
    assert.equal(text, `${(await dumpOf(from)).join('\n')}\n`);
    await from.act('/api/lab/clear', {});
    for (const wrong of ['', 'no backup', text.slice(0, -200), text.replace('"delta":', '"delta":1')]) {
      const refused = await from.upload('/api/lab/restore', wrong);
      assert.deepEqual([refused.status, refused.body['code']], [422, 'backup-bad']);
      assert.equal((await from.get('/api/lab')).body['empty'], true);
    }
    const change = await from.lab.change();
    const id = randomUUID();
    const restored = await from.upload(`/api/lab/restore?id=${id}`, text);
    assert.deepEqual([restored.status, restored.body['bags']], [201, 258]);
    assert.ok(Number(restored.body['change']) > change, 'it never goes back');
    assert.equal((await from.upload(`/api/lab/restore?id=${id}`, text)).status, 200);
    const [bags, find] = [await from.get('/api/bags'), await from.get('/api/find?words=100n')];
    assert.equal((bags.body['bags'] as readonly unknown[]).length, 258); // as: the schema of bags
    assert.ok((find.body['found'] as readonly unknown[]).length > 0); // as: the schema of find
    assert.equal((await from.get('/api/lab')).body['demo'], false, 'what was restored is not cleared by one tap');
    assert.deepEqual(await from.lab.read(checkLab), []);
  } finally {
    await from.end();
  }
});
