import assert from 'node:assert/strict';
import { randomUUID } from 'node:crypto';
import { after, before, test } from 'node:test';
import type { BoardLines, BoardReach, BoardView, LineDetail } from '#api/boards.ts';
import { bodyOf, httpLab, type HttpLab } from '#test/http-lab.ts';

const BAGS = `Bag,Qty,Description,Box
1,20,10uF 25V X7R 0805 10%,A
2,6,10uF 0805,A
3,100,4k7 1% 0805 resistor,A
4,9,10uF 10V X5R 0805,B
`;
const BOM = `Reference,Value,Footprint
"C1,C2",10uF 16V X5R,C_0805
R1,4k7 5%,R_0805
R2,10k 1%,R_0805
`;

let http: HttpLab;
before(async () => {
  http = await httpLab();
  await bodyOf(http.upload(`/api/imports?name=bags.csv&id=${randomUUID()}`, BAGS), 201);
  await bodyOf(http.upload(`/api/boards?name=tern.csv&id=${randomUUID()}`, BOM), 201);
});
after(() => http.end());

const lines = (boards = 1): Promise<BoardLines> => bodyOf(http.get(`/api/boards/tern/lines?boards=${boards}`));
const detail = (row: number, more = ''): Promise<LineDetail> => bodyOf(http.get(`/api/boards/tern/lines/${row}${more}`));
const narrow = (text: string | null | undefined): string => (text ?? '').replaceAll('\u202f', ' ');

void test('a line says what it asks, what it gets, what is left, and how many boards it reaches', async () => {
  const found = await lines(5);
  assert.deepEqual(
    [found.board, found.source, found.boards, found.buildable, found.proof],
    ['tern', 'tern.csv', 5, 0, 'optimal'],
  );
  const [caps, resistors, missing] = found.lines;
  assert.deepEqual([caps?.need, caps?.bags, caps?.free, caps?.left, caps?.reaches], [10, [{ bag: 1, take: 10 }], 20, 10, 10]);
  assert.match(caps?.asks ?? '', /10uF 16V X5R/);
  assert.deepEqual([narrow(caps?.said.name), narrow(caps?.holds?.name)], ['10 µF 16 V X5R', '10 µF 25 V X7R']);
  assert.deepEqual([resistors?.verdict, resistors?.left, resistors?.reaches], ['serves', 95, 100]);
  assert.deepEqual([missing?.verdict, missing?.short, missing?.reaches, missing?.free], ['missing', 5, 0, 0]);
  assert.deepEqual(found.limitedBy, [{ line: missing?.row, reaches: 0 }]);
});

void test('a line point by point against the bag that it would get, and against any other', async () => {
  const row = (await lines()).lines[0]?.row ?? 0;
  const own = await detail(row);
  assert.deepEqual([own.bag, own.verdict], [1, 'serves']);
  assert.deepEqual(
    own.points.map(({ point, asked, has, fit, word }) => [point, narrow(asked), narrow(has), fit, word]),
    [
      ['Capacitance', '10 µF', '10 µF', 'exact', 'same'],
      ['Voltage', '16 V', '25 V', 'serves', 'higher'],
      ['Dielectric', 'X5R', 'X7R', 'serves', 'steadier'],
      ['Package', '0805', '0805', 'exact', 'same'],
      ['Tolerance', '', '±10 %', 'none', 'any will do'],
    ],
  );
  assert.deepEqual(
    own.others.map(({ bag, verdict, free }) => [bag, verdict, free]),
    [
      [2, 'check', 6],
      [4, 'missing', 9],
    ],
  );
  const low = await detail(row, '?bag=4');
  assert.deepEqual([low.bag, low.verdict, low.points.find(({ point }) => point === 'Voltage')?.word], [4, 'missing', 'lower']);
  assert.deepEqual(
    low.others.map(({ bag }) => bag),
    [1, 2],
  );
  assert.equal((await http.get(`/api/boards/tern/lines/${row}?bag=99`)).body['code'], 'no-such-bag');
  assert.match(String((await http.get('/api/boards/tern/lines/77')).body['detail']), /row must be a row of the board, not '77'/);
});

