import assert from 'node:assert/strict';
import { randomUUID } from 'node:crypto';
import { mkdtempSync, rmSync } from 'node:fs';
import { request } from 'node:http';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { after, before, test } from 'node:test';
import { perform } from '#actions/perform.ts';
import { receive } from '#actions/receive.ts';
import { openDatabase, type Lab } from '#db/database.ts';
import { listen } from './serve.ts';
import { serveLab } from './start.ts';

const home = mkdtempSync(join(tmpdir(), 'bagatelle-server-'));
const clock = { now: () => '2026-03-01T09:00:00.000Z' };
let lab: Lab;
let url = '';
let stop = async (): Promise<void> => undefined;

/** An answer with its body; every answer of the interface is an object. */
interface Told {
  readonly status: number;
  readonly headers: Headers;
  readonly body: Readonly<Record<string, unknown>>;
}

async function ask(path: string, init: RequestInit = {}): Promise<Told> {
  const response = await fetch(url + path, init);
  return { status: response.status, headers: response.headers, body: (await response.json()) as Told['body'] }; // as: every answer is an object
}

function post(path: string, body: unknown, headers: Readonly<Record<string, string>> = {}): Promise<Told> {
  return ask(path, { method: 'POST', headers: { 'content-type': 'application/json', ...headers }, body: JSON.stringify(body) });
}

function upload(path: string, text: string): Promise<Told> {
  return ask(path, { method: 'POST', headers: { 'content-type': 'application/octet-stream' }, body: text });
}

/** A new bag with so many pieces; its number. */
async function bagOf(quantity: number, text = 'a part'): Promise<number> {
  const input = { id: randomUUID(), items: [{ quantity, part: { kind: 'other' as const, facts: {}, text } }] };
  const outcome = await perform(lab, receive, clock, { name: 'test', device: null }, input);
  assert.ok(outcome.ok);
  return outcome.value.bags[0]?.bag ?? 0;
}

before(async () => {
  lab = await openDatabase({ home });
  const served = await serveLab(lab, clock, { lan: false, port: 0 });
  assert.ok(!('fault' in served));
  [url, stop] = [served.url.replace(/\/$/, ''), served.stop];
});

after(async () => {
  await stop();
  await lab.close();
  rmSync(home, { recursive: true });
});

void test('a movement is answered 201, the same id again 200 with the same movement, another body 422', async () => {
  const bag = await bagOf(10);
  const body = { id: randomUUID(), kind: 'picked', bag, quantity: 3 };
  const first = await post('/api/movements', body);
  assert.deepEqual([first.status, first.body['delta'], first.body['onHand'], first.body['free']], [201, -3, 7, 7]);
  const again = await post('/api/movements', { ...body, id: body.id.toUpperCase() });
  assert.deepEqual([again.status, again.body], [200, first.body]);
  const other = await post('/api/movements', { ...body, quantity: 4 });
  assert.deepEqual([other.status, other.body['code']], [422, 'id-reused']);
  assert.equal((await ask(`/api/bags/${bag}`)).body['onHand'], 7);
});

void test('of two who pick the last pieces one gets them; the other is told what is there, and the way on', async () => {
  const bag = await bagOf(5);
  const pick = (more = {}): Promise<Told> =>
    post('/api/movements', { id: randomUUID(), kind: 'picked', bag, quantity: 4, ...more });
  const answers = await Promise.all([pick(), pick()]);
  assert.deepEqual(
    answers.map(({ status }) => status).toSorted((a, b) => a - b),
    [201, 409],
  );
  const refused = answers.find(({ status }) => status === 409);
  assert.deepEqual([refused?.body['code'], refused?.body['bag'], refused?.body['onHand']], ['not-enough', bag, 1]);
  assert.match(String(refused?.body['detail']), /in your hand/);
  assert.equal(refused?.headers.get('content-type'), 'application/problem+json');
  const inHand = await pick({ inHand: true });
  assert.deepEqual([inHand.status, inHand.body['onHand'], inHand.body['delta']], [201, 0, -1]);
});

void test('counted carries the total that was seen; returned and received add', async () => {
  const bag = await bagOf(10);
  const counted = await post('/api/movements', { id: randomUUID(), kind: 'counted', bag, counted: 4 });
  assert.deepEqual([counted.body['delta'], counted.body['onHand'], counted.body['counted']], [-6, 4, 4]);
  assert.equal((await post('/api/movements', { id: randomUUID(), kind: 'counted', bag })).body['field'], 'counted');
  assert.equal((await post('/api/movements', { id: randomUUID(), kind: 'counted', bag, quantity: 4 })).body['delta'], 0);
  await post('/api/movements', { id: randomUUID(), kind: 'returned', bag, quantity: 2 });
  const received = await post('/api/movements', { id: randomUUID(), kind: 'received', bag, quantity: 30 });
  assert.equal(received.body['onHand'], 36);
  const undone = await post('/api/undo', { id: randomUUID(), act: received.body['id'] });
  assert.deepEqual([undone.status, undone.body['undoes']], [201, received.body['id']]);
  const { body } = await ask(`/api/bags/${bag}`);
  const movements = body['movements'] as readonly { kind: string; onHand: number }[]; // as: the schema of a bag
  assert.deepEqual(
    movements.map((movement) => movement.onHand),
    [10, 4, 4, 6, 36, 6],
  );
});

