import assert from 'node:assert/strict';
import { test } from 'node:test';
import type { FoundBag } from '#api/bags.ts';
import { paint, readSeen, recount, writeSeen, type StrayWords } from './place.ts';
import { answerOf, belongs, gapBefore, readSeenPart, saysOf, wordsOf } from './stray.ts';

const seen = (words: StrayWords) => readSeen(words);
const answer = (words: StrayWords) => answerOf(seen(words), readSeenPart(seen(words)));
const bag = (number: number, more: Partial<FoundBag> = {}): FoundBag => ({
  bag: number,
  box: 'A',
  place: null,
  code: 'R-10K',
  text: '10k',
  said: { name: '10 kΩ ±1 %', rest: 'Resistor' },
  unit: 'piece',
  state: 'sound',
  onHand: 5,
  free: 5,
  group: 'typed',
  full: true,
  why: [],
  ...more,
});

void test('what is seen stands in the address and comes back from it; foreign words fall to what it begins with', () => {
  for (const words of [
    {},
    { bands: 'yellow.violet.-.gold', band: '1' },
    { bands: 'yellow.violet.-.gold' },
    { bands: 'brown.black.black.red.brown', gap: 'last', old: '1' },
    { look: 'chip', mark: '10R', line: '1' },
  ])
    assert.deepEqual(writeSeen(seen(words)), words);
  assert.equal(seen({ bands: 'yellow.violet.-.gold' }).band, 3, 'the first that is not set');
  const foreign = seen({ look: 'teapot', bands: 'blue.teal', band: '99', gap: 'middle' });
  assert.deepEqual([foreign.look, foreign.bands, foreign.band, foreign.gap], ['bands', [null, null, null, null], 1, null]);
});

void test('a pointed colour goes on to the next band that is not set, a colour by arrows stays', () => {
  const begun = seen({ bands: 'yellow.-.-.gold', band: '2' });
  assert.deepEqual(paint(begun, 'violet', true), { bands: ['yellow', 'violet', null, 'gold'], band: 3 });
  assert.deepEqual(paint(begun, 'violet', false), { bands: ['yellow', 'violet', null, 'gold'], band: 2 });
  const last = seen({ bands: 'yellow.violet.red.-', band: '4' });
  assert.equal(paint(last, 'gold', true).band, 4);
});

void test('another number of bands keeps those from the left', () => {
  const five = recount(seen({ bands: 'red.red.red.gold', band: '4' }), 5);
  assert.deepEqual(five, { bands: ['red', 'red', 'red', 'gold', null], band: 4 });
  assert.equal(recount(seen({ bands: 'red.red.red.gold', band: '4' }), 3).band, 3);
});

void test('the gap stands before a band of its count', () => {
  assert.equal(gapBefore(seen({ bands: 'brown.black.black.red.brown', gap: 'last' })), 4);
  assert.equal(gapBefore(seen({ bands: 'brown.black.black.red.brown', gap: 'first' })), 1);
  assert.equal(gapBefore(seen({})), null);
});

void test('the answer says what is missing, what is likely, and both where both are', () => {
  assert.equal(answer({}).title, 'What is this stray part?');
  assert.equal(answer({ bands: 'yellow.violet.-.gold' }).title, 'Set band 3 of 4.');
  assert.equal(answer({ bands: 'yellow.violet.red.gold' }).title, 'It is most likely 4.7\u202fkΩ ±5\u202f%.');
  assert.equal(answer({ bands: 'brown.black.black.red.brown' }).title, 'It is 10\u202fkΩ ±1\u202f% or 120\u202fΩ ±1\u202f%.');
  assert.equal(answer({ look: 'capacitor', mark: 'A5' }).title, 'It may be 100\u202fnF, but that is not sure.');
  // grey as a tolerance is never certain, so that the other end is likelier; the first is named all the same
  assert.deepEqual(answer({ bands: 'brown.black.red.grey' }), {
    title: 'It is most likely 82\u202fΩ ±1\u202f%.',
    why: 'It may also be 1\u202fkΩ ±0.01\u202f%. A meter settles the value, not the tolerance.',
  });
  assert.equal(
    answer({ look: 'chip', mark: '10R' }).why,
    'It may also be 1.24\u202fΩ ±1\u202f%. A meter settles the value, not the tolerance.',
  );
  assert.match(answer({ look: 'chip', mark: '472' }).why, /^Measure it before/);
  assert.match(answer({ look: 'chip', mark: '101', line: '1' }).title, /line under or over/);
});

void test('the lab is asked by value and kind, a new bag says the tolerance too', () => {
  const [one] = readSeenPart(seen({ look: 'capacitor', mark: '2A474J' }))?.readings ?? [];
  assert.ok(one);
  assert.equal(wordsOf(one), '470nF capacitor');
  assert.equal(saysOf(one), '470nF 5% 100V capacitor');
});

void test('bags that hold it come before exhausted ones, and those with a caution last', () => {
  const chip = bag(1, { said: { name: '10 kΩ ±1 %', rest: 'Resistor 0805, 125 mW' } });
  const gone = bag(2, { onHand: 0, group: 'exhausted', full: false });
  const other = bag(4, { full: false, group: 'near' });
  const numbers = belongs([chip, gone, other, bag(3)], 'bands').bags.map((one) => [one.bag.bag, one.caution]);
  assert.deepEqual(numbers, [
    [3, null],
    [2, null],
    [1, 'chip'],
  ]);
  assert.equal(belongs([chip], 'chip').bags[0]?.caution, null);
  const mains = bag(5, { said: { name: '2.2 nF Y2 250 V AC', rest: 'Capacitor' } });
  assert.equal(belongs([mains], 'capacitor').bags[0]?.caution, 'safety');
  assert.ok(
    belongs(
      [1, 2, 3, 4].map((number) => bag(number)),
      'chip',
    ).more,
  );
});
