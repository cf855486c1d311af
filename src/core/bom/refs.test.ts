import assert from 'node:assert/strict';
import { test } from 'node:test';
import * as fc from 'fast-check';
import { readRefs } from './refs.ts';

const refs = (text: string): string => readRefs(text).refs.join(' ');
const codes = (text: string): string[] => readRefs(text).doubts.map(({ code }) => code);

void test('ranges, short ranges and every separator of the trade', () => {
  for (const [text, want] of [
    ['R1-R4, R7', 'R1 R2 R3 R4 R7'],
    ['R1-4', 'R1 R2 R3 R4'],
    ['C9, C14-17', 'C9 C14 C15 C16 C17'],
    ['C1;C2 C3', 'C1 C2 C3'],
    ['TP1+TP2', 'TP1 TP2'],
    ['R1–R3', 'R1 R2 R3'],
    ['D1 - D3', 'D1 D2 D3'],
    ['R1…R4', 'R1 R2 R3 R4'],
    ['R1..R3', 'R1 R2 R3'],
    ['C1...C3', 'C1 C2 C3'],
    ['C1…C3', 'C1 C2 C3'],
    ['C1 ... C3, C7', 'C1 C2 C3 C7'],
    ['R1 to R3', 'R1 R2 R3'],
    ['C1,2,5', 'C1 C2 C5'],
    ['JP1/J1', 'JP1 J1'],
    ['C1\nC2', 'C1 C2'],
    ['R08-R11', 'R08 R09 R10 R11'],
    ['LED_RED, RESET_N', 'LED_RED RESET_N'],
    ['R3 (DNP)', 'R3'],
  ] as const) {
    assert.equal(refs(text), want, text);
    assert.deepEqual(codes(text), [], text);
  }
});

void test('units of one part are one part', () => {
  assert.equal(refs('U1A,U1B'), 'U1');
  assert.equal(refs('U1A U1B U2'), 'U1 U2');
  assert.equal(refs('U3A'), 'U3A');
});

void test('a backward or mixed range gives none, with a doubt', () => {
  assert.deepEqual([refs('R10-R8'), codes('R10-R8')], ['', ['ref-unreadable']]);
  assert.deepEqual([refs('R1-C3, R7'), codes('R1-C3, R7')], ['R7', ['ref-unreadable']]);
});

void test('a reference named twice counts once, with a doubt', () => {
  assert.deepEqual([refs('R1,R1,R2'), codes('R1,R1,R2')], ['R1 R2', ['ref-twice']]);
});

void test('a range without end is refused, not expanded', () => {
  assert.equal(readRefs('R1-R999999999').tooMany, 'R1-R999999999');
  assert.equal(readRefs('R1-R10000').tooMany, null);
});

void test('marks for no reference give none; words beside a reference are kept apart', () => {
  for (const none of ['', '-', '—', 'n/a', '~', 'REF**'])
    assert.deepEqual(readRefs(none), { refs: [], rest: '', doubts: [], tooMany: null }, none);
  assert.deepEqual([refs('X2 USB mini-B'), readRefs('X2 USB mini-B').rest], ['X2', 'USB mini-B']);
  assert.deepEqual([refs('U1 socket'), readRefs('U1 socket').rest], ['', 'U1 socket']);
});

void test('law: references written with any separator, or as ranges, read back', () => {
  const some = fc.uniqueArray(fc.integer({ min: 1, max: 60 }), { minLength: 1, maxLength: 20 });
  fc.assert(
    fc.property(
      some,
      fc.constantFrom('R', 'C', 'LED', 'TP'),
      fc.constantFrom(',', ', ', ';', ' ', '+', '\n'),
      (numbers, letters, separator) => {
        const want = numbers.map((number) => `${letters}${number}`);
        assert.deepEqual(readRefs(want.join(separator)).refs, want);
      },
    ),
    { seed: 20_250_105 },
  );
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 5000 }), fc.integer({ min: 1, max: 300 }), (start, more) => {
      const { refs } = readRefs(`R${start}-R${start + more}`);
      assert.deepEqual([refs.length, refs[0], refs.at(-1)], [more + 1, `R${start}`, `R${start + more}`]);
    }),
    { seed: 20_250_106 },
  );
});

void test('law: any text gives references or doubts, never an exception', () => {
  fc.assert(
    fc.property(fc.string({ maxLength: 60 }), (text) => void readRefs(text)),
    { seed: 20_250_107, numRuns: 500 },
  );
});
