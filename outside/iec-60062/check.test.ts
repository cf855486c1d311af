import assert from 'node:assert/strict';
import { test } from 'node:test';
import { readBands, writeBands } from '#core/part/marking/bands.ts';
import { COLOURS, COLOUR_ROWS, type Colour } from '#core/part/marking/colours.data.ts';
import { readMarking } from '#core/part/marking/read-marking.ts';
import { decimal, multiply, toNumber } from '#core/quantity/decimal.ts';
import { readFigures, readRkm } from '#core/quantity/mark.ts';
import { leadingRkmAt, quantityAt } from '#core/quantity/quantity.ts';
import { readToleranceLetter, writeToleranceLetter } from '#core/quantity/tolerance.ts';
import { rowsOf } from '../rows-of.ts';

const rows = (name: string): string[][] => rowsOf(import.meta.url, name);

void test('each letter-and-digit code reads to the printed value, alone and in a text', () => {
  for (const [code = '', unit = '', value = ''] of rows('rkm')) {
    assert.equal(readRkm(code), decimal(value), code);
    const inText = quantityAt(code, 0) ?? leadingRkmAt(code, 0);
    if (!code.includes('L')) assert.equal(inText?.value, decimal(value), `${code} in a text (${unit})`);
  }
});

void test('codes that the standard does not define are not read', () => {
  for (const code of ['4k7k', 'R', 'K', '4R7R', '47', '', '4.7K']) assert.equal(readRkm(code), null, code);
});

void test('each tolerance letter reads to the printed limits, and is written for them', () => {
  for (const [letter = '', low = '', high = '', picofarad = ''] of rows('tolerance')) {
    const read = readToleranceLetter(letter);
    assert.deepEqual(
      [read && toNumber(read.low) * 100, read && toNumber(read.high) * 100].map((one) => Number(one?.toPrecision(6))),
      [Number(low), Number(high)],
      letter,
    );
    assert.equal(read && writeToleranceLetter(read), letter);
    if (picofarad)
      assert.equal(readToleranceLetter(letter, decimal('4.7e-12'))?.low, decimal(`${picofarad}e-12`), `${letter} under 10 pF`);
  }
});

void test('each mark reads to the printed value', () => {
  for (const [mark = '', of, value = ''] of rows('marks'))
    assert.equal(readFigures(mark, of === 'capacitor'), decimal(value), `${mark} on a ${of}`);
});

const LOOKS = {
  resistor: { look: 'chip', scale: '1' },
  capacitor: { look: 'capacitor', scale: '1e-12' },
  inductor: { look: 'coil', scale: '1e-6' },
} as const;

void test('each mark is the most plausible reading on its part, or one of its readings', () => {
  for (const [mark = '', of = '', value = ''] of rows('marks')) {
    const { look, scale } = LOOKS[of as keyof typeof LOOKS]; // as: the file names these three
    const [first] = readMarking(mark, { look }).readings;
    assert.equal(first?.facts.value?.value, multiply(decimal(value), decimal(scale)), `${mark} on a ${of}`);
  }
});

void test('what is printed on capacitors reads to the printed value, tolerance and voltage', () => {
  for (const [mark = '', value = '', low = '', high = '', volt = ''] of rows('printed')) {
    const facts = readMarking(mark, { look: 'capacitor' }).readings[0]?.facts;
    assert.equal(facts?.value?.value, multiply(decimal(value), decimal('1e-12')), mark);
    assert.equal(facts?.['tolerance-low']?.value ?? '', low && multiply(decimal(low), decimal('0.01')), mark);
    assert.equal(facts?.['tolerance-high']?.value ?? '', high && multiply(decimal(high), decimal('0.01')), mark);
    assert.equal(facts?.voltage?.value ?? '', volt && decimal(volt), mark);
  }
});

void test('each row of bands reads to the printed value, and is written for it', () => {
  for (const [text = '', ohm = '', percent = '', ppm = ''] of rows('bands')) {
    const bands = text.split(' ') as Colour[]; // as: the file names colours
    const one = readBands(bands).readings.find(({ facts }) => facts.value?.value === decimal(ohm));
    assert.ok(one, text);
    assert.equal(one.facts['tolerance-low']?.value ?? '', percent && multiply(decimal(percent), decimal('0.01')), text);
    assert.equal(one.facts['temperature-coefficient']?.value ?? '', ppm && multiply(decimal(ppm), decimal('1e-6')), text);
    const written = writeBands({ kind: 'resistor', text: '', facts: one.facts }).map((way) => way.bands.join(' '));
    assert.ok(written.includes(text), `${text}: ${written.join(' / ')}`);
  }
});

void test('each colour means what the table prints', () => {
  const told = rows('colours');
  assert.deepEqual(new Set(told.map(([colour]) => colour)), new Set<string | undefined>(COLOURS));
  for (const [colour = '', figure = '', power = '', tolerance = '', ppm = ''] of told) {
    const row = COLOUR_ROWS[colour as Colour]; // as: compared above
    assert.deepEqual(
      [row.figure ?? '', String(row.times ?? ''), row.tolerance ?? '', row.temperature ?? ''],
      [figure, power, tolerance, ppm],
      colour,
    );
  }
});
