import type { ReadRow } from '#core/bom/bom.ts';
import { matchBom, type MatchedLine } from '#core/bom/match.ts';
import { buildIndex } from '#core/find/find-index.ts';
import { serve } from '#core/serve/serve.ts';
import type { Stock } from '#core/stock/stock.ts';
import { expect, milliseconds, quantile, timed, type Bench, type Measured } from './bench.ts';
import { seeded } from './seeded.ts';
import { syntheticPart } from './synthetic-part.ts';
import { syntheticStock } from './synthetic-stock.ts';

const SIZES = [2_000, 20_000, 100_000, 200_000];
const LINES = 300;
const ROUNDS = 9;
const CHECKED_LINES = 5;
const MOST = 100;

/** A BOM of parts such as the lab has, half of them taken from its bags. */
export function syntheticBom(stock: Stock, lines: number): ReadRow[] {
  const chance = seeded(11);
  return Array.from({ length: lines }, (_, at) => ({
    row: at + 2,
    refs: Array.from({ length: chance.whole(1, 8) }, (_, ref) => `X${at}_${ref}`),
    quantity: null,
    fitted: true,
    part: chance.next() < 0.5 ? chance.pick(stock.bags).part : syntheticPart(chance),
    location: null,
    supplier: null,
    doubts: [],
  }));
}

/** What a search through all bags says: the numbers of those that serve, sorted. */
function bySearch(stock: Stock, { part }: ReadRow): number[] {
  return stock.bags
    .filter((bag) => bag.state !== 'astray' && serve(bag.part, part).verdict !== 'missing')
    .map(({ number }) => number);
}

function same(matched: MatchedLine | undefined, numbers: readonly number[]): boolean {
  const mine = (matched?.candidates ?? []).map(({ bag }) => bag).toSorted((a, b) => a - b);
  return mine.length === numbers.length && mine.every((number, at) => number === numbers[at]);
}

function measure(size: number, tell: (progress: string) => void): Measured {
  tell(`match: making ${size} bags`);
  const stock = syntheticStock(size);
  const index = buildIndex(stock);
  const lines = syntheticBom(stock, LINES);
  tell(`match: ${LINES} lines against ${size} bags, then ${CHECKED_LINES} of them by looking through all bags`);
  const times = timed(Array.from({ length: ROUNDS }), () => matchBom(lines, index, [], 10));
  const matched = matchBom(lines, index, [], 10);
  const start = performance.now();
  const searched = lines.slice(0, CHECKED_LINES).map((line) => bySearch(stock, line));
  const whole = ((performance.now() - start) / CHECKED_LINES) * LINES;
  searched.forEach((numbers, at) =>
    expect(same(matched[at], numbers), `row ${lines[at]?.row} differs from a search through all bags`),
  );
  const ours = quantile(times, 0.5);
  const target = size <= 100_000 ? `< ${MOST} ms` : '';
  return {
    what: `${LINES} lines in ${size} bags`,
    ours: milliseconds(ours),
    other: milliseconds(whole),
    ratio: `${Math.round(whole / ours)} ×`,
    target,
    ok: size > 100_000 || ours < MOST,
  };
}

export const bench: Bench = {
  name: 'match',
  about:
    'a BOM of 300 lines put against the bags, median of 9, each the quickest of three; other: every line judged against every bag (reckoned from 5 lines), which is also the check',
  run: (tell) => Promise.resolve(SIZES.map((size) => measure(size, tell))),
};
