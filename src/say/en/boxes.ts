import type { Kind } from '#core/part/part.ts';
import { begun, kindWords } from './kind-words.ts';

const NAMED = 3;

/** What is in a box in a few words, the most frequent kind first: `Resistors, capacitors, screws and more`. */
export function sayBox(kinds: readonly Kind[]): string {
  if (kinds.length === 0) return 'Nothing yet';
  return `${begun(kinds.slice(0, NAMED).map(kindWords).join(', '))}${kinds.length > NAMED ? ' and more' : ''}`;
}
