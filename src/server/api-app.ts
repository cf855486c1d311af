import { OpenAPIHono, type z } from '@hono/zod-openapi';
import { sayWanted } from '#say/en/wanted.ts';
import { problem } from './problem.ts';

/** A group of routes; a body or a parameter that does not fit is answered by the name of its field. */
export function apiApp(): OpenAPIHono {
  return new OpenAPIHono({
    defaultHook: (result, c) => {
      if (result.success) return undefined;
      const issue = tightest(result.error.issues);
      const field = issue?.path.join('.') || 'body';
      return problem(c, 'wire-field', { field, expected: issue ? sayWanted(issue) : 'another value' });
    },
  });
}

type Issue = z.core.$ZodIssue;

/** The first trouble; of several about the size of one number, that of the narrowest bound: what a computer can hold is nobody's wish. */
function tightest(issues: readonly Issue[]): Issue | undefined {
  const [first] = issues;
  if (first?.code !== 'too_big' && first?.code !== 'too_small') return first;
  const same = issues.filter(({ code, path }) => code === first.code && path.join('.') === first.path.join('.'));
  return same.at(-1);
}
