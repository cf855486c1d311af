import type { Context } from 'hono';
import { problem, type ProblemAnswer } from './problem.ts';
import { AT_LEAST_HEADER, CHANGE_HEADER } from './served.ts';

/** Puts the change number of what is being answered into the header; a problem where the caller knows of a later one. */
export function atChange(c: Context, have: number): ProblemAnswer | null {
  c.header(CHANGE_HEADER, String(have));
  const asked = Number(c.req.header(AT_LEAST_HEADER) ?? 0);
  return asked > have ? problem(c, 'wire-change-ahead', { asked, have }) : null;
}
