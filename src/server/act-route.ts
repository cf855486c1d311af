import { createRoute, type z } from '@hono/zod-openapi';
import { PROBLEMS } from '#api/problem.ts';
import { json } from './json.ts';

interface ActRoute<Path extends string, Request, Body, Answer> {
  readonly path: Path;
  readonly summary: string;
  readonly request: Request;
  readonly body: Body;
  readonly answer: Answer;
}

/** A route that books one act: 201, or 200 where the same id had come before. */
export function actRoute<
  Path extends string,
  Request extends { readonly params?: z.ZodObject },
  Body extends z.ZodType,
  Answer extends z.ZodType,
>(told: ActRoute<Path, Request, Body, Answer>) {
  const { path, summary, request, body, answer } = told;
  return createRoute({
    method: 'post',
    path,
    summary,
    request: { ...request, body: { required: true, content: json(body) } },
    responses: {
      201: { description: 'done', content: json(answer) },
      200: { description: 'the same id had come before: the same act, done once', content: json(answer) },
      ...PROBLEMS,
    },
  });
}
