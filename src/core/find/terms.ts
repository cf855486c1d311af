import type { Fact } from '#core/part/part.ts';
import type { Bag } from '#core/stock/stock.ts';
import { fold, wordsOf } from './fold.ts';
import { numberKeys } from './part-numbers.ts';

/** Everything that a bag can be found by, apart from its number. */
export interface Terms {
  readonly facts: readonly Fact[];
  readonly words: ReadonlySet<string>;
  /** the part number as `serve` compares it */
  readonly numbers: ReadonlySet<string>;
}

/** The words of what its part says, and of where it lies. */
export function allWords(bag: Bag): Set<string> {
  return new Set([...partTerms(bag).words, ...placeWords(bag)]);
}

/** Text, part code, kind, part number with its digits first, and every fact that is a word: maker, package, colour, … */
export function partTerms({ part, code }: Bag): Terms {
  const { facts, kind, text } = part;
  const words = wordsOf(text);
  words.add(codeWord(code));
  for (const word of wordsOf(kind)) words.add(word);
  for (const fact of Object.values(facts))
    if (fact && fact.unit === null && fact.key !== 'partNumber' && fact.key !== 'doubted')
      for (const word of wordsOf(fact.value)) words.add(word);
  if (facts.partNumber) for (const word of numberWords(facts.partNumber.value)) words.add(word);
  return { facts: Object.values(facts).filter((fact) => fact !== undefined), words, numbers: numberKeys(part) };
}

/** Part codes are words of their own sort, so that `R-0805` finds codes that begin so, not every text that does. */
export function codeWord(code: string): string {
  return `=${fold(code)}`;
}

/** Box, place, suppliers. */
export function placeWords({ box, place, suppliers = [] }: Bag): Set<string> {
  const words = place ? wordsOf(place) : new Set<string>();
  if (box) add(words, box);
  for (const supplier of suppliers) for (const word of wordsOf(supplier)) words.add(word);
  return words;
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
  return [bag.number, bag.code, bag.part.kind, bag.part.text, ...facts.sort(), bag.box, bag.place, ...(bag.suppliers ?? [])].join(
    '\u001F',
  );
}

function add(words: Set<string>, text: string): void {
  const word = fold(text);
  if (word) words.add(word);
}
