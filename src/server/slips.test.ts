import assert from 'node:assert/strict';
import { randomUUID } from 'node:crypto';
import { after, before, test } from 'node:test';
import type { BagWithHistory } from '#api/bags.ts';
import type { KitView } from '#api/kits.ts';
import type { Movement } from '#api/movements.ts';
import { checkLab } from '#db/check.ts';
import { bodyOf, httpLab, type HttpLab, type HttpTold } from '#test/http-lab.ts';

const BAGS = `Bag,Qty,Description,Box
1,205,4k7 1% 0805 resistor,A
2,40,10k 1% 0805 resistor,A
3,200,1k 1% 0805 resistor,A
`;
const BOM = `Reference,Value,Footprint
"R1,R2",10k 1%,R_0805
`;

let http: HttpLab;
before(async () => {
  http = await httpLab();
  await bodyOf(http.upload(`/api/imports?name=bags.csv&id=${randomUUID()}`, BAGS), 201);
  await bodyOf(http.upload(`/api/boards?name=plover.csv&id=${randomUUID()}`, BOM), 201);
});
after(async () => {
  assert.deepEqual(await http.lab.read(checkLab), []);
  await http.end();
});

const bag = (number: number): Promise<BagWithHistory> => bodyOf(http.get(`/api/bags/${number}`));
const move = (body: object): Promise<HttpTold> => http.act('/api/movements', body);
const lastSeq = async (number: number): Promise<number> => (await bag(number)).movements.at(-1)?.seq ?? 0;

void test('far more in the hand than the record says is a slip of the pen until it was counted', async () => {
  const pick = (quantity: number): Promise<HttpTold> => move({ kind: 'picked', bag: 1, quantity, inHand: true });
  const refused = await pick(1_000_000_000);
  assert.deepEqual([refused.status, refused.body['code'], refused.body['onHand']], [409, 'in-hand-large', 205]);
  assert.match(String(refused.body['detail']), /^Bag 1 has 205 on hand, and 1000000000 .*count/i);
  assert.equal((await pick(2051)).body['code'], 'in-hand-large');
  assert.equal((await bag(1)).onHand, 205);
  const ten = await bodyOf<Movement>(pick(2050), 201);
  assert.equal(ten.onHand, 0);
  const thousand = await bodyOf<Movement>(pick(1000), 201);
  assert.equal(thousand.onHand, 0, 'up to a thousand above the record is no slip');
  assert.equal((await pick(1001)).status, 409);
  await bodyOf(move({ kind: 'counted', bag: 1, counted: 1001 }), 201);
  await bodyOf(pick(1001), 201);
});

void test('a kit is not filled by a slip of the pen either', async () => {
  const { build } = await bodyOf<{ build: string }>(http.act('/api/kits', { board: 'plover', boards: 3, reserve: true }), 201);
  const [take] = (await bodyOf<KitView>(http.get(`/api/kits/${build}`))).takes;
  const picks = (quantity: number): Promise<HttpTold> =>
    http.act(`/api/kits/${build}/picks`, { picks: [{ take: take?.id, quantity }], inHand: true });
  const refused = await picks(1041);
  assert.deepEqual([refused.status, refused.body['code'], refused.body['bag']], [409, 'in-hand-large', 2]);
  assert.equal((await bag(2)).onHand, 40);
  await bodyOf(picks(1040), 201);
});

void test('the same count told twice by the same hand is one count', async () => {
  const sawSeq = await lastSeq(3);
  const count = (who: string, counted: number): Promise<Movement> =>
    bodyOf(
      fetch(`${http.url}/api/movements`, {
        method: 'POST',
        headers: { 'content-type': 'application/json', 'bagatelle-who': who },
        body: JSON.stringify({ id: randomUUID(), kind: 'counted', bag: 3, counted, sawSeq }),
      }).then(async (response) => ({
        status: response.status,
        headers: response.headers,
        body: (await response.json()) as HttpTold['body'], // as: every answer is an object
      })),
      201,
    );
  const first = await count('Ann', 205);
  assert.deepEqual([first.delta, first.onHand, first.warnings], [5, 205, []]);
  const again = await count('Ann', 205);
  assert.deepEqual([again.delta, again.onHand, again.warnings.map(({ code }) => code)], [0, 205, ['counted-already']]);
  assert.match(again.warnings[0]?.text ?? '', /^Bag 3 .*counted.*205/);
  await bodyOf(move({ kind: 'picked', bag: 3, quantity: 4 }), 201);
  const later = await count('Ann', 205);
  assert.deepEqual([later.delta, later.onHand], [0, 201], 'what was picked after the count stays picked');
  await bodyOf(http.act('/api/undo', { act: later.id }), 201);
  await bodyOf(http.act('/api/undo', { act: again.id }), 201);
  await bodyOf(http.act('/api/undo', { act: first.id }), 201);
  const anew = await count('Ann', 205);
  assert.deepEqual([anew.delta, anew.onHand], [5, 201], 'a count that was taken back is none');
  const other = await count('Bo', 204);
  assert.equal(other.delta, 4, 'another person and another total is another count');
});
