import type { Context, MiddlewareHandler } from 'hono';
import { bodyLimit } from 'hono/body-limit';
import { hostName, isLoopbackName } from './here.ts';
import type { Network } from './network.ts';
import { problem } from './problem.ts';

const READS = new Set(['GET', 'HEAD', 'OPTIONS']);
const JSON_TYPE = /^application\/(?:[a-z.+-]+\+)?json\b/i;
/** Neither type can be sent by another site's page without asking first (Fetch Standard, CORS-safelisted content types). */
const FILE_TYPE = 'application/octet-stream';
const MEGABYTE = 1024 * 1024;
const MOST_JSON = MEGABYTE;
const MOST_FILE = 64 * MEGABYTE;
/** A backup is written to the disk as it comes, and read from there line by line. */
const MOST_BACKUP = 2048 * MEGABYTE;

/**
 * The two sheets that the package of widgets adds to a page by script, by the SHA-256 of what they say (CSP Level 3, 6.7.2): for
 * fingers on what can be pressed, and for a page that must not scroll behind a dialogue. No other inline style is let in.
 */
export const WIDGET_STYLES = ['38RhXrc7EdReTKsOm23ZPOCUgniTUUcjky8QOOrQx6o=', 'gYiS/BvZvRcK27JIXTuwhZ3hs2+VJ1X+2gUlE+farlg='];
const styles = ["'self'", ...WIDGET_STYLES.map((hash) => `'sha256-${hash}'`)].join(' ');

const HEADERS = {
  'content-security-policy': `default-src 'none'; script-src 'self'; style-src ${styles}; img-src 'self' data:; font-src 'self'; connect-src 'self'; manifest-src 'self'; worker-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'`,
  'x-content-type-options': 'nosniff',
  'x-frame-options': 'DENY',
  'referrer-policy': 'no-referrer',
  'cross-origin-resource-policy': 'same-origin',
  'permissions-policy': 'camera=(self), microphone=(), geolocation=(), payment=()',
};

/** Browsers heed it only from an address that they trust; over the network by plain http they would complain of it on each page. */
const OPENER = 'cross-origin-opener-policy';

/** Headers that keep a page to what this server itself serves. */
export const securityHeaders: MiddlewareHandler = async (c, next) => {
  await next();
  for (const [name, value] of Object.entries(HEADERS)) c.res.headers.set(name, value);
  if (isLoopbackName(c.req.header('host') ?? '')) c.res.headers.set(OPENER, 'same-origin');
  if (c.req.path.startsWith('/api/') && !c.res.headers.has('cache-control')) c.res.headers.set('cache-control', 'no-store');
};

/** Only names that this lab goes by: a foreign name that points here (DNS rebinding) is refused. */
export function hostGuard(network: Network | null): MiddlewareHandler {
  return async (c, next) => {
    const host = c.req.header('host') ?? '';
    if (!isLoopbackName(host) && !network?.knows(hostName(host))) return problem(c, 'wire-host', { host });
    await next();
    return undefined;
  };
}

/** Above the longest name that an address can hold, board and revision both; a file's name stands behind the `?`. */
const MOST_PATH = 1000;

/** A path that no route can mean is not looked up, nor said back. */
export const addressGuard: MiddlewareHandler = (c, next) => {
  const { path } = c.req;
  if (!path.startsWith('/api/') || decoded(path).length <= MOST_PATH) return next();
  return Promise.resolve(problem(c, 'wire-address-too-long'));
};

function decoded(path: string): string {
  try {
    return decodeURIComponent(path);
  } catch {
    return path;
  }
}

/** A change comes from this lab's own page or from a program, never from another site's page (CSRF). */
export const originGuard: MiddlewareHandler = async (c, next) => {
  if (READS.has(c.req.method)) return next();
  const origin = c.req.header('origin');
  const host = c.req.header('host') ?? '';
  const site = c.req.header('sec-fetch-site');
  if (origin !== undefined && origin !== `http://${host}` && origin !== `https://${host}`)
    return problem(c, 'wire-origin', { origin });
  if (site !== undefined && site !== 'same-origin' && site !== 'none')
    return problem(c, 'wire-origin', { origin: origin ?? site });
  const type = c.req.header('content-type') ?? '';
  if (JSON_TYPE.test(type) || type.startsWith(FILE_TYPE)) return next();
  return problem(c, 'wire-type', { received: type || '–', expected: `application/json, or ${FILE_TYPE} for a file` });
};

/** What may be sent at once: a file 64 MiB, a backup 2 GiB, anything else 1 MiB. The rest of a body that is too large is not waited for. */
export const sizeGuard: MiddlewareHandler = (c, next) => {
  const file = (c.req.header('content-type') ?? '').startsWith(FILE_TYPE);
  const most = file ? (c.req.path === '/api/lab/restore' ? MOST_BACKUP : MOST_FILE) : MOST_JSON;
  const onError = (over: Context): Response => {
    over.header('connection', 'close');
    return problem(over, 'wire-too-large', { path: over.req.path, most });
  };
  return bodyLimit({ maxSize: most, onError })(c, next);
};
