import assert from 'node:assert/strict';
import { randomUUID } from 'node:crypto';
import { after, before, test } from 'node:test';
import type { DraftView } from '#api/drafts.ts';
import { bodyOf, httpLab, type HttpLab, type HttpTold } from '#test/http-lab.ts';

const LIST = 'Bag,Qty,Description\n12,40,4k7 1% 0805 resistor\n,2,10k 1% 0805 resistor\n';
const BOM = 'Reference,Value,Footprint\n"R1,R2",4k7 1%,R_0805\n';

let http: HttpLab;
before(async () => {
  http = await httpLab();
});
after(() => http.end());

const bring = (name: string, is: string, text: string): Promise<DraftView> =>
  bodyOf(http.upload(`/api/drafts?name=${name}&is=${is}`, text), 201);
const keep = (draft: string, id: string): Promise<HttpTold> => http.act(`/api/drafts/${draft}/keep`, { id });
const gone = (path: string): Promise<HttpTold['body']> => bodyOf(http.get(path), 410);

void test('a list that was kept says what it became to whoever lost the answer', async () => {
  const { draft } = await bring('shelf.csv', 'list', LIST);
  const id = randomUUID();
  assert.equal((await keep(draft, id)).status, 201);
  const { code, detail, type: _type, title: _title, status: _status, ...told } = await gone(`/api/drafts/${draft}`);
  assert.equal(code, 'draft-kept');
  assert.deepEqual(told, {
    draft,
    act: id,
    at: '2026-03-01T09:00:00.000Z',
    became: 'bags',
    bags: 2,
    pieces: 42,
    first: 12,
    last: 13,
  });
  assert.match(String(detail), /^This file was kept already: 2 bags, 12 to 13\./);
  assert.equal((await keep(draft, id)).status, 200, 'the same act is answered as ever');
  const another = await keep(draft, randomUUID());
  assert.deepEqual([another.status, another.body['code'], another.body['act']], [410, 'draft-kept', id]);
  for (const method of ['PATCH', 'DELETE']) {
    const headers = { 'content-type': 'application/json' };
    const answer = await fetch(`${http.url}/api/drafts/${draft}`, { method, headers, body: '{}' });
    assert.equal(answer.status, 410, method);
    await answer.text();
  }
  await bodyOf(http.act('/api/undo', { act: id }), 201);
  const undone = await gone(`/api/drafts/${draft}`);
  assert.match(String(undone['detail']), /was taken back since\. Bring the file again\.$/);
  assert.match(String(undone['undoneBy']), /^[0-9a-f-]{36}$/);
});

void test('a BOM that was kept names its board; what was thrown away or never there stays unknown', async () => {
  const { draft } = await bring('plover.csv', 'bom', BOM);
  assert.equal((await keep(draft, randomUUID())).status, 201);
  const told = await gone(`/api/drafts/${draft}`);
  assert.deepEqual([told['became'], told['board'], told['revision'], told['lines']], ['board', 'plover', '1', 1]);
  assert.match(String(told['detail']), /^This file was kept already: board 'plover', revision 1\./);
  const other = await http.get(`/api/drafts/${randomUUID()}`);
  assert.deepEqual([other.status, other.body['code']], [404, 'no-such-draft']);
});
