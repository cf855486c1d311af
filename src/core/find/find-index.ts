import type { Kind } from '#core/part/part.ts';
import type { Bag, Stock } from '#core/stock/stock.ts';
import { numberKeys } from './part-numbers.ts';
import { postFact, type Scales } from './scales.ts';
import { termsOf, termsText } from './terms.ts';
import { emptyWords, post, sortIn, type Posting, type Words } from './words.ts';

/**
 * The stock in memory, by everything that a bag can be found by. It follows the stock by the change number: `updateIndex` changes
 * it in place. A bag that changed its terms gets a new slot and its old one stays empty; so nothing is ever searched for to be removed.
 */
export interface FindIndex {
  change: number;
  /** by slot; null where a bag was replaced or went away */
  readonly slots: (Bag | null)[];
  readonly slotOf: Map<string, number>;
  readonly byNumber: Map<number, Posting>;
  readonly kinds: Map<Kind, Posting>;
  readonly facts: Scales;
  readonly words: Words;
  /** part numbers as `core/serve` compares them */
  readonly numbers: Words;
}

/** The index of a whole stock: about 10 µs a bag. */
export function buildIndex(stock: Stock): FindIndex {
  const index: FindIndex = {
    change: stock.change, slots: [], slotOf: new Map(), byNumber: new Map(), kinds: new Map(), facts: new Map(), words: emptyWords(), numbers: emptyWords(),
  };
  addAll(index, stock.bags);
  return index;
}

/**
 * Brings the index to `change`: each changed bag takes the place of its former picture, new ones come in, bags in `gone` (ids)
 * leave. The answers are those of a rebuilt index.
 */
export function updateIndex(index: FindIndex, changed: readonly Bag[], change: number, gone: readonly string[] = []): FindIndex {
  const fresh: Bag[] = [];
  for (const bag of changed) {
    const slot = index.slotOf.get(bag.id);
    const before = slot === undefined ? null : index.slots[slot];
    if (slot !== undefined && before && termsText(before) === termsText(bag)) index.slots[slot] = bag;
    else {
      drop(index, bag.id);
      fresh.push(bag);
    }
  }
  for (const id of gone) drop(index, id);
  addAll(index, fresh);
  index.change = change;
  return index;
}

function drop(index: FindIndex, id: string): void {
  const slot = index.slotOf.get(id);
  if (slot === undefined) return;
  index.slots[slot] = null;
  index.slotOf.delete(id);
}

function addAll(index: FindIndex, bags: readonly Bag[]): void {
  const words: string[] = [];
  const numbers: string[] = [];
  for (const bag of bags) {
    const slot = index.slots.push(bag) - 1;
    index.slotOf.set(bag.id, slot);
    append(index.byNumber, bag.number, slot);
    append(index.kinds, bag.part.kind, slot);
    const { facts, words: mine } = termsOf(bag);
    for (const fact of facts) postFact(index.facts, slot, fact);
    for (const word of post(index.words, slot, mine)) words.push(word);
    for (const key of post(index.numbers, slot, numberKeys(bag.part))) numbers.push(key);
  }
  sortIn(index.words, words);
  sortIn(index.numbers, numbers);
}

function append<K>(map: Map<K, Posting>, key: K, slot: number): void {
  const posting = map.get(key);
  if (posting) posting.push(slot);
  else map.set(key, [slot]);
}
