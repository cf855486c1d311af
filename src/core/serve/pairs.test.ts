import assert from 'node:assert/strict';
import { test } from 'node:test';
import { readPart } from '#core/part/read-part.ts';
import { PAIRS } from './pairs.data.ts';
import { serve } from './serve.ts';

void test('what is read of a bag and of a line is answered as a careful engineer would', () => {
  const wrong = PAIRS.flatMap(([right, bag, line]) => {
    const { verdict } = serve(readPart(bag).part, readPart(line).part);
    return right.split(' ').includes(verdict) ? [] : [`${bag} for ${line}: ${verdict}, not ${right}`];
  });
  assert.deepEqual(wrong, []);
});

void test('a part that is asked for in its own words is found, unless nothing but its sort is known', () => {
  const bags = [...new Set(PAIRS.map(([, bag]) => bag))];
  const lost = bags.filter((text) => serve(readPart(text).part, readPart(text).part).verdict === 'missing');
  assert.deepEqual(lost, []);
});
