import assert from 'node:assert/strict';
import { test } from 'node:test';
import type { Fact, FactKey, Kind, Part } from '#core/part/part.ts';
import { readPart } from '#core/part/read-part.ts';
import { decimal } from '#core/quantity/decimal.ts';
import type { Bag } from '#core/stock/stock.ts';
import { buildIndex } from './find-index.ts';
import { find, type Found } from './find.ts';

type Rows = Partial<Record<FactKey, string | readonly [number | string, string]>>;

function part(kind: Kind, text: string, rows: Rows): Part {
  const facts: Partial<Record<FactKey, Fact>> = {};
  for (const [name, row] of Object.entries(rows)) {
    const key = name as FactKey; // as: the keys of `Rows` are fact keys
    facts[key] =
      typeof row === 'string'
        ? { key, value: row, unit: null, origin: 'stated' }
        : { key, value: decimal(row[0]), unit: row[1], origin: 'stated' };
  }
  return { kind, facts, text };
}

function bag(number: number, code: string, part: Part, more: Partial<Bag> = {}): Bag {
  return {
    id: `b${number}`,
    number,
    partId: `p${number}`,
    code,
    part,
    holder: 'zip-bag',
    unit: 'piece',
    box: 'A',
    place: `A-${number}`,
    state: 'sound',
    onHand: 100,
    sure: 100,
    reserved: 0,
    oldest: null,
    toCount: false,
    ...more,
  };
}

const BAGS = [
  bag(1, 'R-0805-4K7-F', part('resistor', '4k7 1% metal film', { value: [4700, 'ohm'], package: '0805', maker: 'Norvik' })),
  bag(2, 'R-0603-4K7-F', part('resistor', '4k7 1%', { value: [4700, 'ohm'], package: '0603' })),
  bag(3, 'R-0805-4K64-F', part('resistor', '4k64 1%', { value: [4640, 'ohm'], package: '0805' })),
  bag(
    4,
    'C-0603-100N-X7R-50V',
    part('capacitor', '100nF 50V', { value: ['1e-7', 'F'], package: '0603', voltage: [50, 'V'], dielectric: 'X7R' }),
  ),
  bag(
    5,
    'C-0603-100N-X7R-16V',
    part('capacitor', '100nF 16V', { value: ['1e-7', 'F'], package: '0603', voltage: [16, 'V'], dielectric: 'X7R' }),
  ),
  bag(6, 'LM358DR', part('ic', 'dual op amp', { partNumber: 'LM358DR', package: 'SOIC-8', maker: 'Tessaro' }), {
    box: 'Ceres',
    place: 'drawer 9',
    suppliers: ['Brightwell Trading'],
  }),
  bag(7, 'R-0805-4K7-J', part('resistor', '4k7 5%', { value: [4700, 'ohm'], package: '0805' }), { onHand: 0, sure: 0 }),
  bag(8, 'R-0805-4K7-G', part('resistor', '4k7 2%', { value: [4700, 'ohm'], package: '0805' }), { state: 'astray' }),
  bag(120, 'S-M3-8', part('screw', 'screw M3x8', { thread: 'M3', length: ['8e-3', 'm'] })),
  bag(121, 'L-100N', part('inductor', 'air coil', { value: ['1e-7', 'H'] })),
];
const INDEX = buildIndex({ change: 1, bags: BAGS, boxes: [] });

const ask = (words: string): Found[] => find(INDEX, words);
const numbers = (words: string): number[] => ask(words).map(({ bag }) => bag.number);
const full = (words: string): number[] =>
  ask(words)
    .filter((one) => one.full)
    .map(({ bag }) => bag.number);
const codesOf = (words: string, number: number): string[] =>
  ask(words)
    .find(({ bag }) => bag.number === number)
    ?.why.map(({ code }) => code) ?? [];

void test('a bag is found by its number, and that comes first', () => {
  for (const typed of ['6', '#6', 'bag 6']) assert.equal(numbers(typed)[0], 6, typed);
  assert.deepEqual(numbers('bag 6'), [6]);
  assert.deepEqual(codesOf('6', 6), ['bag-number']);
});

void test('the same value in any notation finds the same bags', () => {
  for (const typed of ['4k7', '4K7', '4.7k', '4,7k', '4.7 k', '4.7 kΩ', '4700 ohm', '4700Ω', '0.0047M']) {
    assert.deepEqual(
      full(typed).toSorted((a, b) => a - b),
      [1, 2, 7, 8],
      typed,
    );
  }
});

void test('first what answers all, then a near value or another package; astray and exhausted bags last', () => {
  assert.deepEqual(full('4k7 0805'), [1, 8, 7]);
  assert.deepEqual(numbers('4k7 0805').slice(0, 3), [1, 3, 2]);
  assert.deepEqual(numbers('4k7 0805').slice(-2), [8, 7]);
  assert.deepEqual(codesOf('4k7 0805', 3), ['near', 'fact']);
  assert.deepEqual(codesOf('4k7 0805', 2), ['fact', 'other']);
  assert.deepEqual(codesOf('4k7 0805', 7), ['fact', 'fact', 'exhausted']);
});

