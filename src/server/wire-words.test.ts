import assert from 'node:assert/strict';
import { randomUUID } from 'node:crypto';
import { after, before, test } from 'node:test';
import { httpLab, type HttpLab, type HttpTold } from '#test/http-lab.ts';

let http: HttpLab;
before(async () => {
  http = await httpLab();
  await http.upload(`/api/imports?name=bags.csv&id=${randomUUID()}`, 'Bag,Qty,Description\n16,205,4k7 1% 0805 resistor\n');
});
after(() => http.end());

const said = async (told: Promise<HttpTold>): Promise<readonly [status: number, code: unknown, detail: string]> => {
  const { status, body } = await told;
  return [status, body['code'], String(body['detail'])];
};

void test('a kind that is not known is told by the kinds that there are', async () => {
  for (const body of [
    { kind: 'eaten', bag: 16, quantity: 1 },
    { bag: 16, quantity: 1 },
  ])
    assert.deepEqual(await said(http.act('/api/movements', body)), [
      422,
      'wire-field',
      "The field 'kind' is not right: it must be one of picked, returned, received, counted.",
    ]);
});

void test('a number that is too large is told by what is taken, whatever a computer could hold', async () => {
  const detail = async (body: object): Promise<string> =>
    (await said(http.act('/api/movements', { kind: 'picked', bag: 16, ...body })))[2];
  for (const quantity of [1_000_000_001, 1e16, 1e300]) assert.match(await detail({ quantity }), /must be at most 1000000000\.$/);
  assert.match(await detail({ quantity: 1, bag: 1e16 }), /must be at most 1000000\.$/);
  assert.match(await detail({ quantity: -1e16 }), /'quantity' is not right: it must be (?:more than 0|at least 1)\.$/);
});

void test('a number in an address is written in figures', async () => {
  for (const path of [
    '/api/bags/0x10',
    '/api/bags/1.6e1',
    '/api/bags/%2016',
    '/api/bags/16.0',
    '/api/find?words=4k7&limit=1e2',
    '/api/acts?limit=0x10',
    '/api/acts?before=-1',
    '/api/boards/owl/lines/0x1',
    '/api/boards/owl/lines?boards=1e1',
    '/api/changes?since=1e0',
  ]) {
    const [status, code, detail] = await said(http.get(path));
    assert.deepEqual([status, code], [422, 'wire-field'], path);
    assert.match(detail, /must be a whole number in figures, such as 12\.$/, path);
  }
  for (const path of ['/api/bags/16', '/api/bags/016', '/api/find?words=4k7&limit=100', '/api/acts?limit=16&before=3'])
    assert.equal((await http.get(path)).status, 200, path);
  assert.deepEqual(await said(http.get('/api/bags/99999999999')), [404, 'no-such-bag', 'There is no bag 99999999999.']);
  assert.match((await said(http.get('/api/bags/0')))[2], /at least 1/);
  assert.match((await said(http.get('/api/acts?limit=5000')))[2], /at most 1000/);
});

void test('what is not there is told in words, however its address is written', async () => {
  assert.deepEqual(await said(http.get('/api/kits/abc')), [404, 'no-such-build', "There is no build 'abc'."]);
  assert.equal((await http.act('/api/kits/abc/finish', {})).body['code'], 'no-such-build');
  const long = 'a'.repeat(4000);
  for (const path of [
    `/api/kits/${long}`,
    `/api/boards/${long}/lines`,
    `/api/drafts/${long}`,
    `/api/bags/${long}`,
    `/api/${long}`,
  ])
    assert.deepEqual(await said(http.get(path)), [
      414,
      'wire-address-too-long',
      'This address is longer than any that the lab has. Was it cut or pasted wrongly? Start from the page of the lab.',
    ]);
});
