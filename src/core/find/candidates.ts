import { KINDS, wordFact, type Fact, type FactKey, type Kind, type Part } from '#core/part/part.ts';
import { fit } from '#core/serve/outline.ts';
import { RULES } from '#core/serve/rules.data.ts';
import { alikeVariant } from '#core/serve/variant.ts';
import type { Bag } from '#core/stock/stock.ts';
import type { FindIndex } from './find-index.ts';
import { numberedLike } from './part-numbers.ts';
import { equalTo, neighbours, passing } from './scales.ts';
import type { Posting } from './words.ts';

/**
 * Every bag that `serve` may call exact, serves or check for what is asked, and few others: those of its kind with one identity
 * fact equal (`core/serve/rules.data.ts`) in a package that fits, and those whose part number is like the one asked.
 */
export function candidates(index: FindIndex, asked: Part): Bag[] {
  const alike = gather(index, ofIdentity(index, asked), asked.kind, fittingPackages(index, asked));
  const number = wordFact(asked, 'partNumber');
  if (number === null) return alike;
  const numbered = gather(index, numberedLike(index.numbers, number));
  return numbered.length ? [...new Set([...alike, ...numbered])] : alike;
}

/** What to show where nothing serves: bags of the kind with the same identity in any package, else those with the nearest values. */
export function nearestTo(index: FindIndex, asked: Part): Bag[] {
  const ofKind = (postings: readonly Posting[]): Bag[] => gather(index, postings, asked.kind);
  const alike = ofKind(ofIdentity(index, asked));
  const value = asked.facts.value;
  if (alike.length || !value) return alike;
  return ofKind(neighbours(index.facts, value, NEIGHBOURS, FARTHEST, (posting) => ofKind([posting]).length > 0));
}

const NEIGHBOURS = 3;
const FARTHEST = 1.25;

function ofIdentity(index: FindIndex, asked: Part): Posting[] {
  const keys = RULES[asked.kind].identity.filter((key) => key !== 'partNumber');
  return keys.flatMap((key) => {
    const fact = asked.facts[key];
    return fact ? equalIn(index, key, fact) : [];
  });
}

/** Threads and packages have several spellings; everything else has one. */
function equalIn(index: FindIndex, key: FactKey, fact: Fact): Posting[] {
  if (key === 'thread') return passing(index.facts, key, fact.unit, (value) => threadSize(value) === threadSize(fact.value));
  if (key === 'package') return passing(index.facts, key, fact.unit, (value) => fit(value, fact.value) === 'same');
  if (key === 'variant') return passing(index.facts, key, fact.unit, (value) => alikeVariant(value, fact.value));
  return [equalTo(index.facts, fact)];
}

/** `M3x0.5` → `M3`: pitches are left to `serve`. */
function threadSize(name: string): string {
  return name.toUpperCase().replaceAll(' ', '').split('X')[0] ?? '';
}

/** May a package, by its number in the columns, do for the one asked? A bag that states none may. Each is looked at once. */
function fittingPackages(index: FindIndex, asked: Part): (pack: number) => boolean {
  const wanted = wordFact(asked, 'package');
  if (wanted === null) return () => true;
  const { names } = index.columns.packages;
  const known: (boolean | undefined)[] = [true];
  return (pack) => (known[pack] ??= fit(names[pack] ?? '', wanted) !== 'differs');
}

/** The bags of several postings, each once; of one kind and in some packages only, where these are given. */
function gather(
  index: FindIndex,
  postings: readonly Posting[],
  kind: Kind | null = null,
  fits: (pack: number) => boolean = () => true,
): Bag[] {
  const { seen, pack, kind: kinds } = index.columns;
  const wanted = kind === null ? -1 : KINDS.indexOf(kind);
  const slots: number[] = [];
  for (const posting of postings) {
    for (const slot of posting) {
      if (seen[slot] || (wanted >= 0 && kinds[slot] !== wanted) || !fits(pack[slot] ?? 0)) continue;
      seen[slot] = 1;
      slots.push(slot);
    }
  }
  const bags: Bag[] = [];
  for (const slot of slots) {
    seen[slot] = 0;
    const bag = index.slots[slot];
    if (bag) bags.push(bag);
  }
  return bags;
}
