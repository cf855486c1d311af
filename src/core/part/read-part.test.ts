import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { decimal } from '#core/quantity/decimal.ts';
import type { PartHints } from './hints.ts';
import { readPart } from './read-part.ts';

/** `kind value unit | facts` of a reading, and its doubts. */
function read(text: string, hints?: PartHints): string {
  const { part, doubts } = readPart(text, hints);
  const facts = Object.values(part.facts)
    .filter((fact) => fact?.origin === 'stated')
    .map((fact) => `${fact?.key}=${fact?.value}`);
  return [part.kind, ...facts, ...doubts.map((doubt) => `?${doubt.field}:${doubt.code}`)].join(' ');
}

function says(text: string, ...wanted: string[]): void {
  const got = read(text).split(' ');
  for (const one of wanted) assert.ok(got.includes(one), `${text}: wanted ${one}, read ${got.join(' ')}`);
}

void test('a description states kind, value, tolerance, ratings and size', () => {
  says('RES SMD 8.2K OHM 1% 1/8W 0805', 'resistor', 'value=82e2', 'tolerance-low=1e-2', 'power=125e-3', 'package=0805');
  says(
    'CAP CER 2.2UF 16V X5R 0603',
    'capacitor',
    'value=22e-7',
    'voltage=16e0',
    'dielectric=X5R',
    'technology=ceramic',
    'package=0603',
  );
  says('CRYSTAL 12MHZ 18PF HC49/US', 'crystal', 'value=12e6', 'package=HC-49US');
  says(
    '3n3/100V/C0G/1206/5%',
    'capacitor',
    'value=33e-10',
    'voltage=1e2',
    'dielectric=C0G',
    'package=1206',
    'tolerance-high=5e-2',
  );
});

void test('words of the trade are known in the languages of Europe and in Japanese', () => {
  for (const text of [
    'Metallschichtwiderstand 4,7 kΩ',
    'Résistance 4,7 kΩ',
    'Resistencia 4k7',
    'Resistenza 4k7',
    'Weerstand 4k7',
    'Vastus 4k7',
    'Motstånd 4k7',
    '抵抗 4.7kΩ',
  ])
    says(text, 'resistor', 'value=47e2');
  for (const text of [
    'Keramikkondensator 100nF',
    'Condensateur céramique 100 nF',
    'Condensatore ceramico 100nF',
    'Condensador cerámico 0,1 µF',
    'Keramische condensator 100n',
    'Kondensaattori 100nF',
    'コンデンサ 0.1μF',
  ])
    says(text, 'capacitor', 'value=1e-7');
});

void test('the head of a description says the kind, the rest narrows it', () => {
  says('ferrite bead 220R@100MHz', 'ferrite', 'value=22e1');
  says('LED driver 20 mA', 'ic');
  says('USB cable 1 m', 'wire');
  says('IC socket DIP-8', 'connector');
  says('Resistor 4k7, pull-up for DS18B20', 'resistor', 'value=47e2');
});

void test('a known series says the kind and is the part number', () => {
  says('BC547B', 'transistor', 'partNumber=BC547B');
  says('IRF 640', 'mosfet', 'partNumber=IRF640');
  says('1N5819 DO-41', 'diode', 'partNumber=1N5819', 'package=DO-41');
  says('STM32F030K6-LQFP32', 'ic', 'partNumber=STM32F030K6', 'package=LQFP-32');
});

void test('a bare number in a value cell has the unit of its kind, with a doubt where it is not plain', () => {
  assert.equal(read('', { refs: ['R7'], fields: { value: '470' } }), 'resistor value=47e1');
  assert.equal(read('', { refs: ['R7'], fields: { value: '4.7' } }), 'resistor value=47e-1 ?value:unit-assumed');
  assert.equal(read('', { refs: ['C7'], fields: { value: '0.1' } }), 'capacitor value=1e-7 ?value:unit-assumed');
});

void test('a printed code is read only where no value can look so', () => {
  assert.equal(read('', { refs: ['C1'], fields: { value: '104' } }), 'capacitor value=1e-7');
  assert.match(read('', { refs: ['C1'], fields: { value: '47K' } }), /value=47e-12 .*\?value:code-assumed/);
});

