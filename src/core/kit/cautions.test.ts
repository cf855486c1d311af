import assert from 'node:assert/strict';
import { test } from 'node:test';
import { readPart } from '#core/part/read-part.ts';
import { cautionsOf } from './cautions.ts';

const told = (text: string): readonly string[] => cautionsOf(readPart(text).part);

void test('a part that can harm nobody has no caution', () => {
  for (const text of [
    '4k7 1% 0805 resistor',
    'leaded resistor 10k 1/4W',
    'lead-free solder wire 0.5 mm',
    'unleaded solder Sn99Cu1',
    'fuse holder 5x20',
    'battery charger IC 4.2V',
    'relay 5V DC coil',
    'transformer 12V AC 500mA',
    'varistor 14V',
    'capacitor 100nF X7R 250V 1206',
    'connector 60/40 mm solder tail',
    'non-leaded solder 0.5 mm',
  ])
    assert.deepEqual(told(text), [], text);
});

void test('fuses and cells are told by their kind, whatever their words', () => {
  for (const text of ['fuse T2A 250V 5x20', 'Sicherung F500mA']) assert.deepEqual(told(text), ['fuses'], text);
  for (const text of ['battery CR2032 3V', '18650 Li-ion battery 3.7V']) assert.deepEqual(told(text), ['cells'], text);
});

void test('mains is told by an AC voltage of 100 V or more, a safety class, a varistor for the mains, or words of a relay', () => {
  for (const text of [
    'capacitor 100nF X2 275VAC',
    'capacitor 2.2nF Y1 ceramic',
    'varistor 275V AC 14mm',
    'varistor 275V 14mm',
    'switch 250VAC 3A',
    'relay 5V coil, 10A 250VAC contacts',
    'transformer 230V AC to 12V',
    'mains transformer 9V',
    'Netztransformator 12V',
    'IEC mains inlet 10A',
  ])
    assert.deepEqual(told(text), ['mains'], text);
});

void test('leaded solder is told by its words only', () => {
  for (const text of ['solder Sn63Pb37 0.5 mm', 'solder wire 60/40 1 mm', 'leaded solder 0.7 mm', 'Lötzinn Sn60Pb40'])
    assert.deepEqual(told(text), ['leaded'], text);
});
