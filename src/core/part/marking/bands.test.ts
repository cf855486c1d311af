import assert from 'node:assert/strict';
import { test } from 'node:test';
import { readBands, readColour, type BandLook } from './bands.ts';
import type { Colour } from './colours.data.ts';

const colours = (text: string): Colour[] => text.split(' ').map((word) => readColour(word) ?? 'pink');
const shown = (text: string, look?: BandLook): string[] =>
  readBands(colours(text), look).readings.map(
    ({ facts, plausible }) => `${Number(facts.value?.value)} ±${Number(facts['tolerance-low']?.value)} ${plausible}`,
  );
const codes = (text: string, look?: BandLook): string[] =>
  readBands(colours(text), look).readings[0]?.evidence.map(({ code }) => code) ?? [];

void test('bands read from both ends, and the usual value first', () => {
  assert.deepEqual(shown('yellow violet red gold'), ['4700 ±0.05 likely']);
  assert.deepEqual(shown('brown black black red brown'), ['10000 ±0.01 likely', '120 ±0.01 likely']);
  assert.deepEqual(shown('orange orange red'), ['3300 ±0.2 likely', '23000 ±0.2 unlikely']);
});

void test('the wider gap says where the tolerance is', () => {
  assert.deepEqual(shown('brown black black red brown', { gapBefore: 4 }), ['10000 ±0.01 likely', '120 ±0.01 possible']);
  assert.deepEqual(shown('brown black black red brown', { gapBefore: 1 }), ['120 ±0.01 likely', '10000 ±0.01 possible']);
});

void test('gold or silver in front means the other end', () => {
  assert.deepEqual(shown('gold red violet yellow'), ['4700 ±0.05 likely']);
  assert.ok(codes('gold red violet yellow').includes('only-way'));
  assert.deepEqual(shown('silver silver red red'), ['0.22 ±0.1 likely']);
});

void test('grey, orange and yellow as a tolerance are never certain unless the part is known to be old', () => {
  // the colours changed in IEC 60062:2016; older tables give grey ±0.05 %
  for (const colour of ['grey', 'orange', 'yellow']) {
    const one = readBands(colours(`brown black black black ${colour}`)).readings.find(
      ({ facts }) => Number(facts.value?.value) === 100,
    );
    assert.notEqual(one?.plausible, 'likely', colour);
    assert.ok(
      one?.evidence.some(({ code }) => code === 'tolerance-by-edition'),
      colour,
    );
  }
  const old = readBands(colours('brown black black black grey'), { old: true }).readings.find(
    ({ facts }) => Number(facts.value?.value) === 100,
  );
  assert.equal(Number(old?.facts['tolerance-low']?.value), 0.0005);
});

void test('white and black are no tolerance', () => {
  assert.deepEqual(shown('brown black red white'), ['92 ±0.01 possible']);
  assert.equal(readBands(colours('white black red black')).unread?.code, 'band-meaningless');
});

void test('a fifth band after gold or silver may be a special mark', () => {
  // a maker's sheet: four bands and one that tells of reliability or temperature
  assert.deepEqual(shown('brown black black gold brown'), ['10 ±0.01 likely', '10 ±0.05 possible']);
});

void test('a black band alone is a link; two bands are none', () => {
  assert.equal(Number(readBands(['black']).readings[0]?.facts.value?.value), 0);
  assert.equal(readBands(['red', 'red']).unread?.code, 'band-count');
  assert.equal(readBands(['red']).unread?.code, 'band-count');
});

void test('the sixth band is the temperature coefficient', () => {
  const [one] = readBands(colours('brown black black brown brown red')).readings;
  assert.deepEqual([Number(one?.facts.value?.value), Number(one?.facts['temperature-coefficient']?.value)], [1000, 0.00005]);
});

void test('colours are read by their other spellings', () => {
  assert.deepEqual(['Gray', 'purple', 'GOLD'].map(readColour), ['grey', 'violet', 'gold']);
  assert.equal(readColour('teal'), null);
});
