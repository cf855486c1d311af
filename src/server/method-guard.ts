import type { Hono, MiddlewareHandler } from 'hono';
import { problem } from './problem.ts';

/** A path that is there, asked in a way that it does not know, is answered with the ways that it does (RFC 9110, 15.5.6). */
export function methodGuard(app: Pick<Hono, 'routes'>): MiddlewareHandler {
  return async (c, next) => {
    const allowed = methodsOf(app, c.req.path);
    if (allowed.length === 0 || allowed.includes(c.req.method)) return next();
    c.header('allow', allowed.join(', '));
    return problem(c, 'wire-method', { method: c.req.method, path: c.req.path, allowed: allowed.join(', ') });
  };
}

/** What the routes of a path take; nothing for a path that no route knows. A page is read, and nothing else. */
function methodsOf({ routes }: Pick<Hono, 'routes'>, path: string): string[] {
  const known = routes.filter((route) => route.method !== 'ALL' && fits(route.path, path)).map(({ method }) => method);
  const methods = path.startsWith('/api/') ? known : ['GET'];
  return [...new Set(methods.flatMap((method) => (method === 'GET' ? ['GET', 'HEAD', 'OPTIONS'] : [method])))];
}

function fits(pattern: string, path: string): boolean {
  const [wanted, given] = [pattern.split('/'), path.split('/')];
  return wanted.length === given.length && wanted.every((piece, at) => piece.startsWith(':') || piece === given[at]);
}
