import assert from 'node:assert/strict';
import { test } from 'node:test';
import { readPart } from '#core/part/read-part.ts';
import type { Part } from '#core/part/part.ts';
import { PAIRS } from './pairs.data.ts';
import { pointsOf, worstOf, type Point } from './points.ts';
import { serve } from './serve.ts';

const part = (text: string): Part => readPart(text).part;

/** The points of two texts, by their key. */
function points(has: string, asked: string): Map<string, Point> {
  return new Map(pointsOf(part(has), part(asked)).map((point) => [point.key, point]));
}

void test('the worst point is the verdict, for every pair of the reference and each part of it against each other', () => {
  const parts = [...new Set(PAIRS.flatMap(([, bag, line]) => [bag, line]))].map(part);
  let compared = 0;
  for (const has of parts) {
    for (const asked of parts) {
      const { verdict } = serve(has, asked);
      const found = pointsOf(has, asked);
      assert.equal(worstOf(found), verdict, `${has.text} for ${asked.text}: ${JSON.stringify(found)}`);
      assert.equal(new Set(found.map(({ key }) => key)).size, found.length, `${has.text} for ${asked.text}`);
      compared += 1;
    }
  }
  assert.ok(compared > 10_000, String(compared));
});

void test('a capacitor point by point: what is equal, higher, steadier, not asked', () => {
  const found = points('10uF 25V X7R 0805 10%', '10uF 16V X5R 0805');
  assert.deepEqual(
    [...found.values()].map(({ key, asked, has, fit, word }) => [key, asked, has, fit, word]),
    [
      ['value', '10 µF', '10 µF', 'exact', 'same'],
      ['voltage', '16 V', '25 V', 'serves', 'higher'],
      ['dielectric', 'X5R', 'X7R', 'serves', 'steadier'],
      ['package', '0805', '0805', 'exact', 'same'],
      ['tolerance', null, '±10 %', 'none', 'any'],
    ],
  );
});

void test('what falls short, what is not said, and what says nothing alike', () => {
  assert.deepEqual(points('10uF 10V X5R 0805', '10uF 16V X7R 0805').get('voltage')?.word, 'lower');
  assert.deepEqual(points('10uF 10V X5R 0805', '10uF 16V X7R 0805').get('dielectric')?.word, 'less-steady');
  const silent = points('10uF 0805', '10uF 16V 0805').get('voltage');
  assert.deepEqual(silent, { key: 'voltage', asked: '16 V', has: null, fit: 'check', word: 'not-stated' });
  assert.deepEqual(points('4k7 5% 0805', '4k7 1% 0805').get('tolerance')?.word, 'wider');
  assert.deepEqual(points('4k7 1% 0805', '4k7 5% 0805').get('tolerance')?.word, 'tighter');
  assert.deepEqual(points('4k7 0805', '10uF 16V').get('part')?.fit, 'missing');
});

void test('a part for safety is open where its number is, whatever else agrees', () => {
  const number = points('fuse 1206 500mA', 'fuse 1206 500mA').get('partNumber');
  assert.deepEqual([number?.fit, number?.word], ['check', 'never-swapped']);
});

void test('a part number that is the same settles what is left open; another one is a point of its own', () => {
  const same = points('LM358DR SOIC-8', 'LM358DR');
  assert.deepEqual([same.get('partNumber')?.word, same.get('package')?.word], ['same', 'by-number']);
  assert.deepEqual(points('LM358DR', 'TL072CDR').get('partNumber')?.fit, 'missing');
});
