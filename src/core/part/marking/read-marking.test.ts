import assert from 'node:assert/strict';
import { test } from 'node:test';
import { decimal } from '#core/quantity/decimal.ts';
import type { MarkingRead, Reading } from './marking.ts';
import { readMarking, type MarkingLook } from './read-marking.ts';

type Look = MarkingLook['look'];

const read = (text: string, look: Look): readonly Reading[] => readMarking(text, { look: look ?? null }).readings;
/** Value, and plausibility, of each reading in its order. */
const values = ({ readings }: MarkingRead): string[] =>
  readings.map(({ facts, plausible }) => `${Number(facts.value?.value)} ${facts.value?.unit} ${plausible}`);
const shown = (text: string, look: Look): string[] => values(readMarking(text, { look: look ?? null }));

void test('figures on a chip: the last one counts the noughts', () => {
  // makers' sheets; IEC 60062 clause 7 by secondary sources
  assert.deepEqual(shown('472', 'chip'), ['4700 ohm likely']);
  assert.deepEqual(shown('4992', 'chip'), ['49900 ohm likely']);
  assert.deepEqual(shown('100', 'chip'), ['10 ohm likely']);
  assert.ok(read('100', 'chip')[0]?.evidence.some(({ code }) => code === 'nought-adds-none'));
  for (const link of ['0', '000', '0000']) assert.deepEqual(shown(link, 'chip'), ['0 ohm likely'], link);
});

void test('four figures prove no tolerance', () => {
  // 5 % parts of the larger sizes carry four figures too: a maker's sheet
  assert.equal(read('1001', 'chip')[0]?.facts['tolerance-low'], undefined);
});

void test('10R is 10 ohm or 1.24 ohm of the three-character code, and each says that R has two meanings', () => {
  // IEC 60062:2016, clause on E96 marking; the clash is counted out
  assert.deepEqual(shown('10R', 'chip'), ['10 ohm likely', '1.24 ohm possible']);
  assert.deepEqual(shown('22R', 'chip'), ['22 ohm likely', '1.65 ohm possible']);
  for (const { evidence } of read('10R', 'chip')) assert.ok(evidence.some(({ code }) => code === 'r-two-ways'));
});

void test('figures that begin with a nought are only sure as the three-character code', () => {
  assert.deepEqual(shown('01C', 'chip'), ['10000 ohm likely']);
  assert.deepEqual(shown('010', 'chip'), ['1 ohm unlikely']);
  assert.deepEqual(shown('01R', 'chip'), ['1 ohm possible', '1 ohm unlikely']);
});

void test('what is no code of the 96 is not read, nor is the scheme with the letter in front', () => {
  assert.equal(readMarking('97A', { look: 'chip' }).unread?.code, 'no-notation');
  assert.equal(readMarking('00A', { look: 'chip' }).unread?.code, 'no-notation');
  assert.equal(readMarking('A55', { look: 'chip' }).unread?.code, 'other-scheme');
});

void test('a line under the figures is not read', () => {
  // makers mark shunts or 1 % parts with it, each their own way: common practice, no source
  assert.equal(readMarking('101', { look: 'chip', underlined: true }).unread?.code, 'underlined');
  assert.equal(readMarking('1\u03320\u03321', { look: 'chip' }).unread?.code, 'underlined');
});

void test('a chip may lie upside down', () => {
  // common practice, no source: makers print no dot that tells up from down
  assert.deepEqual(shown('911', 'chip'), ['910 ohm likely', '11000000 ohm possible']);
  assert.deepEqual(
    read('911', 'chip').map(({ evidence }) => evidence.some(({ code }) => code === 'turned')),
    [false, true],
  );
  assert.deepEqual(shown('910', 'chip'), ['91 ohm likely'], 'no mark begins with a nought');
  assert.deepEqual(shown('101', 'chip'), ['100 ohm likely'], 'the same either way up');
});

void test('K on a capacitor is a tolerance: 47K is 47 pF, on a chip 47 kilohm', () => {
  // IEC 60062 clause 5; public guides
  const [disc] = read('47K', 'capacitor');
  assert.deepEqual([disc?.facts.value?.value, disc?.facts['tolerance-low']?.value], [decimal('47e-12'), decimal('0.1')]);
  assert.deepEqual(shown('47K', 'capacitor'), ['4.7e-11 F likely']);
  assert.deepEqual(shown('47K', 'chip'), ['47000 ohm likely']);
  assert.deepEqual(shown('104K', 'capacitor'), ['1e-7 F likely']);
});

