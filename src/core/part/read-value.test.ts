import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { readValue } from './read-value.ts';

// Common practice, no source.
void test('a value alone is read in any notation, with a doubt where its unit is not said', () => {
  for (const [text, said] of [
    ['9k09', '909e1 ohm'],
    ['9.09 kΩ', '909e1 ohm'],
    ['9,09k', '909e1 ohm'],
    ['R47', '47e-2 ohm'],
    ['0R', '0e0 ohm'],
    ['4M7', '47e5 ohm'],
    ['47', '47e0 ohm ?unit-assumed'],
    ['100n', '1e-7 F ?unit-assumed'],
    ['100 nF', '1e-7 F'],
    ['10MH', '1e-2 H'],
    ['16MHZ', '16e6 Hz'],
    ['0.1MF', '1e-7 F ?two-readings'],
    ['1,500 pF', '15e-10 F ?two-readings'],
    ['5V1', '51e-1 V'],
  ] as const) {
    const read = readValue(text);
    assert.equal([read?.value, read?.unit, ...(read?.doubts ?? []).map(({ code }) => `?${code}`)].join(' '), said, text);
  }
});

void test('more than a value, or none, is not read', () => {
  for (const text of ['', 'resistor', '4k7 0805', '4k7F', '±5%', '10 %', '-5 V', '100 ppm', '10k-22k', '4.7\ufffd', '__proto__'])
    assert.equal(readValue(text), null, text);
});

void test('reading a value never throws', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'binary', maxLength: 30 }), (text) => {
      const read = readValue(text);
      assert.ok(read === null || read.unit !== '');
    }),
    { seed: 909 },
  );
});