void test('a bag chosen by hand is the one that is shown, with its reason, and may be taken back', async () => {
  const { row = 0, demand = '' } = (await lines()).lines[0] ?? {};
  const wish = { demand, bag: 4, row };
  assert.equal((await http.act('/api/boards/tern/choices', wish)).status, 409);
  const made = await bodyOf<{ id: string }>(http.act('/api/boards/tern/choices', { ...wish, reason: 'runs on 5 V' }), 201);
  const line = (await lines()).lines[0];
  assert.deepEqual(line?.chosen, { bag: 4, accept: true, reason: 'runs on 5 V' });
  assert.deepEqual(line?.bags, [{ bag: 4, take: 2 }]);
  const shown = await detail(row);
  assert.deepEqual([shown.bag, shown.verdict], [4, 'check']);
  assert.ok(shown.because.some((one) => one.includes('runs on 5 V')));
  assert.deepEqual(
    shown.others.map(({ bag }) => bag),
    [1, 2],
  );
  await bodyOf(http.act('/api/undo', { act: made.id }), 201);
  assert.equal((await lines()).lines[0]?.chosen, null);
});

void test('an open check names the bag to look at; accepting it lets it be planned', async () => {
  await bodyOf(
    http.upload(`/api/boards?name=wren.csv&id=${randomUUID()}`, 'Reference,Value,Footprint\nC1,10uF 35V X7R,C_0805\n'),
    201,
  );
  const wren = (): Promise<BoardLines> => bodyOf(http.get('/api/boards/wren/lines?boards=2'));
  const open = await wren();
  const [line] = open.lines;
  assert.deepEqual([line?.verdict, line?.nearest, line?.bags, line?.free], ['check', 2, [], 0]);
  assert.deepEqual([open.buildable, open.buildableWithChecks], [0, 2]);
  await bodyOf(http.act('/api/boards/wren/choices', { demand: line?.demand, bag: 2 }), 201);
  const accepted = await wren();
  assert.deepEqual([accepted.buildable, accepted.lines[0]?.bags, accepted.lines[0]?.nearest], [2, [{ bag: 2, take: 2 }], null]);
});

void test('what is fitted later needs nothing, and counts again when that is taken back', async () => {
  const demand = (await lines()).lines[2]?.demand ?? '';
  const body = { id: randomUUID(), demand, later: true };
  const done = await bodyOf<{ id: string; later: boolean }>(http.act('/api/boards/tern/later', body), 201);
  await bodyOf(http.act('/api/boards/tern/later', body), 200);
  const found = await lines(5);
  const line = found.lines[2];
  assert.deepEqual([line?.fitted, line?.later, line?.need, line?.short, line?.reaches], [true, true, 0, 0, null]);
  assert.equal(line?.because[0]?.text, 'left off for now, to be fitted later');
  assert.equal(found.buildable, 5);
  const kit = await bodyOf<{ buildable: number }>(http.act('/api/kits', { board: 'tern', boards: 5 }));
  assert.equal(kit.buildable, 5);
  assert.equal((await http.act('/api/boards/tern/later', { demand, later: true })).body['code'], 'nothing-to-do');
  await bodyOf(http.act('/api/undo', { act: done.id }), 201);
  assert.deepEqual([(await lines(5)).buildable, (await lines()).lines[2]?.later], [0, false]);
});

void test('how far each board reaches follows the stock, the choices and what is fitted later', async () => {
  const reach = async (): Promise<BoardReach | undefined> =>
    (await bodyOf<{ boards: BoardReach[] }>(http.get('/api/boards/reach'))).boards.find(({ board }) => board === 'tern');
  const row = (await lines()).lines[2]?.row;
  assert.deepEqual(await reach(), { board: 'tern', buildable: 0, most: false, limitedBy: [{ line: row, reaches: 0 }] });
  const demand = (await lines()).lines[2]?.demand;
  await bodyOf(http.act('/api/boards/tern/later', { demand, later: true }), 201);
  assert.deepEqual(await reach(), { board: 'tern', buildable: 10, most: false, limitedBy: [{ bag: 1, reaches: 10 }] });
  await bodyOf(http.act('/api/movements', { kind: 'received', bag: 1, quantity: 100_000 }), 201);
  await bodyOf(http.act('/api/movements', { kind: 'received', bag: 3, quantity: 100_000 }), 201);
  assert.deepEqual(await reach(), { board: 'tern', buildable: 999, most: true, limitedBy: [] });
});

void test('a board names its builds, the newest first', async () => {
  for (const name of ['first', 'second'])
    await bodyOf(http.act('/api/kits', { board: 'wren', boards: 1, reserve: true, name }), 201);
  const { boards } = await bodyOf<{ boards: BoardView[] }>(http.get('/api/boards'));
  const wren = boards.find(({ name }) => name === 'wren');
  assert.deepEqual(
    wren?.builds.map(({ name, state, boards: of }) => [name, state, of]),
    [
      ['second', 'reserved', 1],
      ['first', 'reserved', 1],
    ],
  );
});
