import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { fromDigits, type Decimal } from './decimal.ts';
import { readFigures, readRkm, readUniroyal, readVoltageCode } from './mark.ts';
import { readNumber } from './number.ts';
import { plainText } from './plain-text.ts';
import { leadingRkmAt, quantityAt } from './quantity.ts';
import { readRkmOf, writeRkm } from './rkm.ts';
import { readSuffix } from './suffix.ts';
import { readSum } from './sum.ts';
import { readToleranceLetter } from './tolerance.ts';
import { plainDigits, writeQuantity } from './write-quantity.ts';

const SEED = { seed: 60062, numRuns: 400 };
/** Powers of ten of the values that occur, by unit: 1 µΩ to 999 TΩ, 1 fF to 999 F, … */
const RANGES = { ohm: [-6, 12], F: [-15, 0], H: [-12, 0], Hz: [0, 9], V: [-6, 3], A: [-12, 3], W: [-6, 3] } as const;
type Unit = keyof typeof RANGES;
const UNITS = Object.keys(RANGES) as Unit[]; // as: the keys of the table above
const values = fc.constantFrom(...UNITS).chain((unit) =>
  fc.record({
    unit: fc.constant(unit),
    value: fc
      .tuple(fc.bigInt({ min: 1n, max: 99_999n }), fc.integer({ min: RANGES[unit][0], max: RANGES[unit][1] }))
      .map(([digits, exponent]) => fromDigits(digits, exponent)),
  }),
);

/** Anything a file may hold: halves of characters, marks that join, far scripts, and pieces of what we read. */
const anyText = fc.oneof(
  fc.string({ unit: 'binary', maxLength: 40 }),
  fc.string({ unit: 'grapheme', maxLength: 40 }),
  fc.string({ unit: fc.integer({ min: 0, max: 0xffff }).map((code) => String.fromCharCode(code)), maxLength: 40 }),
  fc
    .array(
      fc.constantFrom(
        '10',
        '4',
        'k',
        'K',
        'M',
        'µ',
        '\u03bc',
        'Ω',
        '\u2126',
        'R',
        'E',
        'e-',
        '1e99',
        ',',
        '.',
        ' ',
        "'",
        '±',
        '+',
        '-',
        '/',
        '%',
        'F',
        'H',
        'Hz',
        'W',
        '½',
        '㎌',
        'x',
        '\ufffd',
        '"',
      ),
      { maxLength: 14 },
    )
    .map((pieces) => pieces.join('')),
);

function readsAs(text: string, value: Decimal, unit: Unit): void {
  const plain = plainText(text);
  const back = quantityAt(plain, 0);
  assert.deepEqual([back?.value, back?.unit, back?.end], [value, unit, plain.length], text);
}

void test('what is written for people reads back, whole', () => {
  fc.assert(
    fc.property(values, ({ value, unit }) => readsAs(writeQuantity(value, unit), value, unit)),
    SEED,
  );
});

/** Habits of writing that do not change what is meant; a comma before three figures is left out, since it asks. */
const HABITS: Readonly<Record<string, (written: string) => string>> = {
  'without a blank': (text) => text.replace(' ', ''),
  'decimal comma': (text) => (/\.\d{3}\D/.test(text) ? text : text.replace('.', ',')),
  'u for µ': (text) => text.replace('µ', 'u'),
  'Greek mu, ohm sign': (text) => text.replace('µ', '\u03bc').replace('Ω', '\u2126'),
  'ohm in letters': (text) => text.replace('Ω', 'ohm'),
  'full width': (text) => text.replace(/[!-~]/g, (char) => String.fromCodePoint((char.codePointAt(0) ?? 0) + 0xfee0)),
  'no-break blank': (text) => text.replace(' ', '\u00a0'),
};

for (const [habit, written] of Object.entries(HABITS)) {
  void test(`what is written for people reads back: ${habit}`, () => {
    fc.assert(
      fc.property(values, ({ value, unit }) => readsAs(written(writeQuantity(value, unit)), value, unit)),
      SEED,
    );
  });
}

void test('what is written for codes reads back, in any case', () => {
  fc.assert(
    fc.property(values, ({ value, unit }) => {
      const code = writeRkm(value, unit);
      assert.match(code, /^\d*[A-Z]\d*$/);
      assert.equal(readRkmOf(code, unit), value, code);
      assert.equal(readRkmOf(code.toLowerCase(), unit), value, code);
    }),
    SEED,
  );
});

void test('one value, one code: two values never share one', () => {
  fc.assert(
    fc.property(values, values, (a, b) => {
      fc.pre(a.unit === b.unit && a.value !== b.value);
      assert.notEqual(writeRkm(a.value, a.unit), writeRkm(b.value, b.unit));
      assert.notEqual(writeQuantity(a.value, a.unit), writeQuantity(b.value, b.unit));
    }),
    SEED,
  );
});

void test('plain digits, also with a power of ten, read back', () => {
  fc.assert(
    fc.property(values, ({ value }) => {
      assert.equal(readNumber(plainDigits(value))?.value ?? null, value);
      assert.equal(quantityAt(`${plainDigits(value, 3)}e-3 F`, 0)?.value, value);
    }),
    SEED,
  );
});

void test('reading never throws, and what it takes lies in the text', () => {
  fc.assert(
    fc.property(anyText, fc.nat({ max: 50 }), (text, at) => {
      const plain = plainText(text);
      for (const read of [quantityAt(plain, at), leadingRkmAt(plain, at)])
        if (read) assert.ok(read.start >= at && read.end > read.start && read.end <= plain.length);
      for (const reader of [
        readNumber,
        readSuffix,
        readSum,
        readRkm,
        readFigures,
        readUniroyal,
        readVoltageCode,
        readToleranceLetter,
      ])
        assert.doesNotThrow(() => reader(text));
      for (const unit of UNITS) assert.doesNotThrow(() => readRkmOf(text, unit));
    }),
    { ...SEED, numRuns: 3000 },
  );
});
