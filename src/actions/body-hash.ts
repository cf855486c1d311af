import { createHash } from 'node:crypto';

/** Hash of a verb and what it was asked, whatever the order of the keys: `{a,b}` and `{b,a}` are the same body. */
export function bodyHash(verb: string, body: unknown): string {
  return createHash('sha256')
    .update(canonical([verb, body]))
    .digest('hex');
}

/** JSON with its keys in order and without keys that hold nothing. */
export function canonical(value: unknown): string {
  return JSON.stringify(value, (_key, held: unknown) => {
    if (held === null || typeof held !== 'object' || Array.isArray(held)) return held;
    return Object.fromEntries(Object.entries(held).toSorted(([a], [b]) => (a < b ? -1 : 1)));
  });
}
