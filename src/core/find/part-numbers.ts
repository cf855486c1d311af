import { wordFact, type Part } from '#core/part/part.ts';
import { plainNumber, unpackedNumber } from '#core/serve/part-number.ts';
import { startingWith, type Posting, type Words } from './words.ts';

const SHORTEST_BASE = 4;

/** The spellings under which a part's number is posted: as `serve` compares it, and without what says how it is packed. */
export function numberKeys(part: Part): Set<string> {
  const name = wordFact(part, 'partNumber');
  return name === null ? new Set() : new Set([plainNumber(name), unpackedNumber(name)]);
}

/** Bags whose number may be the same, the same otherwise packed, or one the base of the other: what `nameFit` does not call `differs`. */
export function numberedLike(numbers: Words, name: string): Posting[] {
  const bare = unpackedNumber(name);
  const keys = new Set([plainNumber(name), bare]);
  for (let length = SHORTEST_BASE; length < bare.length; length += 1) keys.add(bare.slice(0, length));
  if (bare.length >= SHORTEST_BASE) for (const key of startingWith(numbers, bare)) keys.add(key);
  return [...keys].flatMap((key) => {
    const posting = numbers.postings.get(key);
    return posting ? [posting] : [];
  });
}