void test('what does not fit is a problem that names its field, or the bag', async () => {
  const bag = await bagOf(1);
  const cases = [
    [{ kind: 'picked', bag, quantity: 1 }, 'id', 422],
    [{ id: randomUUID(), kind: 'picked', bag, quantity: -1 }, 'quantity', 422],
    [{ id: randomUUID(), kind: 'picked', bag, quantity: 1.5 }, 'quantity', 422],
    [{ id: randomUUID(), kind: 'stolen', bag, quantity: 1 }, 'kind', 422],
    [{ id: randomUUID(), kind: 'picked', bag, quantity: 1, quantitty: 2 }, 'body', 422],
  ] as const;
  for (const [body, field, status] of cases) {
    const told = await post('/api/movements', body);
    assert.deepEqual([told.status, told.body['field']], [status, field], JSON.stringify(body));
  }
  const none = await post('/api/movements', { id: randomUUID(), kind: 'picked', bag: 99_999, quantity: 1 });
  assert.deepEqual([none.status, none.body['bag'], none.body['type']], [404, 99_999, 'urn:bagatelle:problem:no-such-bag']);
  const garbage = await ask('/api/movements', {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: '{"id":',
  });
  assert.deepEqual([garbage.status, garbage.body['code']], [400, 'wire-json']);
  assert.equal((await ask('/api/nowhere')).status, 404);
  const large = await post('/api/movements', { note: 'x'.repeat(2 * 1024 * 1024) });
  assert.equal(large.status, 413);
});

void test("another site's page can neither change the lab nor reach it under a name of its own", async () => {
  const body = { id: randomUUID(), kind: 'picked', bag: 1, quantity: 1 };
  assert.equal((await post('/api/movements', body, { origin: 'http://elsewhere.example' })).status, 403);
  assert.equal((await post('/api/movements', body, { 'sec-fetch-site': 'cross-site' })).status, 403);
  const simple = await ask('/api/movements', {
    method: 'POST',
    headers: { 'content-type': 'text/plain' },
    body: JSON.stringify(body),
  });
  assert.equal(simple.status, 415);
  const rebound = await new Promise<number>((told) => {
    request(`${url}/api/bags`, { headers: { host: 'rebound.example' } }, (answer) => told(answer.resume().statusCode ?? 0)).end();
  });
  assert.equal(rebound, 403);
  const { headers } = await ask('/api/bags', { headers: { origin: url } });
  assert.match(headers.get('content-security-policy') ?? '', /default-src 'none'.*frame-ancestors 'none'/);
  assert.equal(headers.get('x-content-type-options'), 'nosniff');
});

void test('answers carry the change number, and any read may ask for a later one', async () => {
  const bag = await bagOf(1);
  const now = await lab.change();
  for (const path of [
    '/api/bags',
    `/api/bags/${bag}`,
    '/api/find?words=x',
    '/api/boards',
    '/api/kits',
    '/api/plan',
    '/api/acts',
  ]) {
    const { headers } = await ask(path, { headers: { 'bagatelle-at-least': String(now) } });
    assert.equal(Number(headers.get('bagatelle-change')), now, path);
    const ahead = await ask(path, { headers: { 'bagatelle-at-least': String(now + 1) } });
    assert.deepEqual([ahead.status, ahead.body['code']], [409, 'wire-change-ahead'], path);
  }
  const match = await upload('/api/match?name=owl.csv', 'Reference,Value\nR1,4k7\n');
  assert.equal(Number(match.headers.get('bagatelle-change')), now);
  assert.equal((await ask('/api/boards', { headers: { 'bagatelle-at-least': 'soon' } })).status, 422);
});

void test('a path that names no file is not there, whatever is odd about it', async () => {
  assert.equal((await ask('/%00.js')).status, 404);
  assert.equal((await ask('/no-such-file.js')).status, 404);
  assert.equal((await ask(`/${'x'.repeat(300)}.js`)).status, 404);
});

