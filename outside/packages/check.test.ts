import assert from 'node:assert/strict';
import { test } from 'node:test';
import { readFootprint } from '#core/part/footprint.ts';
import { landPattern } from '#core/part/land-pattern.ts';
import { readPart } from '#core/part/read-part.ts';
import { decimal } from '#core/quantity/decimal.ts';
import { fit } from '#core/serve/outline.ts';
import { USUAL_CHIP_POWER } from '#core/serve/packages.data.ts';
import { rowsOf } from '../rows-of.ts';

const rows = (name: string): string[][] => rowsOf(import.meta.url, name);

const read = (name: string): string => readFootprint(name).name ?? `(${name} is not read)`;

// chip sizes, table 4.1: makers' size tables
void test('every chip size is read by its imperial name, by both together, and as a land pattern by its metric name', () => {
  for (const [imperial = '', metric = ''] of rows('chip-sizes')) {
    assert.equal(read(`R_${imperial}`), imperial);
    if (metric === '') continue;
    assert.equal(read(`R_${imperial}_${metric}Metric`), imperial);
    assert.equal(read(`RESC${metric}X60N`), imperial);
    assert.equal(readPart(`10k resistor ${metric} metric`).part.facts.package?.value, imperial, `${metric} metric`);
  }
});

// same digits, two sizes: table 4.1, last paragraph; common practice is imperial
void test('digits that name two chips are imperial, metric where the text says so, and a doubt where it is unclear', () => {
  for (const [imperial = '', metric = ''] of [
    ['0402', '01005'],
    ['0603', '0201'],
    ['0201', '008004'],
  ]) {
    const plain = readPart(`10k ${imperial} resistor`);
    assert.equal(plain.part.facts.package?.value, imperial);
    assert.equal(readPart(`10k ${imperial} metric resistor`).part.facts.package?.value, metric);
    const unclear = readPart('', { fields: { value: '100n', package: `${imperial}M` }, refs: ['C1'] });
    assert.deepEqual(
      unclear.doubts.map(({ field, code, args }) => [field, code, args['taken'], args['other']]),
      [['package', 'size-metric-or-imperial', imperial, metric]],
    );
  }
  const byNumber = { value: '100n', footprint: 'C0603', partNumber: 'C0603X5R1A104K030BC' };
  assert.equal(readPart('', { fields: byNumber }).part.facts.package?.value, '0201');
  const inInches = { value: '100n', footprint: 'C0603', partNumber: 'C0603C104K5RACTU' };
  assert.deepEqual(readPart('', { fields: inInches }).doubts, []);
});

// one outline, other names: table 4.2 (JEDEC, JEITA and makers' names)
void test('names of one outline are read and are the same outline', () => {
  for (const [common = '', names = ''] of rows('synonyms'))
    for (const name of names.split(' ')) assert.equal(fit(read(name), read(common)), 'same', `${name} is not ${common}`);
});

void test('outlines that only resemble each other are not the same', () => {
  for (const [one = '', other = '', source] of rows('similar'))
    assert.equal(fit(read(one), read(other)), source === 'never' ? 'differs' : 'similar', `${one} and ${other}`);
});

// JEDEC DO-204, table 4.3: smallest, middle and largest body of each
void test('axial diodes are known by lead, length and diameter', () => {
  for (const [name, , ...limits] of rows('axial')) {
    const [lengthFrom = 0, lengthTo = 0, diameterFrom = 0, diameterTo = 0, leadFrom = 0, leadTo = 0] = limits.map((one) =>
      Math.round(Number(one) * 100),
    );
    const pattern = (share: number): string => {
      const at = (from: number, to: number): number => Math.round(from + (to - from) * share);
      return `DIOAD1016W${at(leadFrom, leadTo)}L${at(lengthFrom, lengthTo)}D${at(diameterFrom, diameterTo)}`;
    };
    assert.deepEqual(
      [0, 0.5, 1].map((share) => landPattern(pattern(share))),
      [name, name, name],
    );
  }
});

// IPC-7351B and IPC-7251, table 4.4
void test('land pattern names give their package, whatever their height and density', () => {
  for (const [pattern = '', name = ''] of rows('land-patterns')) {
    assert.equal(landPattern(pattern), name || null, pattern);
    assert.equal(landPattern(pattern.replace(/N$/, 'L')), name || null, pattern);
  }
});

// names in an open footprint library, table 4.5
void test('names of an open footprint library give their package, with and without the name of the library', () => {
  for (const [name = '', expected = ''] of rows('library-names')) {
    assert.equal(readFootprint(name).name, expected || null, name);
    assert.equal(readFootprint(`Some_Library:${name}`).name, expected || null, name);
  }
});

// tantalum case letters, table 4.1: letters differ by maker, the metric body and height do not
void test('a tantalum case is read by body and height, and is never the ceramic chip of the same digits', () => {
  for (const [, metric = '', height = ''] of rows('cases')) {
    const { part } = readPart(`10uF 16V tantalum ${metric}-${height}`);
    assert.equal(part.facts.package?.value, `EIA-${metric}`, `${metric}-${height}`);
    assert.equal(read(`CP_EIA-${metric}-${height}_Case`), `EIA-${metric}`);
  }
});

// one maker's thick film chips at 70 °C, table 4.1
void test('the usual power of a chip is that of the sheet', () => {
  for (const [size = '', watt = ''] of rows('chip-power'))
    assert.equal(decimal(USUAL_CHIP_POWER[size] ?? '0'), decimal(watt), size);
});
