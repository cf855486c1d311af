import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import { areaOfAwg, wireSizesClash } from '#core/part/mechanical/wire-size.ts';
import { readPart } from '#core/part/read-part.ts';
import { decimal, toNumber } from '#core/quantity/decimal.ts';
import { serve } from '#core/serve/serve.ts';

const ROWS = readFileSync(new URL('./data/awg.csv', import.meta.url), 'utf8')
  .trim()
  .split(/\r?\n/)
  .slice(1)
  .map((line) => line.split(','));
const variant = (text: string): string | undefined => readPart(text).part.facts.variant?.value;

// ASTM B258
void test('every gauge is read, before and behind its letters, and has its area', () => {
  assert.equal(ROWS.length, 44);
  for (const [awg = '', , , area = ''] of ROWS) {
    assert.equal(variant(`wire AWG ${awg}`), `awg${awg}`);
    assert.equal(variant(`${awg} AWG wire`), `awg${awg}`);
    assert.equal(areaOfAwg(awg), decimal(area));
  }
});

void test('the areas follow the formula of the standard to four figures', () => {
  for (const [awg = '', n = ''] of ROWS) {
    const diameter = 0.127 * 92 ** ((36 - Number(n)) / 39);
    const area = areaOfAwg(awg);
    assert.ok(area !== null && Math.abs(toNumber(area) / ((Math.PI / 4) * diameter ** 2) - 1) < 2e-4, awg);
  }
});

// IEC 60228 against ASTM B258: AWG 20 is near 0.5 mm², AWG 16 is not 1.5 and AWG 14 is not 2.5
void test('a gauge is never the same as a size in mm²; the near one is a check, another is missing', () => {
  const verdict = (bag: string, line: string): string => serve(readPart(bag).part, readPart(line).part).verdict;
  assert.equal(verdict('wire AWG 20 red', 'wire 0,5 mm² red'), 'check');
  assert.equal(verdict('wire AWG 24 red', 'wire 0,5 mm² red'), 'missing');
  assert.equal(verdict('wire 1,5 mm² red', 'wire AWG 16 red'), 'missing');
  assert.equal(verdict('wire 2,5 mm² red', 'wire AWG 14 red'), 'missing');
  assert.equal(verdict('wire AWG 24 red', 'wire AWG 24 red'), 'exact');
  assert.equal(wireSizesClash(['awg18'], ['0.75mm2']), false);
});

// common practice, no source
void test('a size in mm² beside its own gauge only explains it', () => {
  assert.equal(variant('wire AWG 24 (0,2 mm²)'), variant('wire 24 AWG'));
  assert.equal(variant('wire AWG 24 1,5 mm²'), '1.5mm2 awg24');
  assert.equal(variant('wire 0,50 mm²'), variant('Draht 0.5 mm2'));
});
