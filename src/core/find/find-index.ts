import type { Kind } from '#core/part/part.ts';
import type { Bag, Stock } from '#core/stock/stock.ts';
import { grown, newColumns, note, type Columns } from './columns.ts';
import { postFact, type Scales } from './scales.ts';
import { partTerms, placeWords, termsText, type Terms } from './terms.ts';
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
  columns: Columns;
}

/** The index of a whole stock: 10 to 20 µs a bag. */
export function buildIndex(stock: Stock): FindIndex {
  const index: FindIndex = {
    change: stock.change,
    slots: [],
    slotOf: new Map(),
    byNumber: new Map(),
    kinds: new Map(),
    facts: new Map(),
    words: emptyWords(),
    numbers: emptyWords(),
    columns: newColumns(stock.bags.length),
  };
  addAll(index, stock.bags);
  return index;
}

/**
 * Brings the index to `change`: each changed bag takes the place of its former picture, new ones come in, bags in `gone` (ids)
 * leave. Go on with what it answers, which answers as a rebuilt index does.
 */
export function updateIndex(index: FindIndex, changed: readonly Bag[], change: number, gone: readonly string[] = []): FindIndex {
  const fresh: Bag[] = [];
  const left = new Set(gone);
  for (const bag of changed) {
    if (left.has(bag.id)) continue;
    const slot = index.slotOf.get(bag.id);
    const before = slot === undefined ? null : index.slots[slot];
    if (slot !== undefined && before && termsText(before) === termsText(bag)) put(index, slot, bag);
    else {
      drop(index, bag.id);
      fresh.push(bag);
    }
  }
  for (const id of gone) drop(index, id);
  addAll(index, fresh);
  index.change = change;
  return index.slots.length > MOST_EMPTY * (index.slotOf.size + 1) ? rebuilt(index) : index;
}

/** Of so many slots one may be in use before the index is made anew. */
const MOST_EMPTY = 2;

function rebuilt({ change, slots }: FindIndex): FindIndex {
  return buildIndex({ change, bags: slots.filter((bag) => bag !== null), boxes: [] });
}

/** Does a bag that is still there stand in the posting? */
export function isLive(index: FindIndex, posting: Posting): boolean {
  return posting.some((slot) => index.slots[slot]);
}

function drop(index: FindIndex, id: string): void {
  const slot = index.slotOf.get(id);
  if (slot === undefined) return;
  put(index, slot, null);
  index.slotOf.delete(id);
}

function put(index: FindIndex, slot: number, bag: Bag | null): void {
  index.slots[slot] = bag;
  note(index.columns, slot, bag);
}

function addAll(index: FindIndex, bags: readonly Bag[]): void {
  index.columns = grown(index.columns, index.slots.length + bags.length);
  const known = new Map<string, Terms>();
  const words: string[] = [];
  const numbers: string[] = [];
  for (const bag of bags) {
    const slot = index.slots.length;
    put(index, slot, bag);
    index.slotOf.set(bag.id, slot);
    append(index.byNumber, bag.number, slot);
    append(index.kinds, bag.part.kind, slot);
    const terms = termsOnce(known, bag);
    const mine = placeWords(bag);
    for (const word of mine) if (terms.words.has(word)) mine.delete(word);
    for (const fact of terms.facts) postFact(index.facts, slot, fact);
    post(index.words, slot, terms.words, words);
    post(index.words, slot, mine, words);
    post(index.numbers, slot, terms.numbers, numbers);
  }
  sortIn(index.words, words);
  sortIn(index.numbers, numbers);
}

/** Many bags hold the same part. */
function termsOnce(known: Map<string, Terms>, bag: Bag): Terms {
  const key = `${bag.partId} ${bag.part.text}`;
  const terms = known.get(key) ?? partTerms(bag);
  known.set(key, terms);
  return terms;
}

function append<K>(map: Map<K, Posting>, key: K, slot: number): void {
  const posting = map.get(key);
  if (posting) posting.push(slot);
  else map.set(key, [slot]);
}
