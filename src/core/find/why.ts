import type { Fact } from '#core/part/part.ts';
import { factText } from '#core/serve/fact-text.ts';
import type { Bag } from '#core/stock/stock.ts';
import { fold, wordsOf } from './fold.ts';
import type { Ask } from './read-query.ts';
import { allWords } from './terms.ts';
import { mostSlips, slipsBetween } from './typo.ts';
import { hasFact } from './ways.ts';

/** Why a bag was found, one reason for each thing asked; `say/` holds the sentence of each. */
export type WhyCode =
  | 'bag-number' // {number}
  | 'code' // {code}
  | 'code-begins' // {code, typed}
  | 'part-number' // {value}
  | 'part-number-has' // {value, typed}
  | 'kind' // {kind}
  | 'fact' // {fact, value}
  | 'betters' // {fact, has, asked}
  | 'in-bounds' // {fact, has}
  | 'near' // {fact, has, asked}: another value near the one asked
  | 'other' // {fact, has, asked}: the same thing in another package, rating or make
  | 'not-stated' // {fact, asked}
  | 'box' // {box}
  | 'place' // {place}
  | 'supplier' // {supplier}
  | 'word' // {typed}
  | 'meant' // {typed, word}: read as a slip of the pen
  | 'without' // {typed}: nothing of the bag answers this word
  | 'astray' // {}
  | 'exhausted'; // {}

export interface Why {
  readonly code: WhyCode;
  readonly args: Readonly<Record<string, string | number>>;
}

/** The reasons in the order of what was typed, then the state of the bag. */
export function whyFound(bag: Bag, asks: readonly Ask[]): Why[] {
  const whys = asks.flatMap((ask) => whyAsk(bag, ask));
  if (bag.onHand === 0) whys.push(why('exhausted'));
  if (bag.state === 'astray') whys.push(why('astray'));
  return whys;
}

/** What a bag says to one thing asked. */
export function whyAsk(bag: Bag, ask: Ask): Why[] {
  const typed = ask.typed;
  if (ask.number !== null && ask.number === bag.number) return [why('bag-number', { number: bag.number })];
  if (ask.only === 'box') return [why('box', { box: bag.box ?? '' })];
  if (ask.kind === bag.part.kind) return [why('kind', { kind: bag.part.kind })];
  if (ask.bound) return ask.facts.map((fact) => bounded(bag, fact));
  const number = bag.part.facts.partNumber?.value ?? '';
  if (number && fold(number) === ask.word) return [why('part-number', { value: number })];
  if (ask.facts.length && ask.facts.every((fact) => hasFact(bag, fact)))
    return told(ask.facts).map((fact) => why('fact', { fact: fact.key, value: factText(fact) }));
  const other = ask.others.find((fact) => hasFact(bag, fact));
  if (other) return [why('fact', { fact: other.key, value: factText(other) })];
  const word = whyWord(bag, ask.word, typed);
  if (word) return [word];
  if (ask.facts.length) return told(ask.facts).map((fact) => apart(bag, fact));
  const meant = meantWord(bag, ask.word);
  return [meant === null ? why('without', { typed }) : why('meant', { typed, word: meant })];
}

function why(code: WhyCode, args: Why['args'] = {}): Why {
  return { code, args };
}

/** Both sides of a symmetric tolerance are said once. */
function told(facts: readonly Fact[]): Fact[] {
  const high = facts.some(({ key }) => key === 'tolerance-high');
  return facts.filter(({ key }) => !(high && key === 'tolerance-low'));
}

function bounded(bag: Bag, limit: Fact): Why {
  const mine = bag.part.facts[limit.key];
  return mine
    ? why('in-bounds', { fact: limit.key, has: factText(mine) })
    : why('not-stated', { fact: limit.key, asked: factText(limit) });
}

const MORE = new Set(['voltage', 'power', 'current', 'temperature-high']);

/** What the bag says where it does not say the same. */
function apart(bag: Bag, asked: Fact): Why {
  const mine = bag.part.facts[asked.key];
  if (!mine) return why('not-stated', { fact: asked.key, asked: factText(asked) });
  if (hasFact(bag, asked)) return why('fact', { fact: asked.key, value: factText(asked) });
  const args = { fact: asked.key, has: factText(mine), asked: factText(asked) };
  if (asked.key === 'value' && mine.unit === asked.unit) return why('near', args);
  const [has, want] = [Number(mine.value), Number(asked.value)];
  const better = mine.unit === asked.unit && (MORE.has(asked.key) ? has > want : asked.key.startsWith('tolerance') && has < want);
  return why(better ? 'betters' : 'other', args);
}

function whyWord(bag: Bag, word: string, typed: string): Why | null {
  const code = fold(bag.code);
  const number = bag.part.facts.partNumber?.value ?? '';
  if (code === word) return why('code', { code: bag.code });
  if (bag.box && fold(bag.box) === word) return why('box', { box: bag.box });
  if (bag.place && wordsOf(bag.place).has(word)) return why('place', { place: bag.place });
  if (number && fold(number).includes(word)) return why('part-number-has', { value: number, typed });
  if (code.startsWith(word)) return why('code-begins', { code: bag.code, typed });
  const supplier = bag.suppliers?.find((name) => begins(wordsOf(name), word));
  if (supplier !== undefined) return why('supplier', { supplier });
  return begins(allWords(bag), word) ? why('word', { typed }) : null;
}

function begins(words: ReadonlySet<string>, start: string): boolean {
  return [...words].some((word) => word.startsWith(start));
}

/** The word of the bag that was probably meant, or null. */
function meantWord(bag: Bag, typed: string): string | null {
  const slips = mostSlips(typed);
  return (
    [...allWords(bag)].find(
      (word) => Math.abs(word.length - typed.length) <= slips && slipsBetween(word, typed, slips) <= slips,
    ) ?? null
  );
}
