import assert from 'node:assert/strict';
import { randomUUID } from 'node:crypto';
import { after, before, test } from 'node:test';
import type { BagWithHistory } from '#api/bags.ts';
import type { BoardSaved } from '#api/boards.ts';
import type { DraftList, DraftRow, DraftView } from '#api/drafts.ts';
import type { Imported } from '#api/files.ts';
import { checkLab } from '#db/check.ts';
import { bodyOf, httpLab, type HttpLab, type HttpTold } from '#test/http-lab.ts';

const LIST = `Bag,What is in it,Pcs,Box
12,100n 50V X7R 0805,40,A
,4k7 1% 0805 resistor,about 50,
13,47K 50V X7R 0805 capacitor,7,A
`;
const BOM = `Reference,Value,Footprint,Qty
"R1,R2",4k7 1%,R_0805,3
C1,"4,7",C_0805,1
R9,10k 5%,R_0805,1
`;

let http: HttpLab;
before(async () => {
  http = await httpLab();
});
after(() => http.end());

const bring = (name: string, is: 'list' | 'bom', text: string): Promise<DraftView> =>
  bodyOf(http.upload(`/api/drafts?name=${encodeURIComponent(name)}&is=${is}`, text), 201);
const ask = async (method: string, path: string, body?: object): Promise<HttpTold> => {
  const response = await fetch(http.url + path, {
    method,
    headers: { 'content-type': 'application/json' },
    ...(body && { body: JSON.stringify(body) }),
  });
  return { status: response.status, headers: response.headers, body: (await response.json()) as HttpTold['body'] }; // as: every answer is an object
};
const tell = (draft: string, change: object): Promise<DraftView> => bodyOf(ask('PATCH', `/api/drafts/${draft}`, change));
const shown = (draft: string): Promise<DraftView> => bodyOf(http.get(`/api/drafts/${draft}`));
const keep = (draft: string, body: object): Promise<HttpTold> => http.act(`/api/drafts/${draft}/keep`, body);
const rowOf = (view: DraftView, row: number): DraftRow => {
  const found = view.rows.find((one) => one.row === row);
  assert.ok(found, `row ${row}`);
  return found;
};

void test('a list stays as it was brought and told until it is kept, and then becomes its bags once', async () => {
  const brought = await bring('shelf.csv', 'list', LIST);
  assert.deepEqual([brought.rows.length, brought.bags, brought.trouble], [3, 3, null]);
  const told = await tell(brought.draft, { answers: [{ row: 3, field: 'quantity', text: '52' }], box: 'B' });
  assert.deepEqual([rowOf(told, 3).quantity, rowOf(told, 3).box, rowOf(told, 2).box], [52, 'B', 'A']);
  assert.deepEqual(
    rowOf(told, 3).doubts.filter(({ field }) => field === 'quantity'),
    [],
  );
  assert.deepEqual(await shown(brought.draft), told, 'a page that is loaded anew shows the same');
  const id = randomUUID();
  const kept = await bodyOf<Imported>(keep(brought.draft, { id }), 201);
  assert.deepEqual([kept.bags, kept.pieces, kept.first, kept.last], [3, 99, 12, 14]);
  const again = await bodyOf<Imported>(keep(brought.draft, { id }), 200);
  assert.deepEqual(again, kept, 'the draft is gone, and the same id answers the same');
  assert.equal((await http.get(`/api/drafts/${brought.draft}`)).status, 410);
  assert.equal((await bodyOf<BagWithHistory>(http.get('/api/bags/14'))).onHand, 52);
  await bodyOf(http.act('/api/undo', { act: id }), 201);
  assert.deepEqual(await http.lab.read(checkLab), []);
});

void test('a BOM becomes a board by the name of its file, then its next revision; open drafts stand the newest first', async () => {
  const brought = await bring('tide-logger_bom.csv', 'bom', BOM);
  assert.deepEqual([brought.board, brought.revision, brought.known], ['tide-logger', '1', false]);
  const { drafts } = await bodyOf<DraftList>(http.get('/api/drafts'));
  assert.deepEqual(
    drafts.map(({ draft, name, is, rows }) => [draft, name, is, rows]),
    [[brought.draft, 'tide-logger_bom.csv', 'bom', 3]],
  );
  const out = await tell(brought.draft, { out: [{ row: 4, out: true }] });
  assert.ok(rowOf(out, 4).out);
  const id = randomUUID();
  const saved = await bodyOf<BoardSaved>(keep(brought.draft, { id }), 201);
  assert.deepEqual([saved.board, saved.revision, saved.lines], ['tide-logger', '1', 2]);
  assert.deepEqual(await bodyOf<BoardSaved>(keep(brought.draft, { id }), 200), saved);
  const next = await bring('Tide-Logger.csv', 'bom', BOM);
  assert.deepEqual([next.board, next.revision, next.known], ['tide-logger', '2', true]);
  const taken = await tell(next.draft, { revision: '1' });
  assert.match(taken.trouble ?? '', /revision/);
  await bodyOf(ask('DELETE', `/api/drafts/${next.draft}`));
  assert.equal((await ask('DELETE', `/api/drafts/${next.draft}`)).status, 404);
});