void test('a letter that is a multiplier and a tolerance gives both readings', () => {
  assert.deepEqual(shown('100K', 'chip'), ['100000 ohm likely', '10 ohm possible']);
  assert.deepEqual(shown('10M', null).slice(0, 3), ['10000000 ohm likely', '1e-11 F likely', '0.00001 F likely']);
});

void test('D is half a picofarad below 10 pF, half a percent above, and either at 10 pF', () => {
  // IEC 60062 table of tolerances against makers' ordering pages, which put 10 pF on either side
  const tolerance = (text: string): string[] =>
    read(text, 'capacitor')
      .filter(({ notation }) => notation === 'three-figures' || notation === 'npu-point')
      .map(({ facts }) => `${facts['tolerance-low']?.value} ${facts['tolerance-low']?.unit}`);
  assert.deepEqual(tolerance('9p3D'), ['5e-13 F']);
  assert.deepEqual(tolerance('120D'), ['5e-3 fraction']);
  assert.deepEqual(tolerance('100D'), ['5e-3 fraction', '5e-13 F']);
  for (const one of read('100D', 'capacitor')) assert.notEqual(one.plausible, 'likely');
});

void test('figures without a unit: pF where whole, µF with a point; four of them both ways', () => {
  // public guides on capacitor marking
  assert.deepEqual(shown('2200', 'capacitor'), ['2.2e-9 F likely', '2.2e-10 F possible']);
  assert.deepEqual(shown('470', 'capacitor'), ['4.7e-11 F likely', '4.7e-10 F possible']);
  assert.equal(shown('.022K', 'capacitor')[0], '2.2e-8 F likely');
  assert.equal(shown('0.47', 'capacitor')[0], '4.7e-7 F likely');
  assert.equal(shown('0,47', 'capacitor')[0], '4.7e-7 F likely');
});

void test('a rated voltage stands in front as a code, or behind as a code or in volts', () => {
  const volts = (text: string, look: Look): number => Number(read(text, look)[0]?.facts.voltage?.value);
  assert.equal(volts('2A474J', 'capacitor'), 100);
  assert.equal(volts('104K1H', 'capacitor'), 50);
  assert.equal(volts('.1K63', 'capacitor'), 63);
  assert.equal(volts('103M 1KV', 'capacitor'), 1000);
  assert.equal(volts('100 16V', 'can'), 16);
  assert.deepEqual(shown('100 16V', 'can'), ['0.0001 F likely', '1e-11 F unlikely']);
});

void test('the letter of a tantalum chip is its voltage, hardly a tolerance', () => {
  // makers' sheets, from memory
  assert.deepEqual(
    read('107C', 'can').map(({ facts, plausible }) => [Number(facts.voltage?.value), plausible]),
    [
      [16, 'likely'],
      [Number.NaN, 'possible'],
    ],
  );
});

void test('a letter that only makers define leaves the tolerance open', () => {
  const [one] = read('104P', 'capacitor');
  assert.equal(one?.facts['tolerance-low'], undefined);
  assert.ok(one?.evidence.some(({ code }) => code === 'letter-by-maker'));
});

void test('micro is one letter, however it is encoded', () => {
  // Unicode: U+00B5 and U+03BC
  for (const text of ['1\u00b50', '1\u03bc0', '1u0', '1U0']) assert.equal(shown(text, 'capacitor')[0], '0.000001 F likely', text);
});

void test('M for micro and m for milli are read only with all that speaks against them', () => {
  assert.deepEqual(shown('M47', 'capacitor'), ['4.7e-7 F unlikely']);
  assert.deepEqual(shown('1m0', 'can'), ['0.001 F possible']);
  assert.deepEqual(shown('1m', 'chip'), ['1000000 ohm possible', '0.001 ohm possible']);
});

void test('coils are in µH, with N in nH', () => {
  // makers' sheets, from memory
  assert.deepEqual(shown('101', 'coil'), ['0.0001 H likely']);
  assert.deepEqual(shown('4R7', 'coil'), ['0.0000047 H likely']);
  assert.deepEqual(shown('4N7', 'coil'), ['4.7e-9 H likely']);
  assert.deepEqual(shown('470', 'coil'), ['0.000047 H likely', '0.00047 H possible']);
});

void test('a K behind a value on a resistor is a tolerance at best', () => {
  // IEC 60062 clauses 4 and 5: value, then tolerance; too easily a slip of the pen to be likely
  assert.deepEqual(shown('4k7k', 'chip'), ['4700 ohm possible']);
});

void test('what the standard does not define is not read', () => {
  for (const text of ['R', 'K', '4R7R', '', 'zzz', '4.7K'])
    assert.deepEqual(readMarking(text, { look: 'chip' }).readings, [], text);
  assert.equal(readMarking('1'.repeat(10_000)).unread?.code, 'too-long');
});
