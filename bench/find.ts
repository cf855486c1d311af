import { buildIndex, type FindIndex } from '#core/find/find-index.ts';
import { find } from '#core/find/find.ts';
import type { Stock } from '#core/stock/stock.ts';
import { expect, quantile, spread, timed, type Bench, type Measured } from './bench.ts';
import { openFullText } from './full-text.ts';
import { seeded } from './seeded.ts';
import { syntheticStock } from './synthetic-stock.ts';

const SIZES = [2_000, 20_000, 100_000, 200_000];
const QUERIES = 1_000;
const OTHER_QUERIES = 200;
const LIMIT = 20;
const MOST_P99 = 5;

/** What people type: words from what the bag says, a part number half typed, a bag number, a box. */
function queriesOf(stock: Stock, count: number): string[] {
  const chance = seeded(7);
  return Array.from({ length: count }, () => {
    const bag = chance.pick(stock.bags);
    const words = bag.part.text.split(' ');
    const roll = chance.next();
    if (roll < 0.1) return String(bag.number);
    if (roll < 0.15) return `${bag.box} ${chance.pick(words)}`;
    const number = bag.part.facts.partNumber?.value;
    if (number && roll < 0.6) return number.slice(0, chance.whole(3, number.length));
    if (roll < 0.7) return chance.pick(words);
    const from = chance.whole(0, Math.max(0, words.length - 2));
    return words.slice(from, from + chance.whole(2, 3)).join(' ');
  });
}

/** Every full answer answers each word, by a number, a fact or a word of the bag; and something is found. */
function check(index: FindIndex, queries: readonly string[]): void {
  for (const query of queries.slice(0, 200)) {
    const found = find(index, query, { limit: LIMIT });
    expect(found.length > 0, `'${query}' finds nothing`);
    expect(found[0]?.full ?? false, `'${query}' is not answered in full`);
    for (const { why, full } of found)
      expect(!full || why.every(({ code }) => code !== 'without'), `'${query}' has a full answer without a word`);
  }
}

async function measure(size: number, tell: (progress: string) => void): Promise<Measured[]> {
  tell(`find: making ${size} bags`);
  const stock = syntheticStock(size);
  const began = performance.now();
  const index = buildIndex(stock);
  const built = performance.now() - began;
  const queries = queriesOf(stock, QUERIES);
  tell(`find: checking ${size} bags`);
  check(index, queries);
  tell(`find: asking ${size} bags`);
  const ours = timed(queries, (query) => find(index, query, { limit: LIMIT }));
  tell(`find: the same in SQLite FTS5, ${size} bags`);
  const fullText = openFullText(stock);
  const some = queries.slice(0, OTHER_QUERIES);
  const other = timed(some, (query) => fullText.ranked(query, LIMIT));
  const unranked = timed(some, (query) => fullText.unranked(query, LIMIT));
  fullText.close();
  const ratio = quantile(other, 0.99) / quantile(ours, 0.99);
  const target = size <= 100_000 ? `p99 < ${MOST_P99} ms, faster` : 'faster';
  const ok = ratio > 1 && (size > 100_000 || quantile(ours, 0.99) < MOST_P99);
  return [
    {
      what: `find in ${size} bags (index ${Math.round(built)} ms)`,
      ours: spread(ours),
      other: `${spread(other)} (unranked ${spread(unranked)})`,
      ratio: `${ratio.toFixed(1)} × at p99`,
      target,
      ok,
    },
  ];
}

export const bench: Bench = {
  name: 'find',
  about:
    'typed words to ranked bags, p50 / p99; other: SQLite FTS5 in memory on the same data and queries (unicode61 with prefix index 2 3, ranked by bm25 as ours are ranked; trigram was twice as slow; without ranking in brackets)',
  async run(tell) {
    const rows: Measured[] = [];
    for (const size of SIZES) rows.push(...(await measure(size, tell)));
    return rows;
  },
};