void test('a value that two kinds have finds both', () => {
  assert.deepEqual(
    full('100n').toSorted((a, b) => a - b),
    [4, 5, 121],
  );
  assert.deepEqual(
    full('100nF').toSorted((a, b) => a - b),
    [4, 5],
  );
});

void test('a higher rating answers too, after the one asked for', () => {
  assert.deepEqual(full('100nF 16V'), [5, 4]);
  assert.deepEqual(codesOf('100nF 16V', 4), ['fact', 'betters']);
  assert.deepEqual(full('100nF 50V'), [4]);
});

void test('bounds are written in words or as signs', () => {
  for (const typed of ['100nF at least 25 V', '100nF over 25V', '100nF ≥ 25V', '100nF >=25V', 'capacitor from 25 V'])
    assert.deepEqual(full(typed), [4], typed);
  assert.deepEqual(full('capacitor up to 16 V'), [5]);
});

void test('a part number is found from its beginning, and from its digits', () => {
  for (const typed of ['LM358DR', 'lm358', 'LM35', '358', 'lm 358'.replace(' ', '-')]) assert.equal(full(typed)[0], 6, typed);
  assert.deepEqual(codesOf('lm358dr', 6), ['part-number']);
  assert.deepEqual(codesOf('lm358', 6), ['part-number-has']);
});

void test('a part code, whole or begun, says more than the facts read from it', () => {
  assert.equal(numbers('R-0603-4K7-F')[0], 2);
  assert.deepEqual(full('C-0603-100N'), [4, 5]);
});

void test('box, place, maker and supplier find a bag', () => {
  assert.deepEqual(full('box Ceres'), [6]);
  assert.deepEqual(full('ceres'), [6]);
  assert.deepEqual(full('drawer 9'), [6]);
  assert.deepEqual(full('norvik 4k7'), [1]);
  assert.deepEqual(full('brightwell'), [6]);
  assert.deepEqual(codesOf('brightwell', 6), ['supplier']);
});

void test('a slip of the pen is read as what was meant, and said', () => {
  assert.deepEqual(numbers('norivk'), [1]);
  assert.deepEqual(ask('norivk')[0]?.why, [{ code: 'meant', args: { typed: 'norivk', word: 'norvik' } }]);
  assert.equal(ask('norivk')[0]?.full, false);
});

void test('a word that no bag has stops nothing and is said', () => {
  assert.deepEqual(full('lm358 flurb'), []);
  assert.deepEqual(codesOf('lm358 flurb', 6), ['part-number-has', 'without']);
  assert.deepEqual(numbers('flurb'), []);
  assert.deepEqual(numbers('  '), []);
});

void test('a thread with a length is one thing; another length is near', () => {
  assert.deepEqual(full('M3x8'), [120]);
  assert.deepEqual(numbers('M3x10'), [120]);
  assert.deepEqual(full('M3x10'), []);
});

void test('no more than the limit is answered, the best of them', () => {
  assert.deepEqual(
    find(INDEX, '4k7', { limit: 1 }).map(({ bag }) => bag.number),
    [1],
  );
  assert.deepEqual(find(INDEX, '4k7', { limit: 0 }), []);
});

void test('figures as they are printed on a part find its value beside the number; a letter in front stands for the point', () => {
  const r = (number: number, value: number): Bag => bag(number, 'R', part('resistor', 'r', { value: [value, 'ohm'] }));
  const c = (number: number, value: string): Bag => bag(number, 'C', part('capacitor', 'c', { value: [value, 'F'] }));
  const stock = [r(1, 4700), r(2, 472), r(3, 10_000), c(4, '47e-10'), c(5, '1e-7'), r(6, 100_000), r(472, 1)];
  const index = buildIndex({ change: 1, bags: stock, boxes: [] });
  const found = (words: string): number[] =>
    find(index, words)
      .filter(({ full }) => full)
      .map((one) => one.bag.number);
  assert.deepEqual(found('472'), [472, 1, 2, 4]);
  assert.deepEqual(found('103'), [3]);
  assert.deepEqual(found('104'), [5, 6]);
  assert.deepEqual(found('u1'), [5]);
});

void test('elko finds what is electrolytic, in whatever words the bag says it', () => {
  const caps = ['100u 25V electrolytic', '10uF 50V elko radial', '47uF 16V aluminium', '100n 50V X7R 0603'].map((text, at) =>
    bag(at + 1, 'C', readPart(text, { kind: 'capacitor' }).part),
  );
  const index = buildIndex({ change: 1, bags: caps, boxes: [] });
  for (const words of ['elko', 'Elko', 'elkos', 'electrolytic'])
    assert.deepEqual(
      find(index, words).map((one) => one.bag.number),
      [1, 2, 3],
      words,
    );
});
