import assert from 'node:assert/strict';
import { createHash } from 'node:crypto';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { after, test } from 'node:test';
import { brotliCompressSync, brotliDecompressSync, gunzipSync, gzipSync } from 'node:zlib';
import { Hono } from 'hono';
import { WIDGET_STYLES } from './guard.ts';
import { pages } from './pages.ts';

const folder = mkdtempSync(join(tmpdir(), 'bagatelle-pages-'));
const script = 'export const bag = 12;\n'.repeat(100);
mkdirSync(join(folder, 'assets'));
writeFileSync(join(folder, 'index.html'), '<!doctype html>');
writeFileSync(join(folder, 'assets', 'a-1.js'), script);
writeFileSync(join(folder, 'assets', 'a-1.js.br'), brotliCompressSync(script));
writeFileSync(join(folder, 'assets', 'a-1.js.gz'), gzipSync(script));
writeFileSync(join(folder, 'assets', 'b-1.js'), script);
writeFileSync(join(folder, 'assets', 'b-1.js.gz'), gzipSync(script));
after(() => rmSync(folder, { recursive: true }));

const app = new Hono().use(pages(folder));

async function got(path: string, accepted?: string): Promise<{ encoding: string | null; text: string; headers: Headers }> {
  const answer = await app.request(path, accepted === undefined ? {} : { headers: { 'accept-encoding': accepted } });
  assert.equal(answer.status, 200);
  const bytes = Buffer.from(await answer.arrayBuffer());
  const encoding = answer.headers.get('content-encoding');
  const plain = encoding === 'br' ? brotliDecompressSync(bytes) : encoding === 'gzip' ? gunzipSync(bytes) : bytes;
  return { encoding, text: plain.toString(), headers: answer.headers };
}

void test('a file is sent as small as the browser takes it, and is the same file', async () => {
  for (const [path, accepted, encoding] of [
    ['/assets/a-1.js', undefined, null],
    ['/assets/a-1.js', 'identity', null],
    ['/assets/a-1.js', 'gzip, deflate, br, zstd', 'br'],
    ['/assets/a-1.js', 'gzip, deflate', 'gzip'],
    ['/assets/a-1.js', 'br;q=0, gzip;q=0.5', 'gzip'],
    ['/assets/a-1.js', 'br; q=0.0, GZIP;q=0', null],
    ['/assets/a-1.js', 'brotli', null],
    ['/assets/b-1.js', 'br, gzip', 'gzip'],
  ] as const) {
    const { headers, ...file } = await got(path, accepted);
    assert.deepEqual(file, { encoding, text: script }, `${path} ${accepted}`);
    assert.equal(headers.get('vary'), 'accept-encoding');
    assert.equal(headers.get('content-type'), 'text/javascript; charset=utf-8');
    assert.equal(headers.get('cache-control'), 'public, max-age=31536000, immutable');
  }
  const { headers, encoding } = await got('/boards/owl', 'br, gzip');
  assert.deepEqual([headers.get('cache-control'), encoding], ['no-cache', null], 'the page itself is asked for each time');
});

void test('an address of the page is answered with the page whatever its name holds; a file that is missing is not', async () => {
  const asked = async (path: string, accept: string): Promise<readonly [status: number, html: boolean]> => {
    const answer = await app.request(path, { headers: { accept } });
    return [answer.status, (await answer.text()).startsWith('<!doctype html>')];
  };
  const page = 'text/html,application/xhtml+xml,application/xml;q=0.9,*/*;q=0.8';
  for (const path of [
    '/boards/logger%20v1.2',
    '/boards/a.b/lines/3',
    '/boards/x%2Fy.z',
    '/boards/..%2F..%2Fetc',
    '/',
    '/index.html',
  ])
    assert.deepEqual(await asked(path, page), [200, true], path);
  for (const path of ['/assets/gone-1.js', '/assets/gone', '/api/nothing', '/api/nothing.json'])
    assert.deepEqual(await asked(path, page), [404, false], path);
  for (const [path, accept] of [
    ['/gone.png', 'image/png,*/*;q=0.8'],
    ['/gone.webmanifest', '*/*'],
    ['/gone.json', 'text/html;q=0, application/json'],
  ] as const)
    assert.deepEqual(await asked(path, accept), [404, false], path);
  assert.deepEqual(await asked('/boards/owl', '*/*'), [200, true]);
  assert.deepEqual(await asked('/assets/a-1.js', page), [200, false]);
});

void test('the sheets that the widgets add by script are those that the content policy lets in', () => {
  const found = ['interactions/usePress.mjs', 'overlays/usePreventScroll.mjs'].map((file) => {
    const code = readFileSync(join(import.meta.dirname, '../../node_modules/react-aria/dist/private', file), 'utf8');
    const attribute = /PRESSABLE_ATTRIBUTE = '([a-z-]+)'/.exec(code)?.[1] ?? '';
    const text = /style\.textContent = `([^`]*)`/.exec(code)?.[1]?.replaceAll(/\$\{[^}]*PRESSABLE_ATTRIBUTE\}/g, attribute) ?? '';
    return createHash('sha256').update(text.trim()).digest('base64');
  });
  assert.deepEqual(found, WIDGET_STYLES);
});
