import assert from 'node:assert/strict';
import { test } from 'node:test';
import { buildIndex } from '#core/find/find-index.ts';
import { demandKey } from '#core/part/demand-key.ts';
import type { Doubt } from '#core/part/doubt.ts';
import type { Fact, FactKey, Kind, Part } from '#core/part/part.ts';
import { decimal } from '#core/quantity/decimal.ts';
import type { Bag } from '#core/stock/stock.ts';
import type { Choice, ReadRow } from './bom.ts';
import { matchBom, type MatchedLine } from './match.ts';

type Rows = Partial<Record<FactKey, string | readonly [number | string, string]>>;

function part(kind: Kind, rows: Rows): Part {
  const facts: Partial<Record<FactKey, Fact>> = {};
  for (const [name, row] of Object.entries(rows)) {
    const key = name as FactKey; // as: the keys of `Rows` are fact keys
    facts[key] =
      typeof row === 'string'
        ? { key, value: row, unit: null, origin: 'stated' }
        : { key, value: decimal(row[0]), unit: row[1], origin: 'stated' };
  }
  return { kind, facts, text: '' };
}

const ohms = (value: number, size: string, more: Rows = {}): Part =>
  part('resistor', {
    value: [value, 'ohm'],
    package: size,
    'tolerance-low': ['0.01', 'fraction'],
    'tolerance-high': ['0.01', 'fraction'],
    ...more,
  });
const farads = (value: string, size: string, more: Rows): Part =>
  part('capacitor', { value: [value, 'F'], package: size, dielectric: 'X7R', ...more });

function bag(number: number, part: Part, more: Partial<Bag> = {}): Bag {
  return {
    id: `b${number}`,
    number,
    partId: `p${number}`,
    code: '',
    part,
    holder: 'zip-bag',
    unit: 'piece',
    box: 'A',
    place: String(number),
    state: 'sound',
    onHand: 100,
    sure: more.onHand ?? 100,
    reserved: 0,
    oldest: null,
    toCount: false,
    ...more,
  };
}

function line(part: Part, more: Partial<ReadRow> = {}): ReadRow {
  return { row: 2, refs: ['R1', 'R2'], quantity: 2, fitted: true, part, location: null, supplier: null, doubts: [], ...more };
}

function match(bags: readonly Bag[], one: ReadRow, choices: readonly Choice[] = [], boards = 1): MatchedLine {
  const [matched] = matchBom([one], buildIndex({ change: 1, bags, boxes: [] }), choices, boards);
  assert.ok(matched);
  return matched;
}

const codes = ({ because }: Pick<MatchedLine, 'because'>): string[] => because.map(({ code }) => code);

void test('the exact bag comes before one that serves', () => {
  const matched = match(
    [
      bag(1, ohms(4700, '0805', { 'tolerance-low': ['0.001', 'fraction'], 'tolerance-high': ['0.001', 'fraction'] })),
      bag(2, ohms(4700, '0805')),
    ],
    line(ohms(4700, '0805')),
  );
  assert.deepEqual(
    matched.candidates.map((one) => [one.bag, one.verdict]),
    [
      [2, 'exact'],
      [1, 'serves'],
    ],
  );
  assert.equal(matched.verdict, 'exact');
  assert.equal(matched.short, 0);
});

void test('the need is boards times refs, or times the quantity where a line has no refs', () => {
  const stock = [bag(1, ohms(10, '0603'), { onHand: 5 })];
  const byRefs = match(stock, line(ohms(10, '0603'), { quantity: 7 }), [], 4);
  assert.deepEqual([byRefs.perBoard, byRefs.need, byRefs.short], [2, 8, 3]);
  const byQuantity = match(stock, line(ohms(10, '0603'), { refs: [], quantity: 7 }), [], 2);
  assert.deepEqual([byQuantity.perBoard, byQuantity.need, byQuantity.short], [7, 14, 9]);
  assert.deepEqual(byQuantity.because.find(({ code }) => code === 'short')?.args, { free: 5, need: 14 });
});

