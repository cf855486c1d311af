/** Slots of the bags that carry something, oldest first. */
export type Posting = number[];

/** Every word of the stock with the bags that carry it; kept sorted, so that a beginning is a range. */
export interface Words {
  readonly postings: Map<string, Posting>;
  readonly sorted: string[];
}

const NEAR_ENDS = 64;

export function emptyWords(): Words {
  return { postings: new Map(), sorted: [] };
}

/** Puts one slot under each of its words; words that are new are added to `fresh`, to be sorted in by `sortIn`. */
export function post(words: Words, slot: number, terms: Iterable<string>, fresh: string[]): void {
  for (const term of terms) {
    const posting = words.postings.get(term);
    if (posting) posting.push(slot);
    else {
      words.postings.set(term, [slot]);
      fresh.push(term);
    }
  }
}

/** A few new words are put where they belong; many are sorted in at once. */
export function sortIn(words: Words, fresh: readonly string[]): void {
  if (fresh.length > NEAR_ENDS) {
    for (const word of fresh) words.sorted.push(word);
    words.sorted.sort(byUnits);
    return;
  }
  for (const word of fresh) words.sorted.splice(firstAt(words.sorted, word), 0, word);
}

/** The words that begin with `start`, itself among them. */
export function* startingWith(words: Words, start: string): Generator<string> {
  for (let at = firstAt(words.sorted, start); at < words.sorted.length; at += 1) {
    const word = words.sorted[at];
    if (word === undefined || !word.startsWith(start)) return;
    yield word;
  }
}

/** Index of the first word that is not before `word`. */
function firstAt(sorted: readonly string[], word: string): number {
  let low = 0;
  let high = sorted.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((sorted[middle] ?? '') < word) low = middle + 1;
    else high = middle;
  }
  return low;
}

function byUnits(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
