import type { Part } from './part.ts';

/** Facts that say who makes it or how it was said, not what is asked. */
const NOT_ASKED: ReadonlySet<string> = new Set(['maker', 'polarised']);

/**
 * Canonical key of what is asked: the kind and every fact in a written order; equal demands give equal keys, whatever the text.
 * A line that states no fact is known by its words: `R-|…` and `Mini bubbler` never fall together.
 */
export function demandKey(part: Part): string {
  const facts = Object.values(part.facts)
    .filter((fact) => fact !== undefined && fact.origin !== 'assumed' && !NOT_ASKED.has(fact.key))
    .map((fact) => `${fact.key}=${fact.value}${fact.unit ?? ''}`)
    .sort();
  return [part.kind, ...(facts.length ? facts : [part.text.trim().toLowerCase().replaceAll(/\s+/g, ' ')])].join('|');
}
