import type { Context, TypedResponse } from 'hono';
import { HTTPException } from 'hono/http-exception';
import { STATUS, type Problem, type ProblemCode } from '#api/problem.ts';
import { diskTrouble } from '#db/disk-trouble.ts';
import { Refused } from '#db/refused.ts';
import type { Refusal, RefusalCode } from '#core/stock/refusal.ts';
import { refusalText } from '#say/en/refusals.ts';
import { wireText } from '#say/en/screens.ts';

type ProblemStatus = (typeof STATUS)[ProblemCode];
export type ProblemAnswer = Response & TypedResponse<Problem, ProblemStatus, 'json'>;

/** The one way in which this server answers with a failure: problem details (RFC 9457). */
export function problem(c: Context, code: ProblemCode, args: Refusal['args'] = {}): ProblemAnswer {
  const status = STATUS[code];
  const detail = isWire(code) ? wireText(code, args) : refusalText({ code, args });
  const body = { ...args, type: `urn:bagatelle:problem:${code}`, title: code.replaceAll('-', ' '), status, detail, code };
  return c.json(body, status, { 'content-type': 'application/problem+json' });
}

/** A refusal of an action, as it crosses the wire. */
export function refusal(c: Context, { code, args }: Refusal): ProblemAnswer {
  return problem(c, code, args);
}

function isWire(code: ProblemCode): code is Exclude<ProblemCode, RefusalCode> {
  return code.startsWith('wire-');
}

/** Turns what was thrown into a problem: our own faults are logged in full and answered without details. */
export function onError(thrown: Error, c: Context): Response {
  const error = diskTrouble(thrown);
  if (error instanceof Refused) return refusal(c, error.refusal);
  if (error instanceof HTTPException && error.status < 500) {
    if (error.status === 413) return problem(c, 'wire-too-large', { path: c.req.path });
    return problem(c, 'wire-json', { path: c.req.path });
  }
  process.stderr.write(`bagatelle: fault at ${c.req.method} ${c.req.path}: ${thrown.stack ?? thrown.message}\n`);
  return problem(c, 'wire-fault', {});
}
