import assert from 'node:assert/strict';
import { test } from 'node:test';
import * as fc from 'fast-check';
import { decimal, fromDigits } from '#core/quantity/decimal.ts';
import { membersIn } from '#core/quantity/series.ts';
import type { Fact, Part } from '../part.ts';
import { readBands } from './bands.ts';
import { COLOURS, type Colour } from './colours.data.ts';
import { LOOKS, type Reading } from './marking.ts';
import { NOTATION_ROWS } from './notations.data.ts';
import { readMarking } from './read-marking.ts';
import { decodedFacts } from './weigh.ts';
import { writeMarkings, type Marking } from './write-markings.ts';

const E24 = membersIn('E24').map(String);
const E96 = membersIn('E96').map(String);
const SEED = { seed: 20260211, numRuns: 400 };
const RANGES: Readonly<Record<string, readonly [unit: string, least: number, most: number]>> = {
  resistor: ['ohm', -4, 7],
  capacitor: ['F', -14, -4],
  inductor: ['H', -10, -3],
};
const SHARES = ['0.001', '0.0025', '0.005', '0.01', '0.02', '0.05', '0.1', '0.2'];

const anyPart: fc.Arbitrary<Part> = fc.constantFrom('resistor', 'capacitor', 'inductor').chain((kind) => {
  const [unit = '', least = 0, most = 0] = RANGES[kind] ?? [];
  return fc
    .record({
      figures: fc.constantFrom(...E24, ...E96),
      power: fc.integer({ min: least, max: most }),
      share: fc.option(fc.constantFrom(...SHARES)),
      ppm: fc.option(fc.constantFrom('1e-4', '5e-5', '15e-6', '1e-6')),
      volts: fc.option(fc.constantFrom('50', '100', '6.3', '450')),
      polarised: fc.boolean(),
    })
    .map(({ figures, power, share, ppm, volts, polarised }) => {
      const facts = decodedFacts([
        ['value', fromDigits(BigInt(figures), power - figures.length + 1), unit],
        ...(share === null
          ? []
          : ([
              ['tolerance-low', decimal(share), 'fraction'],
              ['tolerance-high', decimal(share), 'fraction'],
            ] as const)),
        ...(ppm === null || kind !== 'resistor' ? [] : [['temperature-coefficient', decimal(ppm), '1/K'] as const]),
        ...(volts === null || kind !== 'capacitor' ? [] : [['voltage', decimal(volts), 'V'] as const]),
      ]);
      const pole = { key: 'polarised', value: 'yes', unit: null, origin: 'stated' } as const;
      const all = polarised && kind === 'capacitor' ? { ...facts, polarised: pole } : facts;
      return { kind, facts: all, text: '' };
    });
});

function readBack({ look, text }: Marking): readonly Reading[] {
  if (look === 'bands') return readBands(text.split(' ') as Colour[]).readings; // as: written from colours
  return readMarking(text, { look }).readings;
}

void test('every marking that is written reads back to the same value, and to no other tolerance or voltage', () => {
  const written = new Set<string>();
  fc.assert(
    fc.property(anyPart, (part) => {
      for (const marking of writeMarkings(part)) {
        written.add(`${marking.look} ${marking.notation}`);
        const same = readBack(marking).filter(({ notation }) => notation === marking.notation);
        const right: Reading | undefined = same.find(({ facts }) => facts.value?.value === part.facts.value?.value);
        assert.ok(right, `${marking.text} on ${marking.look} for ${part.facts.value?.value}: ${JSON.stringify(same)}`);
        for (const key of ['tolerance-low', 'voltage', 'temperature-coefficient'] as const) {
          const said: Fact | undefined = right.facts[key];
          // a share and picofarads may both be meant near 10 pF
          if (said && said.unit === part.facts[key]?.unit)
            assert.equal(said.value, part.facts[key]?.value, `${key} of ${marking.text}`);
        }
      }
    }),
    SEED,
  );
  const expected = [
    'bands bands-4',
    'bands bands-5',
    'bands bands-6',
    'chip three-figures',
    'chip e96',
    'capacitor eia-198',
    'coil n-point',
    'can plain-uf',
  ];
  assert.deepEqual(
    expected.filter((name) => !written.has(name)),
    [],
    'the law was tried on them',
  );
});

void test('every notation that can be written is written for some value', () => {
  for (const row of NOTATION_ROWS) {
    const values = [...E24, ...E96].flatMap((figures) =>
      [-4, -2, -1, 0, 1, 3].map((power) => fromDigits(BigInt(figures), power)),
    );
    const texts = [...values, fromDigits(0n, 0)].flatMap((value) => row.marks.write(value) ?? []);
    for (const text of texts) assert.ok(row.marks.read(text) !== null, `${row.notation} ${text}`);
  }
});

void test('reading never throws, whatever is typed', () => {
  const typed = fc.oneof(
    fc.string({ unit: 'binary', maxLength: 40 }),
    fc.string({ unit: fc.constantFrom(...'0123456789RKMpnuJDZ.,/V HA'.split('')), maxLength: 12 }),
  );
  fc.assert(
    fc.property(typed, fc.constantFrom(null, 'chip', 'capacitor', 'can', 'coil'), (text, look) => {
      const { readings, unread } = readMarking(text, { look });
      assert.equal(readings.length === 0, unread !== null);
      for (const one of readings) assert.match(one.facts.value?.value ?? '', /^\d+e-?\d+$/);
    }),
    { ...SEED, numRuns: 1000 },
  );
});

void test('bands never throw, and read the same from either end', () => {
  const bands = fc.array(fc.constantFrom(...COLOURS), { maxLength: 8 });
  fc.assert(
    fc.property(bands, fc.boolean(), (row, old) => {
      const values = (way: readonly Colour[]): string[] =>
        readBands(way, { old })
          .readings.map(({ facts, plausible }) => `${facts.value?.value} ${facts['tolerance-low']?.value} ${plausible}`)
          .toSorted();
      assert.deepEqual(values(row), values(row.toReversed()));
    }),
    { ...SEED, numRuns: 2000 },
  );
});

void test('every look has a way to be read', () => {
  for (const look of LOOKS) assert.ok(look === 'bands' || NOTATION_ROWS.some((row) => row.look === look), look);
});
