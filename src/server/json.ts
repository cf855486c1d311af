/** Content of a route that is JSON of one schema. */
export function json<S>(schema: S): { 'application/json': { schema: S } } {
  return { 'application/json': { schema } };
}
