import assert from 'node:assert/strict';
import { randomUUID } from 'node:crypto';
import { after, before, test } from 'node:test';
import type { BoxesView } from '#api/bags.ts';
import { bodyOf, httpLab, type HttpLab } from '#test/http-lab.ts';

const BAGS = `Bag,Qty,Description,Box
1,40,10uF 25V X7R 0805,A
2,30,4k7 1% 0805 resistor,A
3,0,10k 1% 0805 resistor,A
4,50,22k 1% 0805 resistor,A
5,50,screw M3x8,A
6,50,nut M3,A
9,9,LED red 3mm,B
8,9,LED green 3mm,B
12,5,washer M3,
`;

let http: HttpLab;
before(async () => {
  http = await httpLab();
  await bodyOf(http.upload(`/api/imports?name=bags.csv&id=${randomUUID()}`, BAGS), 201);
});
after(() => http.end());

const boxes = (): Promise<BoxesView> => bodyOf(http.get('/api/boxes'));
const order = async (): Promise<string> => (await boxes()).boxes.map(({ name, lifts }) => `${name}${lifts}`).join(' ');

void test('boxes stand with their bags front to back, and say what is in them', async () => {
  const view = await boxes();
  assert.deepEqual(
    view.boxes.map(({ name, says, bags }) => [name, says, bags.map(({ bag }) => bag)]),
    [
      ['A', 'Resistors, capacitors, screws and more', [1, 2, 3, 4, 5, 6]],
      ['B', 'LEDs', [8, 9]],
    ],
  );
  assert.deepEqual(view.boxes[0]?.bags[2], { bag: 3, standing: 'exhausted' });
  assert.deepEqual(view.loose, [{ bag: 12, place: null, standing: 'holds' }]);
});

void test('a box whose bags all have a numbered place is shown by place', async () => {
  await bodyOf(http.act('/api/bags', { says: '1k 0603', quantity: 5, bag: 40, box: 'C', place: '2' }), 201);
  await bodyOf(http.act('/api/bags', { says: '2k 0603', quantity: 5, bag: 41, box: 'C', place: '1' }), 201);
  const view = await boxes();
  assert.deepEqual(
    view.boxes[2]?.bags.map(({ bag }) => bag),
    [41, 40],
  );
});

void test('boxes are put into their order, once, and back', async () => {
  assert.equal(await order(), 'A0 B0 C0');
  const body = { id: randomUUID(), boxes: ['C', 'A', 'B'], standing: 'stacked' };
  const { body: done, status } = await http.act('/api/boxes/order', body);
  assert.equal(status, 201);
  assert.deepEqual((await http.act('/api/boxes/order', body)).body, done);
  assert.equal(await order(), 'C0 A1 B2');
  const beside = await bodyOf<{ id: string }>(http.act('/api/boxes/order', { boxes: ['B', 'A', 'C'], standing: 'beside' }), 201);
  assert.equal(await order(), 'B0 A0 C0');
  await bodyOf(http.act('/api/undo', { act: beside.id }), 201);
  assert.equal(await order(), 'C0 A1 B2');
});

void test('an order that leaves a box out, names one twice or one that is not there is refused by its name', async () => {
  const before = await order();
  const refused = async (names: readonly string[], status: number): Promise<string> =>
    (await bodyOf<{ detail: string }>(http.act('/api/boxes/order', { boxes: names, standing: 'beside' }), status)).detail;
  assert.match(await refused(['A', 'C'], 409), /^Box 'B' has no place/);
  assert.match(await refused(['A', 'B', 'C', 'A'], 422), /^Box 'A' is named twice/);
  assert.match(await refused(['A', 'B', 'C', 'Z'], 404), /'Z'/);
  assert.equal(await order(), before);
});