void test('columns that are told are read anew, a clash of numbers is said with its rows, and doubts have answers', async () => {
  const text = 'Bag,What,Pcs,Where\n21,4k7 1% 0805 resistor,40,shelf\n21,"47K 50V X7R 0805 capacitor",7,box\n';
  const brought = await bring('two.csv', 'list', text);
  assert.match(brought.trouble ?? '', /21.*row 3/);
  const [first] = brought.columns;
  assert.deepEqual([first?.header, first?.samples], ['Bag', ['21', '21']]);
  const told = await tell(brought.draft, { columns: { 1: 'other' } });
  assert.deepEqual([told.columns[0]?.role, told.columns[0]?.sure, told.trouble, told.bags], ['other', 'told', null, 2]);
  assert.ok(told.roles.some(({ role, word }) => role === 'partNumber' && word === 'part number'));
  const gloss = rowOf(told, 2).gloss.map(({ typed, means }) => [typed, means.replaceAll('\u202f', ' ')]);
  assert.deepEqual(gloss, [
    ['4k7', '4.7 kΩ'],
    ['1%', '±1 %'],
    ['0805', 'package 0805'],
    ['resistor', 'resistor'],
    ['40', '40 pieces'],
    ['shelf', rowOf(told, 2).gloss.at(-1)?.means],
  ]);
  const refused = await ask('PATCH', `/api/drafts/${brought.draft}`, { answers: [{ row: 2, field: 'quantity', text: 'few' }] });
  assert.equal(refused.status, 422);
  assert.match(String(refused.body['detail']), /quantity must be a whole number in plain figures, not 'few' \(row 2\)/);
  const gone = await tell(brought.draft, { out: [{ row: 3, out: true }] });
  assert.deepEqual([gone.bags, gone.pieces], [1, 40]);
});

void test('each likely answer that is offered can be given, and settles its doubt', async () => {
  const brought = await bring('doubts.csv', 'bom', BOM);
  let offered = 0;
  for (const { row, doubts } of brought.rows)
    for (const { field, answers } of doubts)
      for (const { text } of answers) {
        offered += 1;
        const told = await tell(brought.draft, { answers: [{ row, field, text }] });
        assert.ok(!rowOf(told, row).doubts.some((doubt) => doubt.field === field), `${field} ${text}`);
        await tell(brought.draft, { forget: [{ row, field }] });
      }
  assert.ok(offered >= 5, String(offered));
  assert.deepEqual((await shown(brought.draft)).rows, brought.rows, 'what is forgotten is asked again');
});

void test('another page can neither change nor throw away a draft', async () => {
  const { draft } = await bring('mine.csv', 'list', 'Bag,What,Pcs\n31,4k7 1% 0805 resistor,40\n');
  for (const method of ['PATCH', 'DELETE']) {
    const answer = await fetch(`${http.url}/api/drafts/${draft}`, {
      method,
      headers: { 'content-type': 'application/json', origin: 'http://elsewhere.example' },
      body: '{}',
    });
    assert.equal(answer.status, 403);
  }
  assert.equal((await http.get(`/api/drafts/${draft}`)).status, 200);
  assert.equal((await http.upload('/api/drafts?name=x.csv&is=list', 'hello')).status, 422);
});

void test('a file that is brought again under its id is the same draft, as it was told meanwhile', async () => {
  const before = (await bodyOf<DraftList>(http.get('/api/drafts'))).drafts.length;
  const path = `/api/drafts?name=twice.csv&is=list&id=${randomUUID()}`;
  const list = 'Bag,What,Pcs\n41,4k7 1% 0805 resistor,40\n';
  const [one, two] = await Promise.all([http.upload(path, list), http.upload(path, list)]);
  assert.deepEqual(
    [one.status, two.status].toSorted((a, b) => a - b),
    [200, 201],
  );
  assert.deepEqual(one.body, two.body);
  const told = await tell(String(one.body['draft']), { out: [{ row: 2, out: true }] });
  assert.deepEqual(await bodyOf<DraftView>(http.upload(path, list)), told);
  const other = await http.upload(path, list.replace('40', '41'));
  assert.deepEqual([other.status, other.body['code']], [422, 'id-reused']);
  const renamed = await http.upload(path.replace('twice', 'other'), list);
  assert.deepEqual([renamed.status, renamed.body['code']], [422, 'id-reused']);
  assert.equal((await bodyOf<DraftList>(http.get('/api/drafts'))).drafts.length, before + 1);
  assert.equal((await http.upload('/api/drafts?name=x.csv&is=list&id=7', list)).status, 422);
});

