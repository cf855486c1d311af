import { wordFact, type Fact, type FactKey, type Part } from '#core/part/part.ts';
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
  const fits = inFittingPackage(asked);
  const alike = gather(index, ofIdentity(index, asked), (bag) => bag.part.kind === asked.kind && fits(bag));
  const number = wordFact(asked, 'partNumber');
  if (number === null) return alike;
  const numbered = gather(index, numberedLike(index.numbers, number), () => true);
  return numbered.length ? [...new Set([...alike, ...numbered])] : alike;
}

/** What to show where nothing serves: bags of the kind with the same identity in any package, else those with the nearest values. */
export function nearestTo(index: FindIndex, asked: Part): Bag[] {
  const ofKind = (bag: Bag): boolean => bag.part.kind === asked.kind;
  const alike = gather(index, ofIdentity(index, asked), ofKind);
  const value = asked.facts.value;
  if (alike.length || !value) return alike;
  return gather(
    index,
    neighbours(index.facts, value, NEIGHBOURS, FARTHEST, (posting) => gather(index, [posting], ofKind).length > 0),
    ofKind,
  );
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

function inFittingPackage(asked: Part): (bag: Bag) => boolean {
  const wanted = wordFact(asked, 'package');
  if (wanted === null) return () => true;
  const known = new Map<string, boolean>();
  return (bag) => {
    const mine = wordFact(bag.part, 'package');
    if (mine === null || mine === wanted) return true;
    let fits = known.get(mine);
    if (fits === undefined) known.set(mine, (fits = fit(mine, wanted) !== 'differs'));
    return fits;
  };
}

/** The bags of several postings that pass, each once. */
function gather(index: FindIndex, postings: readonly Posting[], keep: (bag: Bag) => boolean): Bag[] {
  const bags: Bag[] = [];
  const seen = postings.length > 1 ? new Set<number>() : null;
  for (const posting of postings) {
    for (const slot of posting) {
      const bag = index.slots[slot];
      if (!bag || seen?.has(slot) || !keep(bag)) continue;
      seen?.add(slot);
      bags.push(bag);
    }
  }
  return bags;
}
