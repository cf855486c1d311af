import type { Fact } from '#core/part/part.ts';
import type { Bag } from '#core/stock/stock.ts';
import { fold, wordsOf } from './fold.ts';

/** Everything that a bag can be found by, apart from its number. */
export interface Terms {
  readonly facts: readonly Fact[];
  readonly words: ReadonlySet<string>;
}

/** What the bag's part says, and where it lies: text, part code, part number with its digits first, maker, package, kind, box, place, suppliers. */
export function termsOf(bag: Bag): Terms {
  const { facts, kind, text } = bag.part;
  const words = wordsOf(text);
  add(words, bag.code);
  for (const word of wordsOf(kind)) words.add(word);
  for (const fact of [facts.maker, facts.package, facts.variant]) if (fact) for (const word of wordsOf(fact.value)) words.add(word);
  if (facts.partNumber) for (const word of numberWords(facts.partNumber.value)) words.add(word);
  if (bag.box) add(words, bag.box);
  if (bag.place) for (const word of wordsOf(bag.place)) words.add(word);
  for (const supplier of bag.suppliers ?? []) for (const word of wordsOf(supplier)) words.add(word);
  return { facts: Object.values(facts).filter((fact) => fact !== undefined), words };
}

/** `LM358DR` → `lm358dr`, `358dr`: people also type a number without the letters of its maker. */
function numberWords(name: string): string[] {
  const whole = fold(name);
  const digits = /^\p{L}+(?=\d)/u.exec(whole)?.[0].length ?? 0;
  return digits ? [whole, whole.slice(digits)] : [whole];
}

/** Equal texts mean equal terms, so that a bag whose quantity alone changed is not posted again. */
export function termsText(bag: Bag): string {
  const facts = Object.values(bag.part.facts).map((fact) => `${fact?.key}=${fact?.value}${fact?.unit ?? ''}`);
  return [bag.number, bag.code, bag.part.kind, bag.part.text, ...facts.sort(), bag.box, bag.place, ...(bag.suppliers ?? [])].join('\u001F');
}

function add(words: Set<string>, text: string): void {
  const word = fold(text);
  if (word) words.add(word);
}
