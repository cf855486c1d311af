import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import { dielectricFit, losesHalf, losesUnderBias, readDielectric, type Dielectric } from '#core/part/dielectric.ts';
import { readPart } from '#core/part/read-part.ts';
import { serve } from '#core/serve/serve.ts';

function rows(name: string): string[][] {
  const text = readFileSync(new URL(`./data/${name}.csv`, import.meta.url), 'utf8').trim();
  return text.split(/\r?\n/).map((line) => line.split(','));
}

const of = (code: string): Dielectric => {
  const found = readDielectric(code);
  assert.ok(found, code);
  return found;
};

void test('each code by its meaning', () => {
  for (const [code = '', kind, low, high, down, up, coefficient, spread, old] of rows('codes').slice(1)) {
    const found = of(code);
    assert.equal(found.class, Number(kind), code);
    if (found.coefficient) {
      const [least, most] = found.coefficient;
      assert.deepEqual([(least + most) / 20, (most - least) / 20], [Number(coefficient), Number(spread)], code);
      // the old names say the coefficient: N750 is −750, P100 is +100
      const [, sign, figures] = /^([NP])(\d+)$/.exec(old ?? '') ?? [];
      if (figures) assert.equal((least + most) / 20, (sign === 'N' ? -1 : 1) * Number(figures), code);
    } else {
      assert.deepEqual([found.low, found.high], [Number(low), Number(high)], code);
      assert.deepEqual([found.down / 1e5, found.up / 1e5], [Number(down), Number(up)], code);
    }
  }
});

void test('every pair of the order: computed from the codes, and by the verdict on two capacitors', () => {
  const [[, ...asked] = [], ...table] = rows('order');
  let compared = 0;
  for (const [has = '', ...cells] of table)
    cells.forEach((cell, i) => {
      const wanted = asked[i] ?? '';
      const right = cell === '1' ? (has === wanted ? 'same' : 'serves') : 'falls-short';
      assert.equal(dielectricFit(has, wanted), right, `${has} for ${wanted}`);
      const { verdict } = serve(readPart(`100nF 50V ${has} 0805`).part, readPart(`100nF 50V ${wanted} 0805`).part);
      assert.equal(verdict, { same: 'exact', serves: 'serves', 'falls-short': 'missing' }[right], `${has} for ${wanted}`);
      compared += 1;
    });
  assert.equal(compared, 17 * 17);
});

void test('the least and most that tolerance and change leave of a capacitance', () => {
  for (const [nominal, code = '', below, above, least, most] of rows('capacitance').slice(1)) {
    const { down, up } = of(code);
    const about = (is: number, right: string | undefined): void => assert.ok(Math.abs(is / Number(right) - 1) < 1e-9, code);
    about(Number(nominal) * (1 - Number(below) / 100) * (1 - down / 1e7), least);
    about(Number(nominal) * (1 + Number(above) / 100) * (1 + up / 1e7), most);
  }
  // 30 ppm/K over 100 K
  assert.equal(of('C0G').up, 0.003 * 1e7);
});

void test('codes of IEC are near to those of EIA, never the same', () => {
  const near = [
    ['2R1', 'X7R'],
    ['X7R', '2R1'],
    ['2R2', 'X5R'],
    ['2X1', 'X7R'],
    ['UJ', 'U2J'],
    ['2E6', 'Z5U'],
  ] as const;
  for (const [has, asked] of near) assert.equal(dielectricFit(has, asked), 'close', `${has} for ${asked}`);
  // ±15 % is well within ±20 %; ±22 % is not, though tables set X7S beside 2C1
  assert.equal(dielectricFit('X7R', '2C1'), 'serves');
  assert.equal(dielectricFit('X7S', '2C1'), 'falls-short');
  assert.equal(dielectricFit('C0G', 'CH'), 'serves');
  assert.equal(dielectricFit('CH', 'C0G'), 'falls-short');
});

void test('five spellings of one code, codes that nobody explains alike, and what bias and cold take', () => {
  for (const code of ['NPO', 'NP0', 'COG', 'C0G', 'CG']) assert.equal(dielectricFit(code, 'C0G'), 'same', code);
  for (const code of ['X3R', 'C4G', 'C9G', 'B', 'BJ', 'X7RV', '', 'toString']) assert.equal(readDielectric(code), null, code);
  assert.deepEqual(['Y5V', 'Y5U', 'Z5U', 'Z5V', 'X7U', '2F4', 'X7T', 'X8L', 'X7R', 'C0G'].map(losesHalf), [
    true,
    true,
    true,
    true,
    true,
    true,
    false,
    false,
    false,
    false,
  ]);
  assert.deepEqual(['X7R', 'Y5V', '2C1', 'C0G', 'U2J', 'SL'].map(losesUnderBias), [true, true, true, false, false, false]);
});
