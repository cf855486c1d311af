import assert from 'node:assert/strict';
import { test } from 'node:test';
import { withDoubts } from '#core/part/doubted.ts';
import { partCode } from '#core/part/part-code.ts';
import { readPart } from '#core/part/read-part.ts';
import { syntheticStock } from '../../../bench/synthetic-stock.ts';
import { sayPart } from './said.ts';

const said = (text: string): [string, string] => {
  const { name, rest } = sayPart(readPart(text).part);
  return [name.replaceAll('\u202f', ' '), rest.replaceAll('\u202f', ' ')];
};

void test('a part is said by what a person picks it out by, then by the rest', () => {
  const cases: readonly (readonly [text: string, name: string, rest: string])[] = [
    ['4k7 1% 0805 1/8W thick film resistor', '4.7 kΩ ±1 %', 'Resistor 0805, 125 mW, thick film'],
    ['100n 50V X7R 10% 0805', '100 nF 50 V X7R', 'Capacitor 0805, ceramic, ±10 %'],
    ['0.47F 5.5V supercap radial', '0.47 F 5.5 V', 'Capacitor, supercapacitor, radial'],
    ['100n X2 275VAC film pitch 15mm (mains)', '100 nF X2 275 V AC', 'Capacitor, pitch 15 mm, film'],
    ['screw M3x8 pan head A2', 'M3 × 8 pan head', 'Screw, stainless steel'],
    ['screw 4-40 x 1/4"', '4-40 × 6.35 mm', 'Screw'],
    ['lock nut M3', 'M3', 'Lock nut'],
    ['standoff M3x6 nylon male-female', 'M3 × 6', 'Standoff, nylon, male–female'],
    ['LM35DZ TO-92', 'LM35DZ', 'Sensor TO-92'],
    ['BC547B TO-92 NPN', 'BC547B', 'Transistor TO-92, NPN'],
    ['box header 2x5 2.54mm', '2 × 5, 2.54 mm', 'Box header'],
    ['screw terminal 2 pin 5.08mm (for the mains side)', 'Screw terminal 2 pin 5.08mm', 'Connector'],
    ['screw terminal 3 pin 3,5mm TerminalBlock:TerminalBlock_1x03_P3.5mm', 'Screw terminal 3 pin 3,5mm', 'Connector'],
    ['fuse T 100mA 250V 5x20', 'T 100 mA 250 V', 'Fuse 5 × 20'],
    ['crystal 16MHz 18pF 30ppm HC-49S', '16 MHz ±30 ppm', 'Crystal HC-49S, 18 pF load'],
    ['LED red 3mm', 'LED red', 'LED 3 mm'],
    ['solder Sn99Cu1 0.7mm', 'Solder Sn99Cu1 0.7mm', 'Other part'],
    ['whatever came last', 'Whatever came last', 'Other part'],
  ];
  for (const [text, ...expected] of cases) assert.deepEqual(said(text), expected, text);
});

void test('what was read with a doubt says so', () => {
  const { part, doubts } = readPart('47K 50V X7R');
  assert.match(sayPart(withDoubts(part, doubts)).rest, /value in doubt$/);
});

void test('no part of a large stock is said with a hole, and parts of two codes are not said alike', () => {
  const byWords = new Map<string, Set<string>>();
  for (const { part } of syntheticStock(3_000, 11).bags) {
    const { name, rest } = sayPart(part);
    assert.doesNotMatch(`${name}|${rest}`, /undefined|null|NaN| {2}|^\||, ,|,$/);
    const code = partCode(part);
    byWords.set(`${name}|${rest}`, (byWords.get(`${name}|${rest}`) ?? new Set()).add(code));
  }
  assert.deepEqual(
    [...byWords].filter(([, codes]) => codes.size > 1).map(([words, codes]) => [words, ...codes]),
    [],
  );
});
