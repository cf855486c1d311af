import { OpenAPIHono } from '@hono/zod-openapi';
import { sayWanted } from '#say/en/wanted.ts';
import { problem } from './problem.ts';

/** A group of routes; a body or a parameter that does not fit is answered by the name of its field. */
export function apiApp(): OpenAPIHono {
  return new OpenAPIHono({
    defaultHook: (result, c) => {
      if (result.success) return undefined;
      const issue = result.error.issues[0];
      const field = issue?.path.join('.') || 'body';
      return problem(c, 'wire-field', { field, expected: issue ? sayWanted(issue) : 'another value' });
    },
  });
}
