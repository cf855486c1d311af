import assert from 'node:assert/strict';
import { test } from 'node:test';
import * as fc from 'fast-check';
import { KINDS, type Fact, type FactKey, type Part } from '#core/part/part.ts';
import { serve } from '#core/serve/serve.ts';
import type { Bag } from '#core/stock/stock.ts';
import { candidates, nearestTo } from './candidates.ts';
import { buildIndex, updateIndex } from './find-index.ts';

const SEED = { seed: 20260105, numRuns: 300 };

/** Few values of every fact, in several spellings, so that parts often meet. */
const POOL: Readonly<Partial<Record<FactKey, readonly (readonly [string, string | null])[]>>> = {
  value: [
    ['1e-7', 'F'],
    ['47e2', 'ohm'],
    ['1e1', 'ohm'],
    ['1e-5', 'H'],
    ['8e6', 'Hz'],
    ['33e-1', 'V'],
  ],
  voltage: [
    ['16e0', 'V'],
    ['5e1', 'V'],
  ],
  current: [
    ['1e0', 'A'],
    ['5e-1', 'A'],
  ],
  'tolerance-high': [
    ['1e-2', 'fraction'],
    ['5e-2', 'fraction'],
  ],
  package: [
    ['0603', null],
    ['SOT-23', null],
    ['TO-236AB', null],
    ['SOIC-8', null],
    ['SOIC', null],
    ['CR2032', null],
  ],
  partNumber: [
    ['LM358', null],
    ['lm358', null],
    ['LM358DR', null],
    ['LM358D/TR', null],
    ['LM3580', null],
    ['SN74HC595N', null],
    ['74HC595', null],
    ['BC547', null],
    ['BC547B', null],
  ],
  thread: [
    ['M3', null],
    ['m3x0.5', null],
    ['M3x0.35', null],
    ['M4', null],
  ],
  length: [
    ['8e-3', 'm'],
    ['1e-2', 'm'],
  ],
  colour: [
    ['red', null],
    ['Red', null],
    ['green', null],
  ],
  pins: [
    ['2e0', 'count'],
    ['8e0', 'count'],
  ],
  dielectric: [
    ['X7R', null],
    ['C0G', null],
  ],
  safety: [['X2', null]],
  variant: [['right angle', null]],
};

const anyFacts: fc.Arbitrary<Part['facts']> = fc
  .tuple(
    ...Object.entries(POOL).map(([key, values]) =>
      fc.option(
        fc.constantFrom(...values).map(([value, unit]): Fact => ({ key: key as FactKey, value, unit, origin: 'stated' })),
        { freq: 2 },
      ),
    ),
  ) // as: keys of the pool are fact keys
  .map((facts) => Object.fromEntries(facts.flatMap((fact) => (fact ? [[fact.key, fact]] : []))));
const anyPart: fc.Arbitrary<Part> = fc.record({
  kind: fc.oneof(
    { weight: 3, arbitrary: fc.constantFrom('resistor', 'capacitor', 'ic', 'screw', 'led') },
    { weight: 2, arbitrary: fc.constantFrom(...KINDS) },
  ),
  facts: anyFacts,
  text: fc.constant(''),
});

function bagOf(part: Part, number: number): Bag {
  return {
    id: `bag-${number}`,
    number,
    partId: `part-${number}`,
    code: '',
    part,
    holder: 'zip-bag',
    unit: 'piece',
    box: null,
    place: null,
    state: 'sound',
    onHand: 1,
    sure: 1,
    reserved: 0,
    oldest: null,
    toCount: false,
  };
}

void test('no bag that serves, or may serve, is missing from the candidates', () => {
  fc.assert(
    fc.property(fc.array(anyPart, { minLength: 1, maxLength: 25 }), anyPart, (parts, asked) => {
      const bags = parts.map((part, at) => bagOf(part, at + 1));
      const found = new Set(candidates(buildIndex({ change: 1, bags, boxes: [] }), asked));
      const wanted = bags.filter((bag) => serve(bag.part, asked).verdict !== 'missing');
      assert.deepEqual(
        wanted.filter((bag) => !found.has(bag)).map((bag) => bag.part),
        [],
      );
    }),
    SEED,
  );
});

void test('a part is a candidate for itself whenever it serves itself', () => {
  fc.assert(
    fc.property(anyPart, (part) => {
      const bag = bagOf(part, 1);
      if (serve(part, part).verdict !== 'missing')
        assert.ok(candidates(buildIndex({ change: 1, bags: [bag], boxes: [] }), part).includes(bag));
    }),
    SEED,
  );
});

void test('candidates of an updated index are those of a rebuilt one', () => {
  fc.assert(
    fc.property(
      fc.array(anyPart, { minLength: 2, maxLength: 15 }),
      fc.array(anyPart, { maxLength: 5 }),
      anyPart,
      (parts, later, asked) => {
        const before = parts.map((part, at) => bagOf(part, at + 1));
        const changed = later.map((part, at) => bagOf(part, at + 2)); // over the old numbers, and beyond them
        const now = [...new Map([...before, ...changed].map((bag) => [bag.id, bag])).values()].filter(({ id }) => id !== 'bag-1');
        const followed = updateIndex(buildIndex({ change: 1, bags: before, boxes: [] }), changed, 2, ['bag-1']);
        const rebuilt = buildIndex({ change: 2, bags: now, boxes: [] });
        const numbers = (bags: readonly Bag[]): number[] => bags.map(({ number }) => number).sort((a, b) => a - b);
        assert.deepEqual(numbers(candidates(followed, asked)), numbers(candidates(rebuilt, asked)));
      },
    ),
    SEED,
  );
});

void test('where no bag has the value, the nearest values of the kind are shown', () => {
  const ohms = (value: string): Part => ({
    kind: 'resistor',
    facts: { value: { key: 'value', value, unit: 'ohm', origin: 'stated' } },
    text: '',
  });
  const bags = ['464e1', '499e1', '1e1'].map((value, at) => bagOf(ohms(value), at + 1));
  assert.deepEqual(
    nearestTo(buildIndex({ change: 1, bags, boxes: [] }), ohms('47e2')).map(({ number }) => number),
    [1, 2],
  );
});
