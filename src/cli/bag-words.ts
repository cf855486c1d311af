import { wrongUsage, refused, type Ending } from './command.ts';
import { readWhole } from '#actions/whole.ts';
import { cliText } from '#say/en/cli.ts';

type BagWords =
  | { readonly ok: true; readonly bag: number; readonly quantity: number }
  | { readonly ok: false; readonly ending: Ending };

/** Reads `BAG QUANTITY`: two whole numbers; what they may be is the action's to say. */
export function bagAndQuantity(words: readonly string[]): BagWords {
  const [bagWord, quantityWord, extra] = words;
  if (bagWord === undefined || quantityWord === undefined)
    return no(wrongUsage(cliText('words-missing', { what: 'BAG and QUANTITY' })));
  if (extra !== undefined) return no(wrongUsage(cliText('words-too-many', { word: extra })));
  const bag = readWhole(bagWord, 'bag');
  if (!bag.ok) return no(refused(bag.refusal));
  const quantity = readWhole(quantityWord, 'quantity');
  return quantity.ok ? { ok: true, bag: bag.value, quantity: quantity.value } : no(refused(quantity.refusal));
}

type OneWord<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly ending: Ending };

/** Exactly one word, such as a file. */
export function oneWord(words: readonly string[], what: string): OneWord<string> {
  const [word, extra] = words;
  if (word === undefined) return no(wrongUsage(cliText('words-missing', { what })));
  return extra === undefined ? { ok: true, value: word } : no(wrongUsage(cliText('words-too-many', { word: extra })));
}

/** Exactly one word that is a bag's number. */
export function oneBag(words: readonly string[]): OneWord<number> {
  const word = oneWord(words, 'BAG');
  if (!word.ok) return word;
  const bag = readWhole(word.value, 'bag');
  return bag.ok ? { ok: true, value: bag.value } : no(refused(bag.refusal));
}

function no(ending: Ending): { readonly ok: false; readonly ending: Ending } {
  return { ok: false, ending };
}
