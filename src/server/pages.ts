import { readFile } from 'node:fs/promises';
import { extname, join, normalize, sep } from 'node:path';
import type { MiddlewareHandler } from 'hono';
import { NO_PAGES } from '#say/en/screens.ts';

const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json',
  '.webmanifest': 'application/manifest+json',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.ico': 'image/x-icon',
  '.woff2': 'font/woff2',
  '.txt': 'text/plain; charset=utf-8',
};

/** What a path is that names no file: any other trouble is one of the disk, or ours. */
const NOT_THERE = new Set(['ENOENT', 'ENOTDIR', 'EISDIR', 'ENAMETOOLONG']);

async function fileIn(folder: string, path: string): Promise<Buffer<ArrayBuffer> | null> {
  const file = normalize(join(folder, path));
  if (!file.startsWith(folder + sep) || file.includes('\0')) return null;
  return readFile(file).catch((error: unknown) => {
    if (error instanceof Error && 'code' in error && NOT_THERE.has(String(error.code))) return null;
    throw error;
  });
}

function decoded(path: string): string {
  try {
    return decodeURIComponent(path);
  } catch {
    return '/';
  }
}

/** The built pages; an address without a dot is a place inside the one page. */
export function pages(folder: string): MiddlewareHandler {
  return async (c, next) => {
    if (c.req.path.startsWith('/api/') || !['GET', 'HEAD'].includes(c.req.method)) return next();
    const path = decoded(c.req.path);
    const place = extname(path) === '' ? '/index.html' : path;
    const bytes = await fileIn(folder, place);
    if (!bytes && place === '/index.html') return c.text(NO_PAGES, 503);
    if (!bytes) return next();
    const lasting = place.startsWith('/assets/') ? 'public, max-age=31536000, immutable' : 'no-cache';
    return c.body(bytes, 200, { 'content-type': TYPES[extname(place)] ?? 'application/octet-stream', 'cache-control': lasting });
  };
}
