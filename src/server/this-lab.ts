import type { MiddlewareHandler } from 'hono';
import type { Lab } from '#db/database.ts';
import { readLabId } from '#db/setting.ts';
import { problem } from './problem.ts';
import { LAB_HEADER } from './served.ts';

/** What makes another lab of this one. Each fills an empty lab or clears a demo, by an id of its own, and a second try must be answered. */
const MAKES_ANOTHER = new Set(['/api/lab/demo', '/api/lab/clear', '/api/lab/restore']);
const READS = new Set(['GET', 'HEAD', 'OPTIONS']);

/**
 * Every answer says which lab gave it. An act that is meant for another is refused: a page that was open while the lab was cleared
 * or restored shows bags that are not these.
 */
export function thisLab(lab: Lab): MiddlewareHandler {
  return async (c, next) => {
    const here = await lab.read(readLabId);
    c.header(LAB_HEADER, here);
    const another = MAKES_ANOTHER.has(c.req.path);
    const meant = c.req.header(LAB_HEADER)?.toLowerCase() ?? here;
    if (meant !== here && !another && !READS.has(c.req.method)) return problem(c, 'wire-other-lab');
    await next();
    if (another) c.res.headers.set(LAB_HEADER, await lab.read(readLabId));
    return undefined;
  };
}
