import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { fromDigits } from '#core/quantity/decimal.ts';
import { writeRkm } from '#core/quantity/rkm.ts';
import { writeQuantity } from '#core/quantity/write-quantity.ts';
import { READ_FIELDS } from './hints.ts';
import { readPart } from './read-part.ts';

const SEED = { seed: 4711, numRuns: 600 };
/** Words that are names of every object, halves of characters, long rows of one mark, and pieces of parts. */
const piece = fc.constantFrom(
  '__proto__',
  'constructor',
  'toString',
  'hasOwnProperty',
  '\ud83d',
  '\u0000',
  '\u202e',
  '電',
  '½',
  '㎌',
  '😀',
  '10k',
  '0805',
  '±',
  '+/-',
  '-',
  '/',
  ',',
  '.',
  ' ',
  '%',
  'M3x10',
  'X7R',
  'SOT-23',
  'BC547',
  'RC0805FR-074K7L',
  'e-9',
  '1E-07',
  'http://',
  '(',
);
const anyText = fc.oneof(
  fc.string({ unit: 'binary', maxLength: 80 }),
  fc.array(piece, { maxLength: 16 }).map((pieces) => pieces.join('')),
  fc.tuple(piece, fc.integer({ min: 1, max: 300 })).map(([one, times]) => one.repeat(times)),
);

void test('reading a description never throws', () => {
  fc.assert(
    fc.property(anyText, (text) => {
      assert.equal(typeof readPart(text).part.kind, 'string');
    }),
    SEED,
  );
});

void test('reading a row never throws, whatever stands in its cells', () => {
  const fields = fc.record(Object.fromEntries(READ_FIELDS.map((field) => [field, anyText])), { requiredKeys: [] });
  fc.assert(
    fc.property(anyText, fc.array(anyText, { maxLength: 3 }), fields, (text, refs, cells) => {
      assert.equal(typeof readPart(text, { refs, fields: cells }).part.kind, 'string');
    }),
    SEED,
  );
});

/** What a part of each kind may be worth: the powers of ten that are sold. */
const SOLD = [
  ['resistor', 'R1', 'ohm', -2, 8],
  ['capacitor', 'C1', 'F', -12, -4],
  ['inductor', 'L1', 'H', -9, -7], // from 1 mH a code asks: `10M` may be a tolerance
] as const;

void test('a value written for people or for codes reads back from its cell and from a description, without a doubt', () => {
  fc.assert(
    fc.property(
      fc.constantFrom(...SOLD),
      fc.bigInt({ min: 1n, max: 999n }),
      fc.nat({ max: 10 }),
      ([kind, ref, unit, low, high], digits, up) => {
        const value = fromDigits(digits, Math.min(low + up, high));
        for (const written of [
          writeQuantity(value, unit),
          writeRkm(value, unit).replace('U', 'u').replace('N', 'n').replace('P', 'p'),
        ]) {
          const readings = [readPart('', { refs: [ref], fields: { value: written } })];
          // in free words `R47` may be a reference
          if (/^\d/.test(written)) readings.push(readPart(`${kind} ${written}`, { kind }));
          for (const { part, doubts } of readings) {
            assert.deepEqual([part.kind, part.facts.value?.value, doubts], [kind, value, []], `${kind} ${written}`);
          }
        }
      },
    ),
    SEED,
  );
});
