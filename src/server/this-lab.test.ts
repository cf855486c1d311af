import assert from 'node:assert/strict';
import { randomUUID } from 'node:crypto';
import { test } from 'node:test';
import { httpLab, type HttpLab, type HttpTold } from '#test/http-lab.ts';

const LIST = 'Bag,Qty,Description\n1,40,4k7 1% 0805 resistor\n';

async function send(http: HttpLab, path: string, body: object | string, lab?: string): Promise<HttpTold> {
  const file = typeof body === 'string';
  const response = await fetch(http.url + path, {
    method: 'POST',
    headers: {
      'content-type': file ? 'application/octet-stream' : 'application/json',
      ...(lab !== undefined && { 'bagatelle-lab': lab }),
    },
    body: file ? body : JSON.stringify({ id: randomUUID(), ...body }),
  });
  return { status: response.status, headers: response.headers, body: (await response.json()) as HttpTold['body'] }; // as: every answer is an object
}

const labOf = (told: HttpTold): string => told.headers.get('bagatelle-lab') ?? '';
const PICK = { kind: 'picked', bag: 1, quantity: 3 };

void test('every answer names its lab; what is meant for another lab is refused', async () => {
  const http = await httpLab();
  const lab = labOf(await http.get('/api/bags'));
  assert.match(lab, /^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$/);
  assert.equal(labOf(await http.get('/api/bags/9')), lab, 'a refusal names it too');
  assert.equal((await send(http, `/api/imports?name=a.csv&id=${randomUUID()}`, LIST, lab)).status, 201);
  const other = await send(http, '/api/movements', PICK, randomUUID());
  assert.deepEqual(
    [other.status, other.body['code'], other.body['detail'], labOf(other)],
    [409, 'wire-other-lab', 'Another lab stands here now; load the page again.', lab],
  );
  assert.equal((await http.get('/api/bags/1')).body['onHand'], 40);
  for (const meant of [lab, lab.toUpperCase(), undefined])
    assert.equal((await send(http, '/api/movements', PICK, meant)).status, 201);
  const read = await fetch(`${http.url}/api/bags`, { headers: { 'bagatelle-lab': randomUUID() } });
  assert.deepEqual([read.status, read.headers.get('bagatelle-lab')], [200, lab]);
  await read.text();
  await http.end();
});

void test('a lab that was filled at once or cleared is another one, and its makers are answered again', async () => {
  const http = await httpLab();
  const empty = labOf(await http.get('/api/lab'));
  const demo = { id: randomUUID() };
  const filled = await send(http, '/api/lab/demo', demo, empty);
  assert.equal(filled.status, 201);
  assert.notEqual(labOf(filled), empty);
  const again = await send(http, '/api/lab/demo', demo, empty);
  assert.deepEqual([again.status, labOf(again)], [200, labOf(filled)]);
  const clear = { id: randomUUID() };
  const cleared = await send(http, '/api/lab/clear', clear, labOf(filled));
  assert.equal(cleared.status, 201);
  assert.equal(new Set([empty, labOf(filled), labOf(cleared)]).size, 3);
  assert.equal((await send(http, '/api/lab/clear', clear, labOf(filled))).status, 200);
  const late = await send(http, '/api/movements', PICK, labOf(filled));
  assert.equal(late.body['code'], 'wire-other-lab');
  assert.equal(labOf(await http.get('/api/lab')), labOf(cleared));
  await http.end();
});