void test('a range or a list of values states none', () => {
  for (const text of ['Elko 470, 1000 uF', 'Widerstand zwischen 10 Ohm und 1 MOhm', 'pot 10k to 50k', 'resistor 20-50 ohm'])
    assert.match(read(text), /^[a-z]+( technology=\S+)? \?value:range$/, text);
});

void test('what only an ordering code says is decoded, not stated', () => {
  const { part } = readPart('', { refs: ['R1'], fields: { partNumber: 'RC0805FR-0733KL' } });
  assert.equal(part.facts.value?.origin, 'decoded');
  assert.equal(part.facts.value?.value, '33e3');
  assert.equal(part.facts.partNumber?.origin, 'stated');
});

void test('two places that disagree give a doubt on the field', () => {
  assert.match(read('', { refs: ['R1'], fields: { value: '10k', description: 'RES 12K OHM 5% 0603' } }), /\?value:conflict/);
  assert.match(
    read('', { refs: ['R1'], fields: { value: '10k', footprint: 'R0603', description: 'RES 10K OHM 0805' } }),
    /package=0603.*\?package:conflict/,
  );
});

void test('a value that names a use is no value', () => {
  assert.equal(
    read('', { refs: ['D3'], fields: { value: '12V', footprint: 'LED_SMD:LED_0805_2012Metric' } }),
    'led package=0805',
  );
  assert.equal(
    read('', {
      refs: ['J2'],
      fields: { value: 'Motor 24V', footprint: 'Connector_PinHeader_2.54mm:PinHeader_1x02_P2.54mm_Vertical' },
    }).split(' ')[0],
    'header',
  );
});

void test('reading never throws, and says the same each time', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'grapheme', maxLength: 60 }), fc.string({ maxLength: 20 }), (text, cell) => {
      assert.deepEqual(readPart(text), readPart(text));
      readPart(text, { refs: [cell], fields: { value: text, partNumber: cell, footprint: text } });
    }),
    { seed: 7351 },
  );
});

void test('a heading states ratings for the kind that it names, and for no other', () => {
  assert.match(
    read('', { refs: [], fields: { value: '4k7', context: 'Resistors 1/4W 5%' } }),
    /^resistor value=47e2 .*power=25e-2/,
  );
  assert.equal(read('', { refs: ['C1'], fields: { value: '10u', context: 'Lamp 12V, revision 3' } }), 'capacitor value=1e-5');
});

void test('commas part a description, and size, value and rating are all read', () => {
  says('Resistor, 0603, 10K, 1%, 1/10W', 'value=1e4', 'package=0603', 'tolerance-low=1e-2', 'power=1e-1');
  says('積層セラミックコンデンサ 0.1μF 50V', 'capacitor', 'technology=ceramic', 'voltage=5e1');
});

void test('a fuse and a tactile switch are named by their measures in a cell of footprints too', () => {
  const pack = (refs: string, value: string, footprint: string): string | undefined =>
    readPart('', { refs: [refs], fields: { value, footprint } }).part.facts.package?.value;
  assert.equal(pack('F1', 'Fuse T1A 250V', '5x20'), '5x20');
  assert.equal(pack('SW1', 'Tactile switch', '6x6'), '6x6');
  assert.equal(pack('SW1', 'Tactile switch', '6 x 6 mm'), '6x6');
  assert.equal(pack('R1', '10k', '6x6'), undefined);
});

void test('a regulator or logic gate called by figures alone has a type number, and no voltage of thousands', () => {
  // common practice, no source
  for (const [value, kind] of [
    ['7805', 'regulator'],
    ['7912', 'regulator'],
    ['4093', 'ic'],
    ['7400', 'ic'],
  ] as const) {
    const { part } = readPart('', { refs: ['U1'], fields: { value } });
    assert.deepEqual([part.kind, part.facts.partNumber?.value, part.facts.value], [kind, value, undefined]);
  }
});

void test('10M of an inductor is a mark in microhenry, and the other reading is told', () => {
  // IEC 60062, letters of tolerance: M is ±20 %; all capitals make M milli too (common practice, no source)
  const { part, doubts } = readPart('', { refs: ['L1'], fields: { value: '10M' } });
  assert.equal(part.facts.value?.value, decimal('1e-5'));
  assert.deepEqual(
    doubts.map(({ field, code }) => [field, code]),
    [['value', 'code-assumed']],
  );
});
