import { count } from './count.ts';

/** What a schema says of a value that does not fit; the shape of its issues, of which only this is read. */
interface Issue {
  readonly code?: string | undefined;
  readonly expected?: unknown;
  readonly format?: unknown;
  readonly values?: readonly unknown[];
  readonly minimum?: unknown;
  readonly maximum?: unknown;
  readonly keys?: readonly string[];
  readonly inclusive?: boolean | undefined;
  readonly origin?: unknown;
  /** of a choice by one field: what it can be */
  readonly options?: readonly unknown[] | undefined;
  readonly message: string;
}

const TYPES: Readonly<Record<string, string>> = {
  string: 'a text',
  number: 'a number',
  int: 'a whole number',
  boolean: 'true or false',
  object: 'a JSON object',
  array: 'a list',
};

const FORMATS: Readonly<Record<string, string>> = {
  guid: 'a UUID',
  uuid: 'a UUID',
  date: 'a date as YYYY-MM-DD',
  datetime: 'an instant with its zone, as 2026-03-01T09:00:00Z',
  safeint: 'a whole number',
};

/** Wants that a schema of ours names by a code word. */
const NAMED: Readonly<Record<string, string>> = { figures: 'a whole number in figures, such as 12' };

/** What is wanted in place of a value, in words that fit after 'must be': `{code: 'invalid_type', expected: 'string'}` → `a text`. */
export function sayWanted(issue: Issue): string {
  const named = NAMED[issue.message];
  if (named !== undefined) return named;
  if (issue.code === 'invalid_type') return TYPES[String(issue.expected)] ?? String(issue.expected);
  if (issue.code === 'invalid_format') return FORMATS[String(issue.format)] ?? 'written in another way';
  if (issue.code === 'invalid_value') return `one of ${(issue.values ?? []).join(', ')}`;
  if (issue.code === 'invalid_key') return 'named in another way';
  if (issue.code === 'invalid_union') return issue.options ? `one of ${issue.options.join(', ')}` : 'another value';
  if (issue.code === 'too_small')
    return `${issue.inclusive === false ? 'more than' : 'at least'} ${amount(issue, issue.minimum)}`;
  if (issue.code === 'too_big') return `${issue.inclusive === false ? 'less than' : 'at most'} ${amount(issue, issue.maximum)}`;
  if (issue.code === 'unrecognized_keys') return `without '${(issue.keys ?? []).join("', '")}', which is not known here`;
  return issue.message;
}

function amount({ origin }: Issue, limit: unknown): string {
  const number = String(limit);
  return origin === 'string' ? count(number, 'character') : origin === 'array' ? count(number, 'item') : number;
}
