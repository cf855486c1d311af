import assert from 'node:assert/strict';
import { test } from 'node:test';
import { partCode } from '#core/part/part-code.ts';
import { readPart } from '#core/part/read-part.ts';
import { partKey } from './part-key.ts';

const keyOf = (text: string): string => partKey(readPart(text).part);

void test('things that only words tell apart are never one part, nor have one code', () => {
  const texts = [
    'tactile switch 6x6mm',
    'tactile switch 12x12mm',
    'rotary encoder with push switch',
    'slide switch SPDT',
    'cable gland PG7',
    'cable gland PG9',
    'heat-shrink 2.4mm black',
    'heat-shrink 4.8mm black',
    'coin cell holder 20mm',
    'fuse holder 5x20',
    'DC motor 6V',
    'DC motor 12V',
    'blue frob',
    'green frob',
    'a long description of nothing that any reader knows, in green',
    'a long description of nothing that any reader knows, in brown',
  ];
  assert.equal(new Set(texts.map(keyOf)).size, texts.length);
  const codes = texts.map((text) => partCode(readPart(text).part));
  assert.equal(new Set(codes).size, texts.length, codes.join(' '));
});

void test('the same in other words is one part', () => {
  for (const [one, other] of [
    ['tactile switch 6x6mm', 'Tact switch 6 x 6 mm'],
    ['pin header 2x3 2.54mm', 'header 2x03 2.54'],
    ['fuse T2A 250V 5x20', 'Sicherung T 2A 250V 5x20mm'],
    ['cable gland PG7', 'Cable gland PG 7'],
    ['standoff M3x10 female-female', 'M3 standoff 10mm F/F'],
  ] as const)
    assert.equal(keyOf(one), keyOf(other), one);
});
