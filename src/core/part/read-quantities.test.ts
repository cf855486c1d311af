import assert from 'node:assert/strict';
import { test } from 'node:test';
import { readPart } from './read-part.ts';

// Common practice, no source, unless a line names one.

/** `kind value?doubts` of a text. */
function read(text: string, refs?: string): string {
  const { part, doubts } = refs === undefined ? readPart(text) : readPart('', { refs: [refs], fields: { value: text } });
  return [part.kind, part.facts.value?.value ?? '–', ...doubts.map(({ code }) => `?${code}`)].join(' ');
}

void test('a link of 0 ohms is a resistor, whatever it is called', () => {
  for (const text of ['0R jumper 0805', 'jumper 0R', 'zero ohm jumper 1206', '0 ohm link', 'resistor 0R 0603', 'Null-Ohm 0805'])
    assert.equal(read(text), 'resistor 0e0', text);
  assert.equal(read('wire jumper'), 'jumper –');
  assert.equal(read('0R', 'R1'), 'resistor 0e0');
});

void test('a count before a value is no part of it', () => {
  for (const text of ['2x10k', '2 x 10k', '2×10kΩ', '4x10k']) assert.equal(read(text, 'R1'), 'resistor 1e4', text);
  for (const text of ['2x100n', '2x100nF', '2 x 100 nF']) assert.equal(read(text, 'C1'), 'capacitor 1e-7', text);
});

void test('a range or a list states no value, and says so', () => {
  for (const text of ['10k-22k', '10k - 22k', '10k…22k', '10k .. 22k', '10k to 22k', '10 bis 22k', '≤ 10k', '10k, 22k'])
    assert.equal(read(text, 'R1'), 'resistor – ?range', text);
});

void test('all capitals: henries and amperes milli, hertz mega, farads ask', () => {
  assert.equal(read('10MH', 'L1'), 'inductor 1e-2');
  assert.equal(read('500MA', 'F1'), 'fuse 5e-1');
  assert.equal(read('16MHZ', 'Y1'), 'crystal 16e6');
  assert.equal(read('0.1MF', 'C1'), 'capacitor 1e-7 ?two-readings');
});

void test('a number as a program writes it is in the unit without prefix, with a doubt', () => {
  assert.equal(read('1E-07', 'C1'), 'capacitor 1e-7 ?unit-assumed');
  assert.equal(read('1e4', 'R1'), 'resistor 1e4 ?unit-assumed');
  assert.equal(read('1E-9F', 'C1'), 'capacitor 1e-9');
  assert.equal(read('10E-5%', 'R1'), 'resistor 1e1', 'E for the ohm, then a tolerance');
});

void test('both ohm signs and units in one character', () => {
  assert.equal(read('4.7k\u2126', 'R1'), 'resistor 47e2');
  assert.equal(read('10㎌', 'C1'), 'capacitor 1e-5');
  assert.equal(read('10 u', 'C1'), 'capacitor 1e-5');
});

void test('± and a fraction of a watt beside the value', () => {
  const facts = readPart('resistor 10k ±5% 1/4W').part.facts;
  assert.deepEqual([facts['tolerance-low']?.value, facts.power?.value], ['5e-2', '25e-2']);
  assert.equal(readPart('10k ½W resistor').part.facts.power?.value, '5e-1');
});
