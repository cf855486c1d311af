import assert from 'node:assert/strict';
import { test } from 'node:test';
import * as fc from 'fast-check';
import { writeValue } from '#core/part/write-value.ts';
import { writeRkm } from '#core/quantity/rkm.ts';
import { numberFact, type Part } from '#core/part/part.ts';
import type { Bag, Stock } from '#core/stock/stock.ts';
import { syntheticStock } from '../../../bench/synthetic-stock.ts';
import { buildIndex, updateIndex, type FindIndex } from './find-index.ts';
import { find } from './find.ts';

const SEED = { seed: 20260107, numRuns: 40 };
const anySeed = fc.integer({ min: 1, max: 1_000_000 });
const stockOf = (seed: number): Stock => syntheticStock(60, seed);

function finds(index: FindIndex, typed: string, bag: Bag): boolean {
  return find(index, typed, { limit: 1_000 }).some((one) => one.bag.id === bag.id && one.full);
}

function each(stock: Stock, typedOf: (bag: Bag) => readonly string[]): void {
  const index = buildIndex(stock);
  for (const bag of stock.bags)
    for (const typed of typedOf(bag))
      assert.ok(finds(index, typed, bag), `'${typed}' does not find ${bag.code} (${bag.part.text})`);
}

void test('every bag is found by its own code', () => {
  fc.assert(
    fc.property(anySeed, (seed) => each(stockOf(seed), (bag) => [bag.code, bag.code.toLowerCase()])),
    SEED,
  );
});

void test('every bag is found by its own number, before any other', () => {
  fc.assert(
    fc.property(anySeed, (seed) => {
      const stock = stockOf(seed);
      const index = buildIndex(stock);
      for (const bag of stock.bags) {
        const found = find(index, `bag ${bag.number}`);
        assert.deepEqual(
          found.map((one) => one.bag.id),
          [bag.id],
        );
        assert.ok(finds(index, String(bag.number), bag));
      }
    }),
    SEED,
  );
});

/** `4.7 kΩ`, `4.7kΩ`, `4,7 kΩ`, `4K7`, `4k7`; units written out where a bare letter would be another thing. */
function notations(part: Part): string[] {
  const value = numberFact(part, 'value');
  if (value === null) return [];
  const unit = part.facts.value?.unit ?? '';
  const written = writeValue(part);
  const rkm = writeRkm(value, unit);
  return [
    written,
    written.replace(' ', ''),
    written.replace('.', ','),
    written.replace('Ω', 'ohm'),
    written.replace('µ', 'u'),
    rkm + (unit === 'ohm' ? '' : unit),
  ];
}

void test('every bag is found by every notation of its value', () => {
  fc.assert(
    fc.property(anySeed, (seed) => each(stockOf(seed), (bag) => notations(bag.part))),
    SEED,
  );
});

void test('every bag is found by its own words, box and place', () => {
  fc.assert(
    fc.property(anySeed, (seed) => each(stockOf(seed), (bag) => [bag.part.text, `box ${bag.box}`, `${bag.box} ${bag.place}`])),
    SEED,
  );
});

void test('an updated index answers as a rebuilt one', () => {
  fc.assert(
    fc.property(
      anySeed,
      anySeed,
      fc.array(fc.nat(59), { maxLength: 12 }),
      fc.array(fc.nat(59), { maxLength: 3 }),
      (seed, otherSeed, changed, gone) => {
        const [stock, other] = [stockOf(seed), stockOf(otherSeed)];
        const news = new Map(changed.map((at) => [at, change(stock.bags[at], other.bags[at])]));
        const left = new Set(gone.map((at) => stock.bags[at]?.id));
        const index = updateIndex(
          buildIndex(stock),
          [...news.values()],
          2,
          stock.bags.filter(({ id }) => left.has(id)).map(({ id }) => id),
        );
        const now = stock.bags.map((bag, at) => news.get(at) ?? bag).filter(({ id }) => !left.has(id));
        const rebuilt = buildIndex({ ...stock, change: 2, bags: now });
        assert.equal(index.change, 2);
        for (const {
          part: { text },
          code,
          number,
        } of [...stock.bags, ...other.bags]) {
          for (const typed of [text, code.slice(0, 6), String(number)])
            assert.deepEqual(find(index, typed), find(rebuilt, typed), typed);
        }
      },
    ),
    { ...SEED, numRuns: 15 },
  );
});

/** The same bag with another quantity, or (every third) with another part. */
function change(bag: Bag | undefined, other: Bag | undefined): Bag {
  if (!bag || !other) throw new Error('both stocks have 60 bags');
  return bag.number % 3 === 0
    ? { ...bag, part: other.part, partId: `other-${other.partId}`, code: other.code }
    : { ...bag, onHand: other.onHand, sure: other.sure, state: other.state };
}