void test('who keeps a draft that another changed since is told so, and keeps what is there now by looking again', async () => {
  const brought = await bring('two people.csv', 'list', 'Bag,What,Pcs\n,4k7 1% 0805 resistor,40\n,10k 1% 0805 resistor,7\n');
  const told = await tell(brought.draft, { out: [{ row: 3, out: true }] });
  assert.deepEqual([brought.version, told.version], [1, 2]);
  const id = randomUUID();
  const refused = await keep(brought.draft, { id, saw: brought.version });
  assert.deepEqual([refused.status, refused.body['code']], [409, 'draft-changed']);
  const now = await shown(brought.draft);
  assert.equal(now.version, 2);
  const kept = await bodyOf<Imported>(keep(brought.draft, { id, saw: now.version }), 201);
  assert.equal(kept.bags, 1);
  assert.deepEqual(await bodyOf<Imported>(keep(brought.draft, { id, saw: now.version }), 200), kept);
});

void test('a number that is taken is a doubt of its row, with the next that is free; the list waits for it', async () => {
  const text = 'Bag,What,Pcs\n71,10k 1% 0805 resistor,40\n71,22k 1% 0805 resistor,7\n,33k 1% 0805 resistor,1\n';
  const brought = await bring('twice in it.csv', 'list', text);
  const [asked] = rowOf(brought, 3).doubts;
  assert.deepEqual(
    [asked?.field, asked?.why, asked?.stops, asked?.right, asked?.answers.map((one) => one.text)],
    ['bag', 'Number 71 stands in row 2 too.', true, null, ['72']],
  );
  assert.equal(rowOf(brought, 2).doubts.length, 0);
  assert.match(brought.trouble ?? '', /71 is taken \(row 3\).*leave its line out/s);
  assert.equal((await keep(brought.draft, { id: randomUUID() })).status, 409);
  const told = await tell(brought.draft, { answers: [{ row: 3, field: 'bag', text: '72' }] });
  assert.deepEqual([told.trouble, told.rows.map(({ bag }) => bag), told.doubts], [null, [71, 72, 73], 0]);
  await bodyOf(keep(brought.draft, { id: randomUUID() }), 201);
  const next = await bring('in the lab.csv', 'list', 'Bag,What,Pcs\n71,22k 1% 0805 resistor,7\n');
  const why = rowOf(next, 2).doubts[0]?.why.replaceAll('\u202f', ' ');
  assert.equal(why, 'Number 71 is on a bag of the lab: 10 kΩ ±1 %.');
  assert.equal((await tell(next.draft, { out: [{ row: 2, out: true }] })).rows[0]?.doubts.length, 0);
});

void test('how many may be told as a list says it; what being right means is said, and is not offered for nothing', async () => {
  const text = 'Bag,What,Pcs\n81,10k 1% 0805 resistor,about 200\n82,22k 1% 0805 resistor,20/25\n83,33k 1% 0805 resistor,7\n';
  const brought = await bring('about.csv', 'list', text);
  const right = (row: number): (string | null)[] => rowOf(brought, row).doubts.map((doubt) => doubt.right);
  assert.deepEqual(right(2), ['about 200, to be counted (plans promise none of it)']);
  assert.deepEqual(right(3), ['Count it later']);
  for (const [said, taken] of [
    ['about 500', 500],
    ['~500', 500],
    ['ca. 1200 pcs', 1200],
  ] as const) {
    const row = rowOf(await tell(brought.draft, { answers: [{ row: 4, field: 'quantity', text: said }] }), 4);
    assert.deepEqual([row.quantity, row.about, row.doubts], [taken, true, []], said);
  }
  const refused = await ask('PATCH', `/api/drafts/${brought.draft}`, { answers: [{ row: 4, field: 'quantity', text: '20/25' }] });
  assert.deepEqual([refused.status, refused.body['row'], refused.body['field']], [422, 4, 'quantity']);
  await bodyOf(keep(brought.draft, { id: randomUUID() }), 201);
  const bag = await bodyOf<BagWithHistory>(http.get('/api/bags/83'));
  assert.deepEqual([bag.onHand, bag.free], [1200, 0]);
});

void test('of a long list the first clear lines are told, with all that is asked, and how many more there are', async () => {
  const line = (at: number): string => `,${at + 100}k 1% 0805 resistor,${at === 2998 ? 'about 5' : 5}\n`;
  const text = `Bag,What,Pcs\n${Array.from({ length: 3000 }, (_, at) => line(at)).join('')}`;
  const brought = await bring('long.csv', 'list', text);
  const asked = brought.rows.filter(({ doubts }) => doubts.length > 0);
  assert.deepEqual(
    asked.map(({ row }) => row),
    [3000],
  );
  assert.deepEqual(
    [brought.rows.length, brought.more, brought.moreDoubted, brought.doubts, brought.bags],
    [2001, 999, 0, asked[0]?.doubts.length, 3000],
  );
  assert.deepEqual(brought.numbers?.last, (brought.numbers?.first ?? 0) + 2999);
  const out = await tell(brought.draft, { out: [{ row: 2900, out: true }] });
  assert.ok(rowOf(out, 2900).out, 'what somebody said something of is told');
  assert.deepEqual([out.more, out.bags], [998, 2999]);
});
