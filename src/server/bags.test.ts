import assert from 'node:assert/strict';
import { randomUUID } from 'node:crypto';
import { after, before, test } from 'node:test';
import type { BagView, BagWithHistory, FoundAnswer, PartReading } from '#api/bags.ts';
import { checkLab } from '#db/check.ts';
import { bodyOf, httpLab, type HttpLab } from '#test/http-lab.ts';

const BAGS = `Bag,Qty,Description,Box
1,40,100n 50V X7R 0805,A
2,30,4k7 1% 0805 resistor,A
3,50,4k7 1% 1206 resistor,A
4,0,4k7 5% 0805 resistor,A
5,9,5k1 1% 0805 resistor,A
6,60,4k7 1% 0805 resistor,B
`;
const BOM = `Reference,Value,Footprint
"R1,R2",4k7 1%,R_0805
`;

let http: HttpLab;
before(async () => {
  http = await httpLab();
  await bodyOf(http.upload(`/api/imports?name=bags.csv&id=${randomUUID()}`, BAGS), 201);
  await bodyOf(http.upload(`/api/boards?name=plover.csv&id=${randomUUID()}`, BOM), 201);
});
after(() => http.end());

interface Taken {
  readonly id: string;
  readonly bag: number;
  readonly box: string | null;
  readonly code: string;
  readonly said: { readonly name: string; readonly rest: string };
  readonly onHand: number;
}

const bag = (number: number): Promise<BagWithHistory> => bodyOf(http.get(`/api/bags/${number}`));
const find = (words: string): Promise<FoundAnswer> => bodyOf(http.get(`/api/find?words=${encodeURIComponent(words)}`));
const plain = (text: string): string => text.replaceAll('\u202f', ' ');

void test('what was typed stands over what it was looked for as, and bags stand in groups', async () => {
  const { read, found } = await find('4k7 0805');
  assert.deepEqual(
    read.map(({ typed, means, how }) => [typed, plain(means), how]),
    [
      ['4k7', '4.7 kΩ resistor', 'read'],
      ['0805', 'package 0805', 'read'],
      ['not given', 'any tolerance', 'filled'],
    ],
  );
  const groups = new Map(found.map((one) => [one.bag, one.group]));
  assert.deepEqual(Object.fromEntries(groups), { 2: 'typed', 6: 'typed', 3: 'package', 5: 'near', 4: 'exhausted' });
  const [first] = found;
  assert.deepEqual(
    [plain(first?.said.name ?? ''), first?.said.rest, first?.place, first?.unit, first?.state],
    ['4.7 kΩ ±1 %', 'Resistor 0805', null, 'piece', 'sound'],
  );
});

void test('bag numbers, boxes, bounds, slips of the pen and words of no bag are read as what they are', async () => {
  const means = async (words: string): Promise<unknown[]> =>
    (await find(words)).read.filter(({ how }) => how !== 'filled').map((one) => `${one.typed}: ${plain(one.means)} (${one.how})`);
  assert.deepEqual(await means('bag 2'), ['bag 2: bag 2 (read)']);
  assert.deepEqual(await means('box B'), ['box B: box B (read)']);
  assert.deepEqual(await means('capacitor at least 25 V'), ['capacitor: capacitor (read)', 'at least 25V: at least 25 V (read)']);
  assert.deepEqual(await means('resitsor'), ['resitsor: resistor? (doubt)']);
  assert.deepEqual(await means('4k7 zzzz'), ['4k7: 4.7 kΩ resistor (read)', 'zzzz: in no bag (unread)']);
  assert.deepEqual(await means('a b c d e f g h i j k l m'), [
    ...(await means('a b c d e f g h i j k l')),
    'm: not looked for: too many words (unread)',
  ]);
});

void test('a bag taken in from words is read, kept with its doubts, and taken in once', async () => {
  const body = { id: randomUUID(), says: ' 47K 50V X7R ', quantity: 12, about: true, box: 'C', bag: 30 };
  const taken = await bodyOf<Taken>(http.act('/api/bags', body), 201);
  assert.deepEqual([taken.bag, taken.box, taken.onHand], [30, 'C', 12]);
  assert.match(taken.said.rest, /value in doubt$/);
  assert.deepEqual(await bodyOf<Taken>(http.act('/api/bags', body)), taken);

  const page = await bag(30);
  assert.deepEqual([page.onHand, page.sure, page.free, page.text], [12, 0, 0, '47K 50V X7R']);
  assert.deepEqual(
    page.doubts.map(({ field }) => field),
    ['value'],
  );
  assert.match(page.doubts[0]?.why ?? '', /'47K' .* 47 pF; /);
  assert.deepEqual(
    page.gloss.map(({ typed, how }) => `${typed} ${how}`),
    ['47K doubt', '50V read', 'X7R read'],
  );
  await bodyOf(http.act('/api/undo', { act: taken.id }), 201);
  await bodyOf(http.get('/api/bags/30'), 404);
});

