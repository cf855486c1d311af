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

/** What the build wrote beside a file, the smallest first (`vite.config.ts`). */
const ENCODINGS = [
  ['br', '.br'],
  ['gzip', '.gz'],
] as const;

interface Found {
  readonly bytes: Buffer<ArrayBuffer>;
  readonly encoding: string | null;
}

/** The file as small as the browser takes it. */
async function pressedIn(folder: string, path: string, accepted: string): Promise<Found | null> {
  const bytes = await fileIn(folder, path);
  if (!bytes) return null;
  for (const [encoding, ending] of ENCODINGS) {
    if (!takes(accepted, encoding)) continue;
    const pressed = await fileIn(folder, path + ending);
    if (pressed) return { bytes: pressed, encoding };
  }
  return { bytes, encoding: null };
}

/** RFC 9110, 12.5.3: a weight of 0 is a no. */
function takes(accepted: string, encoding: string): boolean {
  return accepted.split(',').some((one) => {
    const [name = '', ...more] = one.split(';').map((piece) => piece.trim().toLowerCase());
    return name === encoding && !more.some((piece) => /^q=0(?:\.0*)?$/.test(piece));
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
    const found = await pressedIn(folder, place, c.req.header('accept-encoding') ?? '');
    if (!found && place === '/index.html') return c.text(NO_PAGES, 503);
    if (!found) return next();
    c.header('vary', 'accept-encoding');
    if (found.encoding) c.header('content-encoding', found.encoding);
    const lasting = place.startsWith('/assets/') ? 'public, max-age=31536000, immutable' : 'no-cache';
    const type = TYPES[extname(place)] ?? 'application/octet-stream';
    return c.body(found.bytes, 200, { 'content-type': type, 'cache-control': lasting });
  };
}
