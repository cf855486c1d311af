export type Verdict = 'exact' | 'serves' | 'check' | 'missing';

/** Reasons of a verdict, each naming the rule it follows; `say/` holds the sentence of each. */
export type BecauseCode =
  | 'same' // {fact, value}: stated and equal
  | 'betters' // {fact, has, asked}
  | 'below' // {fact, has, asked}: a stated fact below the demand
  | 'differs' // {fact, has, asked}: a stated fact that must be equal and is not
  | 'not-stated' // {fact, asked}: the bag does not say
  | 'not-asked' // {fact, has}: the line does not say, the bag does and it matters
  | 'part-number' // {value}: the exact maker's part
  | 'packing' // {has, asked}: the numbers differ in how the parts are packed
  | 'base-name' // {has, asked}: one number is the head of the other
  | 'made-alike' // {has, asked}: another maker's number, the same facts
  | 'usual' // {fact, asked, package}: the bag does not say, but any of this size does it
  | 'similar' // {has, asked}: look-alike outlines
  | 'described' // {}: told by words only, no part number
  | 'safety' // {fact}: never swapped by rule
  | 'programmed' // {}: holds a program that its number does not tell
  | 'polarised' // {has, asked}
  | 'dc-by-practice' // {side}: the line or the bag gives a voltage alone, which means direct voltage
  | 'bias-not-compared' // {has}: a code of class 2 says nothing of the loss under voltage
  | 'doubt' // {field, text}: the line or the bag was read with a doubt
  | 'quantity-not-refs' // {quantity, refs, need}: the line's quantity is not the number of its refs
  | 'alternate' // {text}: it answers a part that the line names beside its own
  | 'second-hand' // {state}
  | 'estimate' // {sure, onHand}
  | 'assumption' // {text}
  | 'chosen' // {bag}: taken by hand before
  | 'accepted' // {reason}: a check accepted for this board, or an override and why
  | 'nothing-like-it' // {}
  | 'nearest' // {bag, fact, has, asked}
  | 'may-serve' // {bag}: the bag that the open check is about
  | 'astray' // {bag}
  | 'short' // {free, need}
  | 'promised' // {build}
  | 'not-fitted'
  | 'later' // left off for now by hand
  | 'not-a-part';

export interface Because {
  readonly code: BecauseCode;
  readonly args: Readonly<Record<string, string | number>>;
}

export interface Answer {
  readonly verdict: Verdict;
  readonly because: readonly Because[];
}

const RANK: Readonly<Record<Verdict, number>> = { exact: 0, serves: 1, check: 2, missing: 3 };

/** Smaller is better. */
export function rankOf(verdict: Verdict): number {
  return RANK[verdict];
}