void test('the index follows what another process writes', async () => {
  const other = await openDatabase({ home });
  try {
    const input = {
      id: randomUUID(),
      items: [{ quantity: 5, part: { kind: 'other' as const, facts: {}, text: 'zanzibar spring' } }],
    };
    await perform(other, receive, clock, { name: 'test', device: null }, input);
  } finally {
    await other.close();
  }
  const { body } = await ask('/api/find?words=zanzibar');
  const found = body['found'] as readonly { text: string; onHand: number }[]; // as: the schema of find
  assert.deepEqual(
    found.map(({ text, onHand }) => [text, onHand]),
    [['zanzibar spring', 5]],
  );
});

void test('changes stream from the last one that was seen', async () => {
  await bagOf(1);
  const from = await lab.change();
  const stopped = new AbortController();
  const response = await fetch(`${url}/api/changes`, { headers: { 'last-event-id': String(from) }, signal: stopped.signal });
  assert.match(response.headers.get('content-type') ?? '', /text\/event-stream/);
  const reader = response.body?.getReader();
  const told = reader?.read();
  await bagOf(1);
  const { value } = (await told) ?? {};
  assert.match(
    Buffer.from(value ?? []).toString(),
    new RegExp(`event: change\\ndata: \\{"change":${from + 1}\\}\\nid: ${from + 1}`),
  );
  stopped.abort();
});

void test('a file is read, matched and imported; a file that is none is refused by its name', async () => {
  const text = 'Bag,Qty,Description\n801,12,3k3 1% 0603 resistor\n';
  const { body } = await upload('/api/read?name=list.csv', text);
  assert.equal((body['rows'] as readonly unknown[]).length, 1); // as: the schema of read
  const dry = await upload('/api/imports?name=list.csv&dryRun=true', text);
  assert.deepEqual([dry.status, (await ask('/api/bags/801')).status], [200, 404]);
  const address = `/api/imports?name=list.csv&id=${randomUUID()}`;
  assert.deepEqual([(await upload(address, text)).status, (await upload(address, text)).status], [201, 200]);
  const matched = await upload('/api/match?name=bom.csv&boards=4', 'Reference,Value,Footprint\n"R1,R2",3k3 1%,R_0603\n');
  assert.deepEqual(
    (matched.body['lines'] as readonly { bags: unknown }[]).map(({ bags }) => bags),
    [[{ bag: 801, take: 8 }]],
  ); // as: the schema of match
  const empty = await upload('/api/read?name=empty.csv', '');
  assert.deepEqual([empty.status, empty.body['file']], [422, 'empty.csv']);
  assert.equal((await upload('/api/match?name=bom.csv&boards=1000000000', 'x')).body['field'], 'boards');
});

void test('a kit goes from a board over its walk to its leftovers, each step once', async () => {
  await upload(`/api/imports?name=list.csv&id=${randomUUID()}`, 'Bag,Qty,Description\n811,50,5k6 1% 0805 resistor\n');
  const saved = await upload(
    `/api/boards?name=lamp.csv&id=${randomUUID()}`,
    'Reference,Value,Footprint\n"R1,R2",5k6 1%,R_0805\n',
  );
  assert.deepEqual([saved.status, saved.body['board']], [201, 'lamp']);
  const plan = await post('/api/kits', { board: 'lamp', boards: 3 });
  assert.deepEqual([plan.status, plan.body['buildable'], plan.body['proof']], [200, 3, 'optimal']);
  const wanted = { id: randomUUID(), board: 'lamp', boards: 3, reserve: true };
  const [kit, again] = [await post('/api/kits', wanted), await post('/api/kits', wanted)];
  assert.deepEqual([kit.status, again.status, again.body['build']], [201, 200, kit.body['build']]);
  assert.equal((await ask('/api/bags/811')).body['reserved'], 8);
  const more = await post('/api/movements', { id: randomUUID(), kind: 'picked', bag: 811, quantity: 45 });
  const warnings = more.body['warnings'] as readonly { code: string; text: string }[]; // as: the schema of a movement
  assert.deepEqual([more.status, warnings.map(({ code }) => code)], [201, ['promise-broken']]);
  assert.match(warnings[0]?.text ?? '', /lamp/, 'more than is free is done, and the warning names the promise');
  await post('/api/undo', { id: randomUUID(), act: more.body['id'] });
  const path = `/api/kits/${String(kit.body['build'])}`;
  const picked = await post(`${path}/picks`, { id: randomUUID() });
  assert.equal(picked.body['picked'], 8, JSON.stringify(picked.body));
  assert.equal((await post(`${path}/finish`, { id: randomUUID(), made: 2 })).body['made'], 2);
  const takes = (await ask(path)).body['takes'] as readonly { id: string; expected: number }[]; // as: the schema of a kit
  assert.deepEqual(
    takes.map(({ expected }) => expected),
    [4],
  );
  const returned = await post(`${path}/leftovers`, {
    id: randomUUID(),
    returns: takes.map(({ id, expected }) => ({ take: id, quantity: expected })),
  });
  assert.deepEqual([returned.body['returned'], (await ask('/api/bags/811')).body['onHand']], [4, 46]);
});

