import assert from 'node:assert/strict';
import { test } from 'node:test';
import { partCode } from '#core/part/part-code.ts';
import type { Part } from '#core/part/part.ts';
import { readPart } from '#core/part/read-part.ts';
import { PAIRS } from '#core/serve/pairs.data.ts';
import { serve } from '#core/serve/serve.ts';
import type { Bag } from '#core/stock/stock.ts';
import { candidates } from './candidates.ts';
import { buildIndex } from './find-index.ts';

const PARTS = [...new Set(PAIRS.flatMap(([, bag, line]) => [bag, line]))].map((text) => readPart(text).part);

function bagOf(part: Part, at: number): Bag {
  return {
    id: `bag-${at + 1}`,
    number: at + 1,
    partId: `part-${at + 1}`,
    code: partCode(part),
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

void test('of parts as people write them, none that may serve is left out of the candidates', () => {
  const bags = PARTS.map(bagOf);
  const index = buildIndex({ change: 1, bags, boxes: [] });
  const lost = PARTS.flatMap((asked) => {
    const found = new Set(candidates(index, asked));
    return bags
      .filter((bag) => !found.has(bag) && serve(bag.part, asked).verdict !== 'missing')
      .map((bag) => `${bag.part.text} for ${asked.text}`);
  });
  assert.deepEqual(lost, []);
});

void test('parts of one code serve each other', () => {
  const byCode = new Map<string, Part[]>();
  for (const part of PARTS) byCode.set(partCode(part), [...(byCode.get(partCode(part)) ?? []), part]);
  const apart = [...byCode].flatMap(([code, [first, ...others]]) =>
    others.flatMap((other) =>
      first && serve(first, other).verdict === 'missing' ? [`${code}: ${first.text}, ${other.text}`] : [],
    ),
  );
  assert.deepEqual(apart, []);
});
