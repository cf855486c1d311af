import type { Fact, Kind } from '#core/part/part.ts';
import type { Bag } from '#core/stock/stock.ts';
import { fold } from './fold.ts';
import type { Ask, Query } from './read-query.ts';
import { whyAsk, type Why } from './why.ts';

type WordSort = 'box' | 'place' | 'supplier' | 'code' | 'part-number' | 'word' | 'meant';
type WordMeans = { [Sort in WordSort]: { readonly sort: Sort; readonly word: string } }[WordSort];

/** What one thing asked was taken for. */
export type AskMeans =
  /** `orValue`: bags that have the number as a value were found as well */
  | { readonly sort: 'bag'; readonly number: number; readonly orValue: boolean }
  | WordMeans
  | { readonly sort: 'kind'; readonly kind: Kind }
  | { readonly sort: 'facts'; readonly facts: readonly Fact[]; readonly kind: Kind | null }
  | { readonly sort: 'bound'; readonly bound: 'at-least' | 'at-most'; readonly fact: Fact }
  | { readonly sort: 'nowhere' }
  | { readonly sort: 'too-much' }
  | { readonly sort: 'any'; readonly fact: 'tolerance' | 'voltage' };

export interface AskPiece {
  readonly typed: string;
  readonly means: AskMeans;
}

/** So many of the best bags tell what a word was found as. */
const LOOKED_AT = 8;

/** What was typed over what it was looked for as; `bags` are those that were found, the best first. */
export function glossQuery(query: Query, bags: readonly Bag[]): AskPiece[] {
  const looked = bags.slice(0, LOOKED_AT);
  const pieces = query.asks.map((ask) => ({ typed: ask.typed, means: meansOf(ask, query, looked) }));
  const left: AskPiece[] = query.rest ? [{ typed: query.rest, means: { sort: 'too-much' } }] : [];
  return [...pieces, ...left, ...silent(query, pieces)];
}

function meansOf(ask: Ask, query: Query, bags: readonly Bag[]): AskMeans {
  if (ask.only === 'box') return { sort: 'box', word: ask.typed.split(' ')[1] ?? ask.typed };
  const [fact] = ask.facts;
  if (ask.bound && fact) return { sort: 'bound', bound: ask.bound, fact };
  if (
    ask.number !== null &&
    (ask.only === 'bag' || ask.typed.startsWith('#') || bags.some(({ number }) => number === ask.number))
  )
    return { sort: 'bag', number: ask.number, orValue: ask.only === null && bags.some((bag) => bag.number !== ask.number) };
  if (ask.kind) return { sort: 'kind', kind: ask.kind };
  const code = ask.typed.includes('-') ? bags.find((bag) => fold(bag.code).startsWith(ask.word)) : undefined;
  if (code) return { sort: 'code', word: ask.typed };
  if (fact) return facts(ask.facts, query);
  return foundAs(ask, query, bags);
}

function facts(read: readonly Fact[], query: Query): AskMeans {
  const named = query.asks.some(({ kind }) => kind !== null);
  const tells = read.some(({ key }) => key === 'value' || key === 'partNumber');
  return { sort: 'facts', facts: read, kind: tells && !named ? query.kind : null };
}

/** A word that states no fact means what it was found as; else a value without its unit, else nothing. */
function foundAs(ask: Ask, query: Query, bags: readonly Bag[]): AskMeans {
  for (const bag of bags)
    for (const why of whyAsk(bag, ask)) {
      const found = wordFound(why, ask);
      if (found) return found;
      const other = why.code === 'fact' ? ask.others.find(({ key }) => key === why.args['fact']) : undefined;
      if (other)
        return {
          sort: 'facts',
          facts: [ask.others.find((one) => one.value === bag.part.facts.value?.value) ?? other],
          kind: bag.part.kind,
        };
    }
  const [first] = ask.others;
  return first ? facts([first], query) : { sort: 'nowhere' };
}

function wordFound({ code, args }: Why, { typed }: Ask): AskMeans | null {
  if (code === 'box') return { sort: 'box', word: String(args['box']) };
  if (code === 'place') return { sort: 'place', word: String(args['place']) };
  if (code === 'supplier') return { sort: 'supplier', word: String(args['supplier']) };
  if (code === 'code' || code === 'code-begins') return { sort: 'code', word: typed };
  if (code === 'part-number' || code === 'part-number-has') return { sort: 'part-number', word: typed };
  if (code === 'word') return { sort: 'word', word: typed };
  return code === 'meant' ? { sort: 'meant', word: String(args['word']) } : null;
}

/** What a person would ask about a value that was typed alone: any tolerance of a resistor will do, any voltage of a capacitor. */
function silent(query: Query, pieces: readonly AskPiece[]): AskPiece[] {
  const stated = new Set(query.asks.flatMap((ask) => ask.facts.map(({ key }) => key)));
  const value = pieces.some(({ means }) => means.sort === 'facts' && means.facts.some(({ key }) => key === 'value'));
  if (!value) return [];
  if (query.kind === 'resistor' && !stated.has('tolerance-low'))
    return [{ typed: '', means: { sort: 'any', fact: 'tolerance' } }];
  if (query.kind === 'capacitor' && !stated.has('voltage')) return [{ typed: '', means: { sort: 'any', fact: 'voltage' } }];
  return [];
}
