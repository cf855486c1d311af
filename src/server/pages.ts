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

const PAGE = '/index.html';

/** Whether a browser asks for a page to show: it names HTML. A program that takes anything gets it where the address names no file. */
function wantsPage(path: string, accepted: string): boolean {
  if (path.startsWith('/assets/')) return false;
  return takes(accepted, 'text/html') || (extname(path) === '' && (accepted === '' || takes(accepted, '*/*')));
}

/** The built pages: a file of the folder, else an address is a place inside the one page, whatever stands in its name. */
export function pages(folder: string): MiddlewareHandler {
  return async (c, next) => {
    if (c.req.path.startsWith('/api/') || !['GET', 'HEAD'].includes(c.req.method)) return next();
    const path = decoded(c.req.path);
    const pressed = c.req.header('accept-encoding') ?? '';
    const file = path === '/' ? null : await pressedIn(folder, path, pressed);
    const shows = !file && wantsPage(path, c.req.header('accept') ?? '');
    const found = shows ? await pressedIn(folder, PAGE, pressed) : file;
    if (!found) return shows ? c.text(NO_PAGES, 503) : next();
    c.header('vary', shows ? 'accept-encoding, accept' : 'accept-encoding');
    if (found.encoding) c.header('content-encoding', found.encoding);
    const lasting = path.startsWith('/assets/') ? 'public, max-age=31536000, immutable' : 'no-cache';
    const type = TYPES[extname(shows ? PAGE : path)] ?? 'application/octet-stream';
    return c.body(found.bytes, 200, { 'content-type': type, 'cache-control': lasting });
  };
}
