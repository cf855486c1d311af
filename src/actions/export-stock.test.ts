import assert from 'node:assert/strict';
import { test } from 'node:test';
import * as fc from 'fast-check';
import { partCode } from '#core/part/part-code.ts';
import { readPart } from '#core/part/read-part.ts';
import type { Bag } from '#core/stock/stock.ts';
import { exportLines } from './export-stock.ts';
import { planImport } from './plan-import.ts';
import { readFile } from './read-file.ts';

const WORDS = [
  '4k7 1% 0805',
  '100n 50V X7R 0603',
  'BC547B TO-92',
  'M3x8 screw',
  'LED red 3mm',
  'Total length 3',
  '=SUM(A1)',
  '-5 V regulator',
  "'quoted",
  'jack, 3.5" mono',
  'two\nlines',
  ' blanks ',
  '',
  'Resistors',
  'qté 5 Ω µ',
];
const text = fc.oneof(
  fc.constantFrom(...WORDS),
  fc.string({ unit: 'grapheme', maxLength: 20 }).filter((one) => !/[\p{Cc}\ufffd]/u.test(one)),
);
const words = fc.option(
  fc.oneof(fc.constantFrom('A', '12', 'top left', '-3', '@home', "'7"), text).filter((one) => one.trim() === one && one !== ''),
  { nil: null },
);

const bag: fc.Arbitrary<Bag> = fc
  .record({
    number: fc.integer({ min: 1, max: 99_999 }),
    text,
    meant: fc.constantFrom(...WORDS),
    box: words,
    place: words,
    onHand: fc.integer({ min: 0, max: 1_000_000 }),
    unsure: fc.integer({ min: 0, max: 50 }),
    state: fc.constantFrom('sound', 'astray', 'salvaged', 'mixed', 'expired'),
    holder: fc.constantFrom('zip-bag', 'reel', 'cell'),
    unit: fc.constantFrom('piece', 'mm', 'mg'),
    toCount: fc.boolean(),
  })
  .map(({ number, text: said, meant, onHand, unsure, ...more }): Bag => {
    const part = { ...readPart(meant).part, text: said };
    return {
      id: `b${number}`,
      number,
      partId: 'p',
      code: partCode(part),
      part,
      onHand,
      sure: Math.max(0, onHand - unsure),
      reserved: 0,
      oldest: null,
      ...more,
    };
  });

const kept = ({ number, box, place, part, onHand, sure, state, holder, unit, toCount }: Bag): unknown => ({
  number,
  box,
  place,
  part,
  code: partCode(part),
  onHand,
  sure,
  state,
  holder,
  unit,
  toCount,
});

/** What an empty lab would hold after the list of these bags was taken in. */
function takenIn(bags: readonly Bag[], of = (lines: readonly string[]) => lines): unknown[] {
  const list = `${of([...exportLines({ change: 1, bags, boxes: [] })]).join('\n')}\n`;
  const read = readFile(new TextEncoder().encode(list), 'stock.csv');
  assert.ok(read.ok, read.ok ? '' : JSON.stringify(read.refusal));
  return planImport(read.value.rows, new Set(), null).bags.map(
    ({ row, number, box, place, text: said, quantity, sure, toCount }) => {
      const { state, holder, unit } = row.kept ?? {};
      return {
        number,
        box,
        place,
        part: { ...row.part, text: said },
        code: partCode(row.part),
        onHand: quantity,
        sure,
        state,
        holder,
        unit,
        toCount,
      };
    },
  );
}

void test('law: an export taken in again is the same stock: numbers, places, parts, texts, quantities, states', () => {
  fc.assert(
    fc.property(fc.uniqueArray(bag, { selector: ({ number }) => number, minLength: 1, maxLength: 12 }), (bags) => {
      assert.deepEqual(takenIn(bags), bags.map(kept));
    }),
    { seed: 20_251_125, numRuns: 300 },
  );
});

void test('a row that a person adds to an export is read as in any list; a text is no formula', () => {
  const [one] = fc.sample(bag, { seed: 7, numRuns: 1 });
  assert.ok(one);
  const added = takenIn([{ ...one, number: 5 }], (lines) => [...lines, '9,B,12,,BC547B TO-92,40,,,,,,,,,']);
  assert.deepEqual(
    added.map((line) => (line as { number: number }).number),
    [5, 9],
  ); // as: `takenIn` makes them so
  const [, line = ''] = exportLines({ change: 1, bags: [{ ...one, part: { ...one.part, text: '=1+1' } }], boxes: [] });
  assert.match(line, /,'=1\+1,/);
});