void test('a stated shortfall is missing, with the nearest bag in the reasons', () => {
  const matched = match(
    [bag(7, farads('1e-7', '0603', { voltage: [16, 'V'] }))],
    line(farads('1e-7', '0603', { voltage: [50, 'V'] })),
  );
  assert.equal(matched.verdict, 'missing');
  assert.equal(matched.nearest, 7);
  assert.deepEqual(matched.candidates, []);
  assert.deepEqual(matched.because.find(({ code }) => code === 'nearest')?.args, {
    bag: 7,
    fact: 'voltage',
    has: '16 V',
    asked: '50 V',
  });
  assert.equal(matched.short, 2);
});

void test('where no bag has the value, the nearest value is shown; where nothing is like it, so is said', () => {
  const asked = line(ohms(4700, '0805'));
  const near = match([bag(3, ohms(4640, '0805')), bag(4, ohms(10, '0805'))], asked);
  assert.deepEqual([near.verdict, near.nearest], ['missing', 3]);
  const none = match([bag(4, ohms(10, '0805'))], asked);
  assert.deepEqual([none.verdict, none.nearest, codes(none)], ['missing', null, ['short', 'nothing-like-it']]);
});

void test('a choice by hand comes first and is remembered by what is asked, not by the line', () => {
  const asked = ohms(4700, '0805');
  const stock = [bag(1, asked), bag(2, asked), bag(3, ohms(4700, '1206'))];
  const choice = (number: number, accept = false): Choice => ({ demand: demandKey(asked), bag: number, accept });
  const second = match(stock, line(asked, { row: 9, refs: ['R40'] }), [choice(2)]);
  assert.deepEqual(
    second.candidates.map((one) => [one.bag, one.accepted]),
    [
      [2, true],
      [1, false],
    ],
  );
  assert.equal(codes(second)[0], 'chosen');
  const override = match(stock, line(asked), [choice(3, true)]);
  assert.deepEqual(
    override.candidates.map((one) => [one.bag, one.verdict]),
    [
      [3, 'check'],
      [1, 'exact'],
      [2, 'exact'],
    ],
  );
  assert.deepEqual(codes(override).slice(0, 2), ['chosen', 'accepted']);
});

void test('an astray bag is left out, and said', () => {
  const matched = match([bag(1, ohms(10, '0603'), { state: 'astray' })], line(ohms(10, '0603')));
  assert.equal(matched.verdict, 'missing');
  assert.deepEqual(matched.candidates, []);
  assert.deepEqual(matched.because.find(({ code }) => code === 'astray')?.args, { bag: 1 });
});

void test('salvaged and mixed bags are at most a check, and a check is not counted on', () => {
  const matched = match([bag(1, ohms(10, '0603'), { state: 'salvaged' })], line(ohms(10, '0603')));
  assert.equal(matched.verdict, 'check');
  assert.ok(codes(matched).includes('second-hand'));
  assert.deepEqual(matched.because.find(({ code }) => code === 'may-serve')?.args, { bag: 1 });
  assert.equal(matched.short, 2);
});

void test('a bag with nothing free comes after those that can give', () => {
  const better = ohms(10, '0603', { 'tolerance-low': ['0.001', 'fraction'], 'tolerance-high': ['0.001', 'fraction'] });
  const matched = match([bag(1, ohms(10, '0603'), { onHand: 0 }), bag(2, better)], line(ohms(10, '0603')));
  assert.deepEqual(
    matched.candidates.map((one) => one.bag),
    [2, 1],
  );
  assert.equal(matched.verdict, 'serves');
});

void test('lines that are not fitted or no part need nothing and say so', () => {
  const unfitted = match([bag(1, ohms(10, '0603'))], line(ohms(10, '0603'), { fitted: false }));
  assert.deepEqual([unfitted.need, unfitted.short, codes(unfitted)[0]], [0, 0, 'not-fitted']);
  const heading = match([bag(1, ohms(10, '0603'))], line(part('not-a-part', {})));
  assert.deepEqual([heading.need, heading.short, codes(heading)], [0, 0, ['not-a-part']]);
});

