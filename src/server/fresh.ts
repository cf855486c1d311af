import type { MiddlewareHandler } from 'hono';
import type { Lab } from '#db/database.ts';
import { problem } from './problem.ts';
import { AT_LEAST_HEADER, CHANGE_HEADER } from './served.ts';

const NUMBER = /^\d{1,15}$/;

/**
 * Every answer carries a change number that it knows of at least: the lab's, as it was before the answer was made, unless the
 * route says a later one. Whoever asks for at least n is told where the lab is not that far.
 */
export function changeNumber(lab: Lab): MiddlewareHandler {
  return async (c, next) => {
    const wanted = c.req.header(AT_LEAST_HEADER) ?? '0';
    if (!NUMBER.test(wanted)) return problem(c, 'wire-field', { field: AT_LEAST_HEADER, expected: 'a change number' });
    const have = await lab.change();
    c.header(CHANGE_HEADER, String(have));
    const asked = Number(wanted);
    if (asked > have) return problem(c, 'wire-change-ahead', { asked, have });
    await next();
    return undefined;
  };
}
