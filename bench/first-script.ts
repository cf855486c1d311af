import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { brotliCompressSync, gzipSync } from 'node:zlib';

const PAGES = fileURLToPath(new URL('../dist/web/', import.meta.url));

/** Bytes of every script that the page names itself: what must be here before anything shows. */
export function firstScript(): { readonly raw: number; readonly gzip: number; readonly brotli: number } {
  const html = readFileSync(`${PAGES}index.html`, 'utf8');
  const named = [...html.matchAll(/(?:src|href)="\.?\/?(assets\/[^"]+\.js)"/g)].map(([, path = '']) => path);
  if (named.length === 0) throw new Error('the built page names no script: npm run check builds it');
  const scripts = named.map((path) => readFileSync(PAGES + path));
  const sum = (size: (script: Buffer) => number): number => scripts.reduce((all, script) => all + size(script), 0);
  return {
    raw: sum((script) => script.length),
    gzip: sum((script) => gzipSync(script, { level: 9 }).length),
    brotli: sum((script) => brotliCompressSync(script).length),
  };
}
