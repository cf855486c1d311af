import type { Fact } from '#core/part/part.ts';
import type { Bag } from '#core/stock/stock.ts';
import { isLive, type FindIndex } from './find-index.ts';
import { fold } from './fold.ts';
import type { Ask } from './read-query.ts';
import { equalTo, neighbours, within } from './scales.ts';
import { codeWord } from './terms.ts';
import { meantBy } from './typo.ts';
import { startingWith, type Posting } from './words.ts';

/** How well a bag answers one thing asked: the larger the better; from `BEGINS` on it counts as an answer, below as something near. */
export const GRADE = {
  number: 10,
  name: 9,
  nameBegins: 8,
  equal: 7,
  otherReading: 6,
  betters: 5,
  begins: 4,
  meant: 2,
  near: 1,
} as const;

export interface Way {
  readonly grade: number;
  readonly posting: Posting;
}

const NEIGHBOURS = 3;
const FARTHEST = 1.25;
const RATINGS = new Set(['voltage', 'power', 'current', 'temperature-high']);

/** The bags that answer one thing asked, best ways first; a bag may come in several. */
export function waysOf(index: FindIndex, ask: Ask): Way[] {
  if (ask.only === 'bag') return numberWays(index, ask);
  if (ask.only === 'box')
    return [
      {
        grade: GRADE.number,
        posting: matching(index, index.words.postings.get(ask.word), (bag) => fold(bag.box ?? '') === ask.word),
      },
    ];
  if (ask.bound) return boundWays(index, ask);
  const codes = codeWays(index, ask);
  if (codes.length && ask.typed.includes('-')) return codes;
  const sure = [
    ...codes,
    ...numberWays(index, ask),
    ...kindWays(index, ask),
    ...factWays(index, ask),
    ...wordWays(index, ask),
  ].toSorted((a, b) => b.grade - a.grade);
  return sure.some(({ posting }) => isLive(index, posting))
    ? [...sure, ...nearWays(index, ask)]
    : [...nearWays(index, ask), ...meantWays(index, ask)];
}

function numberWays(index: FindIndex, ask: Ask): Way[] {
  const posting = ask.number === null ? undefined : index.byNumber.get(ask.number);
  return posting ? [{ grade: GRADE.number, posting }] : [];
}

function kindWays(index: FindIndex, ask: Ask): Way[] {
  const posting = ask.kind ? index.kinds.get(ask.kind) : undefined;
  return posting ? [{ grade: GRADE.equal, posting }] : [];
}

function boundWays(index: FindIndex, ask: Ask): Way[] {
  const [limit] = ask.facts;
  if (!limit) return [];
  const at = Number(limit.value);
  const [low, high] = ask.bound === 'at-least' ? [at, Infinity] : [-Infinity, at];
  return within(index.facts, limit.key, limit.unit, low, high).map((posting) => ({ grade: GRADE.equal, posting }));
}

function factWays(index: FindIndex, ask: Ask): Way[] {
  const others = ask.others.map((fact) => ({
    grade: ask.facts.length ? GRADE.otherReading : GRADE.equal,
    posting: equalTo(index.facts, fact),
  }));
  const [first, ...more] = ask.facts.map((fact) => equalTo(index.facts, fact)).toSorted((a, b) => a.length - b.length);
  if (!first) return others;
  return [{ grade: GRADE.equal, posting: more.reduce(inBoth, first) }, ...others, ...betterWays(index, ask.facts)];
}

/** Postings are in order of slot. */
function inBoth(a: Posting, b: Posting): Posting {
  const both: Posting = [];
  for (let i = 0, j = 0; i < a.length && j < b.length;) {
    const [x = 0, y = 0] = [a[i], b[j]];
    if (x === y) both.push(x);
    if (x <= y) i += 1;
    if (y <= x) j += 1;
  }
  return both;
}

/** A higher rating or a closer tolerance than the one asked. */
function betterWays(index: FindIndex, facts: readonly Fact[]): Way[] {
  const only = facts.find(({ key }) => RATINGS.has(key) || key === 'tolerance-high');
  if (!only || !facts.every(({ key }) => key === only.key || key.startsWith('tolerance') || key === 'voltage-kind')) return [];
  const at = Number(only.value);
  const [low, high] = RATINGS.has(only.key) ? [at, Infinity] : [0, at];
  return within(index.facts, only.key, only.unit, low, high).map((posting) => ({ grade: GRADE.betters, posting }));
}

const TOO_SHORT = /^(?:.|\d{1,2})$/u;

/** A part code, whole or begun, says more than the facts that could be read from it. */
function codeWays(index: FindIndex, ask: Ask): Way[] {
  return TOO_SHORT.test(ask.word) || !/[\d-]/.test(ask.typed)
    ? []
    : beginning(index, codeWord(ask.typed), GRADE.name, GRADE.nameBegins);
}

function wordWays(index: FindIndex, ask: Ask): Way[] {
  if (!TOO_SHORT.test(ask.word)) return beginning(index, ask.word, GRADE.equal, GRADE.begins);
  const posting = index.words.postings.get(ask.word);
  return posting ? [{ grade: GRADE.equal, posting }] : [];
}

function beginning(index: FindIndex, start: string, whole: number, begun: number): Way[] {
  const ways: Way[] = [];
  for (const word of startingWith(index.words, start)) {
    const posting = index.words.postings.get(word);
    if (posting && isLive(index, posting)) ways.push({ grade: word === start ? whole : begun, posting });
  }
  return ways;
}

function nearWays(index: FindIndex, ask: Ask): Way[] {
  const value = ask.facts.find(({ key }) => key === 'value');
  const near = value ? neighbours(index.facts, value, NEIGHBOURS, FARTHEST, (posting) => isLive(index, posting)) : [];
  const loose = ask.facts.length > 1 ? ask.facts.map((fact) => equalTo(index.facts, fact)) : [];
  return [...near, ...(value ? [] : loose)].map((posting) => ({ grade: GRADE.near, posting }));
}

function meantWays(index: FindIndex, ask: Ask): Way[] {
  const postingOf = (word: string): Posting => index.words.postings.get(word) ?? [];
  return meantBy(index.words, ask.word, (word) => isLive(index, postingOf(word))).map((word) => ({
    grade: GRADE.meant,
    posting: postingOf(word),
  }));
}

/** Has the bag this very fact? */
export function hasFact(bag: Bag, fact: Fact): boolean {
  const mine = bag.part.facts[fact.key];
  return (
    mine !== undefined &&
    mine.unit === fact.unit &&
    (mine.value === fact.value || (fact.unit === null && mine.value.toLowerCase() === fact.value.toLowerCase()))
  );
}

function matching(index: FindIndex, posting: Posting | undefined, test: (bag: Bag) => boolean): Posting {
  return (posting ?? []).filter((slot) => {
    const bag = index.slots[slot];
    return bag ? test(bag) : false;
  });
}
