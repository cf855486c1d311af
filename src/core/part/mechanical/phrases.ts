import type { Kind } from '../part.ts';
import { foldWords } from '../words.ts';
import { MECHANICAL_WORDS } from './words.data.ts';

type Key = (typeof MECHANICAL_WORDS)[number][0];
export type Said = readonly [key: Key, value: string];

interface Phrases {
  readonly pattern: RegExp;
  readonly meanings: ReadonlyMap<string, readonly Said[]>;
}

const made = new Map<Kind, Phrases | null>();

/** The phrases of a kind as one pattern, the longest first; made once. */
function phrasesOf(kind: Kind): Phrases | null {
  const known = made.get(kind);
  if (known !== undefined) return known;
  const meanings = new Map<string, Said[]>();
  for (const [key, value, phrases, kinds] of MECHANICAL_WORDS) {
    if (!kinds.split(' ').includes(kind)) continue;
    for (const phrase of phrases.split(',').map((one) => foldWords(one.trim())))
      meanings.set(phrase, [...(meanings.get(phrase) ?? []), [key, value]]);
  }
  const longest = [...meanings.keys()].sort((a, b) => b.length - a.length).join('|');
  const found = longest
    ? { meanings, pattern: new RegExp(String.raw`(?<![\p{L}\p{N}.])(?:${longest})(?:n|en|s)?(?![\p{L}\p{N}])`, 'gu') }
    : null;
  made.set(kind, found);
  return found;
}

/** What the words of a folded text say of a part of this kind, in their order. */
export function saidOf(kind: Kind, folded: string): Said[] {
  const phrases = phrasesOf(kind);
  if (!phrases) return [];
  return [...folded.matchAll(phrases.pattern)].flatMap(
    ([match]) => phrases.meanings.get(match) ?? phrases.meanings.get(match.replace(/(?:en|n|s)$/, '')) ?? [],
  );
}