void test('a planned build is kept, competes, and is reserved, each once', async () => {
  await upload(`/api/imports?name=list.csv&id=${randomUUID()}`, 'Bag,Qty,Description\n821,8,6k2 1% 0805 resistor\n');
  await upload(`/api/boards?name=owl.csv&id=${randomUUID()}`, 'Reference,Value,Footprint\n"R1,R2",6k2 1%,R_0805\n');
  const wanted = { id: randomUUID(), board: 'owl', boards: 3, due: '2026-12-01', spares: false, keep: true };
  const [kept, again] = [await post('/api/kits', wanted), await post('/api/kits', wanted)];
  assert.deepEqual([kept.status, again.status, again.body['build'], kept.body['buildable']], [201, 200, kept.body['build'], 3]);
  const plan = await post('/api/kits', { board: 'owl', boards: 2, spares: false });
  const [other] = plan.body['others'] as readonly { build: string; buildable: number }[]; // as: the schema of a plan
  assert.deepEqual([plan.body['buildable'], other?.build, other?.buildable], [1, kept.body['build'], 3]);
  assert.match(JSON.stringify(plan.body['lines']), /"promised","text":"promised to owl"/);
  const first = await post('/api/kits', { board: 'owl', boards: 2, priority: 0, spares: false });
  assert.equal(first.body['buildable'], 2);
  const builds = (await ask('/api/plan')).body['builds'] as readonly { name: string; buildable: number }[]; // as: its schema
  assert.deepEqual(
    builds.map(({ name, buildable }) => [name, buildable]),
    [['owl', 3]],
  );
  const path = `/api/kits/${String(kept.body['build'])}/reserve`;
  const taking = { id: randomUUID(), spares: false };
  assert.deepEqual([(await post(path, taking)).status, (await post(path, taking)).status], [201, 200]);
  assert.deepEqual([(await ask('/api/bags/821')).body['reserved'], (await post(path, { id: randomUUID() })).status], [6, 409]);
  assert.equal((await post('/api/kits', { ...wanted, id: randomUUID(), reserve: true })).status, 422);
  assert.equal((await post('/api/kits', { ...wanted, id: randomUUID(), due: '2026-02-30' })).body['field'], 'due');
});

void test('the description names every path, and a problem for each', async () => {
  const { body } = await ask('/api/openapi.json');
  const paths = body['paths'] as Readonly<Record<string, unknown>>; // as: OpenAPI 3.1
  for (const path of [
    '/api/movements',
    '/api/undo',
    '/api/bags/{number}',
    '/api/find',
    '/api/read',
    '/api/imports',
    '/api/match',
    '/api/kits',
    '/api/kits/{build}/leftovers',
    '/api/kits/{build}/reserve',
    '/api/plan',
    '/api/boards',
    '/api/changes',
  ]) {
    assert.ok(paths[path], path);
  }
  assert.equal(body['openapi'], '3.1.0');
});

void test('a port that is taken is a fault to tell, not a throw', async () => {
  const taken = createServer();
  await new Promise<void>((ready) => void taken.listen(0, '127.0.0.1', ready));
  const address = taken.address();
  const port = typeof address === 'object' && address ? address.port : 0;
  const fault = await listen(() => new Response(), { lan: false, port });
  assert.equal('fault' in fault && fault.fault, 'port-taken');
  await new Promise((closed) => void taken.close(closed));
});

void test('a path that is there says what it takes when it is asked otherwise', async () => {
  for (const [method, path, allow] of [
    ['DELETE', '/api/bags/1', 'GET, HEAD, OPTIONS'],
    ['PUT', '/api/movements', 'POST'],
    ['DELETE', '/api/openapi.json', 'GET, HEAD, OPTIONS'],
  ] as const) {
    const told = await ask(path, { method });
    assert.deepEqual([told.status, told.body['code']], [405, 'wire-method'], path);
    assert.ok(told.headers.get('allow')?.includes(allow), `${path}: ${told.headers.get('allow')}`);
  }
  assert.equal((await ask('/api/nothing-here')).status, 404);
});

void test('a deed of the far future or before 1970 is refused by the name of its field', async () => {
  const bag = await bagOf(5);
  for (const happenedAt of ['2026-03-03T09:00:01Z', '1969-12-31T23:59:59Z']) {
    const told = await post('/api/movements', { id: randomUUID(), kind: 'picked', bag, quantity: 1, happenedAt });
    assert.deepEqual([told.status, told.body['field']], [422, 'happenedAt']);
  }
});