void test('a number that is taken is refused even for the same part, and so are no pieces and no words', async () => {
  const before = await bag(2);
  const taken = await bodyOf<{ code: string }>(http.act('/api/bags', { says: '4k7 1% 0805', quantity: 1, bag: 2 }), 409);
  assert.equal(taken.code, 'number-taken');
  const none = await bodyOf<{ detail: string }>(http.act('/api/bags', { says: '4k7', quantity: 0 }), 422);
  assert.equal(none.detail, 'quantity must be at least 1, not 0.');
  await bodyOf(http.act('/api/bags', { says: '  ', quantity: 1 }), 422);
  assert.deepEqual(await bag(2), before);
});

void test('a text is read as a part, and nothing is kept', async () => {
  const change = (await http.get('/api/bags/2')).headers.get('bagatelle-change');
  const reading = await bodyOf<PartReading>(http.get(`/api/read-part?says=${encodeURIComponent('M3x8 screw blabla')}`));
  assert.deepEqual([reading.kind, reading.code, reading.said.name], ['screw', 'HS-M3-8MM', 'M3 × 8']);
  assert.deepEqual(
    reading.gloss.map(({ typed, how }) => `${typed} ${how}`),
    ['M3x8 read', 'screw read', 'blabla unread'],
  );
  const doubted = await bodyOf<PartReading>(http.get(`/api/read-part?says=${encodeURIComponent('47K 50V X7R')}`));
  assert.match(doubted.said.rest, /value in doubt$/);
  assert.equal((await http.get('/api/bags/2')).headers.get('bagatelle-change'), change);
});

void test('a bag says what its movements were for, what is promised, which bags are alike and where its pieces went', async () => {
  const kit = await bodyOf<{ build: string }>(
    http.act('/api/kits', { board: 'plover', boards: 2, reserve: true, name: 'Two plovers', spares: false }),
    201,
  );
  const from = [await bag(2), await bag(6)].find(({ reserved }) => reserved > 0)?.bag ?? 0;
  const promised = await bag(from);
  assert.deepEqual(promised.reservedFor, [{ build: kit.build, name: 'Two plovers', quantity: 4 }]);
  assert.deepEqual(
    promised.alike.map((one) => one.bag),
    [from === 2 ? 6 : 2],
  );
  assert.deepEqual(promised.usedOn, []);

  const picked = await bodyOf<{ id: string }>(http.act(`/api/kits/${kit.build}/picks`, {}), 201);
  const used = await bag(from);
  assert.deepEqual([used.reservedFor, used.usedOn], [[], [{ board: 'plover', refs: ['R1', 'R2'] }]]);
  assert.deepEqual(
    used.movements.map(({ kind, delta, for: what, undoneBy }) => [kind, delta, what, undoneBy]),
    [
      ['imported', from === 2 ? 30 : 60, 'bags.csv', null],
      ['picked-for-build', -4, 'Two plovers', null],
    ],
  );
  const undone = await bodyOf<{ id: string }>(http.act('/api/undo', { act: picked.id }), 201);
  const after = await bag(from);
  assert.equal(after.movements[1]?.undoneBy, undone.id);
  assert.deepEqual([after.usedOn, after.reservedFor.length], [[], 1]);
  assert.deepEqual(await http.lab.read(checkLab), []);
});

void test('the bags touched last come first, the newest act before the others', async () => {
  for (const bag of [3, 6]) {
    const picked = await http.act('/api/movements', { kind: 'picked', bag, quantity: 1 });
    assert.equal(picked.status, 201);
  }
  const { bags } = await bodyOf<{ bags: BagView[] }>(http.get('/api/bags/touched?limit=2'));
  assert.deepEqual(
    bags.map(({ bag }) => bag),
    [6, 3],
  );
});
