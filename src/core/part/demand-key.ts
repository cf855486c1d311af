import type { Part } from './part.ts';

/** Canonical key of what is asked: the kind and every fact in a written order; equal demands give equal keys. */
export function demandKey(part: Part): string {
  const facts = Object.values(part.facts)
    .filter((fact) => fact !== undefined)
    .map((fact) => `${fact.key}=${fact.value}${fact.unit ?? ''}`)
    .sort();
  return [part.kind, ...facts].join('|');
}
