import type { Bag } from '#core/stock/stock.ts';
import type { FindIndex } from './find-index.ts';
import { readQuery, type Ask, type Query } from './read-query.ts';
import { best } from './best.ts';
import { GRADE, waysOf } from './ways.ts';
import { whyFound, type Why } from './why.ts';

/** A bag that answers what was typed. `full`: it answers all of it; else it is something near. */
export interface Found {
  readonly bag: Bag;
  readonly score: number;
  readonly full: boolean;
  readonly why: readonly Why[];
}

const LIMIT = 50;

/**
 * The bags that answer what was typed, in any notation, best first: all facts and words, then nearest values, other packages,
 * ratings and makes; astray and exhausted bags last. `4k7`, `4,7 kΩ`, `4700 ohm`, `12`, `box A`, `LM35`, `at least 50 V 100n`.
 */
export function find(index: FindIndex, words: string, { limit = LIMIT }: { readonly limit?: number } = {}): Found[] {
  const query = readQuery(words);
  const tally = count(index, query.asks);
  return best(limit, ranked(index, query, tally)).map(({ bag, rank, slot }) => ({
    bag,
    score: rank,
    full: tally.answered[slot] === query.asks.length,
    why: whyFound(bag, query.asks),
  }));
}

interface Tally {
  /** sum of the grades */
  readonly score: Uint16Array;
  /** how many of the essential things asked the bag answers, somehow */
  readonly essential: Uint8Array;
  /** how many of all it answers in full */
  readonly answered: Uint8Array;
  readonly touched: readonly number[];
}

/** Goes once over the postings of everything asked; a bag counts once for each thing asked, by its best way. */
function count(index: FindIndex, asks: readonly Ask[]): Tally {
  const size = index.slots.length;
  const [score, essential, answered, seen] = [new Uint16Array(size), new Uint8Array(size), new Uint8Array(size), new Uint8Array(size)];
  const touched: number[] = [];
  const only = asks.some((ask) => ask.essential);
  asks.forEach((ask, at) => {
    const weight = ask.essential || !only ? 1 : 0;
    for (const { grade, posting } of waysOf(index, ask)) {
      const full = grade >= GRADE.begins ? 1 : 0;
      for (const slot of posting) {
        if (seen[slot] === at + 1) continue;
        if (score[slot] === 0) touched.push(slot);
        seen[slot] = at + 1;
        score[slot] = (score[slot] ?? 0) + grade;
        essential[slot] = (essential[slot] ?? 0) + weight;
        answered[slot] = (answered[slot] ?? 0) + full;
      }
    }
  });
  return { score, essential, answered, touched };
}

interface Ranked {
  readonly bag: Bag;
  readonly slot: number;
  readonly rank: number;
}

/** Only bags with as many of the essential things as any bag has; an essential word that no bag has stops nothing. */
function* ranked(index: FindIndex, query: Query, { score, essential, touched }: Tally): Generator<Ranked> {
  let most = 1;
  for (const slot of touched) if (index.slots[slot] && (essential[slot] ?? 0) > most) most = essential[slot] ?? 0;
  for (const slot of touched) {
    const bag = index.slots[slot];
    if (!bag || essential[slot] !== most) continue;
    const usual = bag.part.kind === query.kind ? 1 : 0;
    yield { bag, slot, rank: standing(bag) * STEP + 2 * (score[slot] ?? 0) + usual };
  }
}

const STEP = 1000;

function standing(bag: Bag): number {
  if (bag.onHand === 0) return 0;
  return bag.state === 'astray' ? 1 : 2;
}
