import assert from 'node:assert/strict';
import { test } from 'node:test';
import { demandKey } from './demand-key.ts';
import { partCode } from './part-code.ts';
import { readPart } from './read-part.ts';
import { writeValue } from './write-value.ts';

const code = (text: string): string => partCode(readPart(text).part);

void test('the code names kind, package, value, tolerance and rating', () => {
  assert.equal(code('4k7 1% 0805 resistor'), 'R-0805-4K7-F');
  assert.equal(code('capacitor 100nF X7R 50V 0805'), 'C-0805-100N-X7R-50V');
  assert.equal(code('BC547B TO-92'), 'Q-TO-92-BC547B');
  assert.equal(code('Elko 4700 uF 25V'), 'C-4700U-25V-EL');
});

void test('notations of one part give one code and one demand', () => {
  const same = ['4k7 1% 0805 resistor', 'RES 4.7K OHM 1% 0805', 'Widerstand 4,7 kΩ ±1 % 0805', 'resistor 4700R 1% 0805'].map(
    (text) => readPart(text).part,
  );
  assert.equal(new Set(same.map(partCode)).size, 1);
  assert.equal(new Set(same.map(demandKey)).size, 1);
  assert.deepEqual(new Set(same.map(writeValue)), new Set(['4.7 kΩ']));
});

void test('a fact that tells parts apart is in the code', () => {
  const texts = [
    'cap 10uF 16V X5R 0805',
    'cap 10uF 25V X5R 0805',
    'cap 10uF 16V X7R 0805',
    'cap 10uF 16V X5R 1206',
    'cap 10uF 16V X5R 0805 10%',
    'tantalum 10uF 16V',
    'Elko 10uF 16V',
    'LED red 0805',
    'LED green 0805',
    'header 1x4 2.54mm',
    'header 1x4 2mm',
    'screw M3x8',
    'screw M3x10',
  ];
  assert.equal(new Set(texts.map(code)).size, texts.length);
});
