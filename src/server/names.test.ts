import assert from 'node:assert/strict';
import { randomUUID } from 'node:crypto';
import { after, before, test } from 'node:test';
import type { DraftView } from '#api/drafts.ts';
import { bodyOf, httpLab, type HttpLab, type HttpTold } from '#test/http-lab.ts';

/** What nobody can see, type or open as an address. */
const BAD = [
  '.',
  '..',
  ' .. ',
  'a\u0007b',
  'a\nb',
  'evil\u202Egpj',
  'x\u2066y',
  '\u200B',
  '\u200B \uFEFF',
  '\u3164',
  '\u2800',
  '\uD800x',
];
/** Strange, but a name. */
const GOOD = ['logger v1.2', '...', 'µ', '夜', 'می\u200Cخواهم', '👩\u200D🔧'];
const BOM = 'Reference,Value,Footprint\n"R1,R2",4k7 1%,R_0805\n';

let http: HttpLab;
before(async () => {
  http = await httpLab();
  await bodyOf(http.upload(`/api/boards?name=owl.csv&id=${randomUUID()}`, BOM), 201);
});
after(() => http.end());

const enc = encodeURIComponent;
/** A lone surrogate can't stand in an address. */
const sendable = BAD.filter((name) => name.isWellFormed());

async function refused(told: Promise<HttpTold>, field: string, name: string): Promise<void> {
  const { status, body } = await told;
  assert.deepEqual([status, body['field']], [422, field], `${field} ${JSON.stringify(name)}: ${JSON.stringify(body)}`);
  const detail = String(body['detail']);
  assert.match(detail, /must be a name that can be seen and typed, not a dot or two alone/);
  assert.doesNotMatch(detail, /regex|[\p{Cc}\u200B\u202E\u2066\uFEFF]/u);
}

void test('a board, a revision and a build have names that can be seen and typed', async () => {
  for (const name of sendable) {
    const board = (more: string): Promise<HttpTold> => http.upload(`/api/boards?name=x.csv&id=${randomUUID()}&${more}`, BOM);
    await refused(board(`board=${enc(name)}`), 'board', name);
    await refused(board(`board=owl&revision=${enc(name)}`), 'revision', name);
  }
  for (const name of BAD)
    for (const how of [{ keep: true }, { reserve: true }])
      await refused(http.act('/api/kits', { board: 'owl', boards: 1, name, anyway: true, ...how }), 'name', name);
  const file = await http.upload(`/api/boards?name=...csv&id=${randomUUID()}`, BOM);
  assert.deepEqual([file.status, file.body['field']], [422, 'board']);
  for (const name of GOOD) {
    const kept = await http.upload(`/api/boards?name=x.csv&id=${randomUUID()}&board=${enc(name)}&revision=${enc(name)}`, BOM);
    assert.equal(kept.status, 201, name);
    assert.equal((await http.get(`/api/boards/${enc(name)}/lines`)).status, 200, name);
    assert.equal((await http.act('/api/kits', { board: 'owl', boards: 1, name, keep: true })).status, 201, name);
  }
});

void test('a bag, its box and its place can be read', async () => {
  for (const name of BAD) {
    const bag = (more: object): Promise<HttpTold> => http.act('/api/bags', { says: '4k7 1% 0805', quantity: 3, ...more });
    await refused(bag({ box: name }), 'box', name);
    await refused(bag({ place: name }), 'place', name);
    await refused(bag({ says: name }), 'says', name);
  }
  for (const name of sendable)
    await refused(
      http.upload(`/api/imports?name=a.csv&id=${randomUUID()}&box=${enc(name)}`, 'Qty,Description\n3,4k7 1% 0805 resistor\n'),
      'box',
      name,
    );
  for (const name of GOOD)
    assert.equal((await http.act('/api/bags', { says: '4k7 1% 0805', quantity: 3, box: name, place: name })).status, 201, name);
});

void test('what is told of a draft is a name too', async () => {
  const { draft } = await bodyOf<DraftView>(http.upload('/api/drafts?name=x.csv&is=bom', BOM), 201);
  const tell = async (change: object): Promise<HttpTold> => {
    const headers = { 'content-type': 'application/json' };
    const answer = await fetch(`${http.url}/api/drafts/${draft}`, { method: 'PATCH', headers, body: JSON.stringify(change) });
    return { status: answer.status, headers: answer.headers, body: (await answer.json()) as HttpTold['body'] }; // as: every answer is an object
  };
  for (const name of BAD) for (const field of ['board', 'revision', 'box']) await refused(tell({ [field]: name }), field, name);
  assert.equal((await tell({ board: 'logger v1.2', revision: null, box: null })).status, 200);
});

void test('a device is known by a name that can be read, and a bad one uses no code up', async () => {
  for (const name of BAD.filter((one) => one.trim() !== ''))
    await refused(http.act('/api/pair', { code: 'AAAAAAAAAA', name }), 'name', name);
  assert.equal((await http.act('/api/pair', { code: 'AAAAAAAAAA', name: 'Ada’s phone' })).body['code'], 'wire-code');
});