void test('two readings of the line leave a check, a unit taken from the kind leaves serves', () => {
  const doubt = (code: Doubt['code']): Doubt => ({ field: 'value', code, args: { text: '100' } });
  const verdict = (code: Doubt['code']): string =>
    match([bag(1, ohms(100, '0603'))], line(ohms(100, '0603'), { doubts: [doubt(code)] })).verdict;
  assert.equal(verdict('two-readings'), 'check');
  assert.equal(verdict('unit-assumed'), 'serves');
});

void test('a quantity that is not the number of the refs is said, and hardware goes by its quantity', () => {
  const notRefs: Doubt = { field: 'quantity', code: 'quantity-not-refs', args: { quantity: 20, refs: 1 } };
  const doubted = match([bag(1, ohms(10, '0603'))], line(ohms(10, '0603'), { refs: ['R1'], quantity: 20, doubts: [notRefs] }));
  assert.equal(doubted.need, 1);
  assert.deepEqual(doubted.because.find(({ code }) => code === 'quantity-not-refs')?.args, { quantity: 20, refs: 1, need: 1 });
  const screws = match([], line(part('screw', { thread: 'M3' }), { refs: ['H1'], quantity: 4 }), [], 3);
  assert.deepEqual([screws.perBoard, screws.need], [4, 12]);
});

void test('an alternate of the line serves where its own part is not there, and is said', () => {
  const asked = part('transistor', { partNumber: 'BC547B' });
  const other = part('transistor', { partNumber: 'BC550C' });
  const matched = match([bag(4, other)], line(asked, { refs: ['Q1'], quantity: 1, alternates: [{ ...other, text: 'BC550C' }] }));
  assert.deepEqual([matched.verdict, matched.candidates.map((one) => one.bag), matched.short], ['serves', [4], 0]);
  assert.deepEqual(matched.because[0], { code: 'alternate', args: { text: 'BC550C' } });
  const both = match([bag(4, other), bag(5, asked)], line(asked, { alternates: [other] }));
  assert.deepEqual(
    both.candidates.map((one) => [one.bag, one.verdict]),
    [
      [5, 'exact'],
      [4, 'serves'],
    ],
  );
});

void test('a capacitor for the mains comes after every plain one where none is asked, and is never the nearest before a plain one', () => {
  const mains = (value: string): Part => part('capacitor', { value: [value, 'F'], safety: 'X2', voltage: ['275', 'V'] });
  const plain = (value: string, volts: string): Part => part('capacitor', { value: [value, 'F'], voltage: [volts, 'V'] });
  const asked = line(plain('1e-7', '50'));
  const found = match([bag(1, mains('1e-7')), bag(2, plain('1e-7', '100'), { onHand: 0 }), bag(3, plain('1e-7', '63'))], asked);
  assert.deepEqual(
    found.candidates.map((one) => one.bag),
    [3, 2, 1],
  );
  const none = match(
    [
      bag(1, farads('1e-7', '1206', { safety: 'X2', voltage: ['400', 'V'] })),
      bag(2, farads('1e-7', '1206', { voltage: ['50', 'V'] })),
    ],
    line(farads('1e-7', '0805', { voltage: ['400', 'V'] })),
  );
  assert.deepEqual([none.verdict, none.nearest], ['missing', 2]);
});

void test('a bag whose quantity is an estimate stays a candidate, after those that hold something sure, and says so', () => {
  const asked = ohms(4700, '0805');
  const found = match([bag(1, asked, { onHand: 90, sure: 0 }), bag(2, asked, { onHand: 5 })], line(asked));
  assert.deepEqual(
    found.candidates.map((one) => one.bag),
    [2, 1],
  );
  assert.deepEqual(found.candidates[1]?.because.find(({ code }) => code === 'estimate')?.args, { sure: 0, onHand: 90 });
  const alone = match([bag(1, asked, { onHand: 90, sure: 0 })], line(asked));
  assert.deepEqual(
    alone.candidates.map((one) => one.bag),
    [1],
  );
  assert.ok(alone.because.some(({ code }) => code === 'estimate'));
});
