import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { decimal } from '#core/quantity/decimal.ts';
import { KIND_ROWS } from './kinds.data.ts';
import { codeBy, codeClashes, DEFAULT_PATTERN, parseCodePattern, type CodePattern } from './part-code-pattern.ts';
import { partCode } from './part-code.ts';
import { KINDS, NUMERIC_FACTS, type Fact, type FactKey, type Kind, type NumericFact, type Part } from './part.ts';

/** Facts that a part of any kind of the list below may state; figures as they are on parts, words from the tables of the readers. */
const FIGURES: Readonly<Partial<Record<NumericFact, readonly string[]>>> = {
  value: ['1', '4.7', '10', '4700', '1e-7', '22e-6', '16e6'],
  'tolerance-low': ['0.01', '0.05', '0.1', '0.003'],
  voltage: ['3.3', '16', '50', '230', '1000'],
  power: ['0.125', '0.25', '2'],
  current: ['0.02', '0.5', '1', '16'],
  pins: ['2', '6', '40'],
  pitch: ['127e-5', '254e-5', '5e-3'],
  length: ['254e-5', '8e-3', '1e-2', '635e-5'],
  diameter: ['5e-3', '8e-3', '1e-2'],
  'load-capacitance': ['12e-12', '18e-12'],
  'temperature-coefficient': ['25e-6', '1e-4'],
  'temperature-high': ['85', '105'],
};
const WORDS: Readonly<Partial<Record<FactKey, readonly string[]>>> = {
  dielectric: ['C0G', 'X7R', 'X5R'],
  package: ['0805', '1206', 'SOT-23', 'SOIC-8', 'EIA-3216'],
  colour: ['red', 'green', 'red/green'],
  polarity: ['npn', 'n-channel'],
  thread: ['M3', 'M3x0.35', '4-40'],
  head: ['hex', 'pan', 'none'],
  drive: ['hex', 'torx'],
  material: ['brass', 'stainless'],
  safety: ['X2', 'Y1/X1'],
  variant: ['lock', 'right-angle', 'socket 2x4', 'awg24', 'low spring'],
  partNumber: ['AB123', 'CD4567-X'],
};

function factOf(key: FactKey, value: string, kind: Kind): Fact {
  const unit =
    key === 'value' ? (KIND_ROWS[kind].value ?? null) : key in NUMERIC_FACTS ? NUMERIC_FACTS[key as NumericFact][0] : null; // as: asked by `in`
  return { key, value: unit === null ? value : decimal(value), unit, origin: 'stated' };
}

/** Without what goes without saying: the maker's number of a resistor whose value and package are known, the pins of a `SOIC-8`. */
const PART = fc.constantFrom(...KINDS.filter((kind) => kind !== 'not-a-part')).chain((kind) => {
  const own = KIND_ROWS[kind].facts.filter((key) => key !== 'technology' && key !== 'polarised');
  const number = kind === 'resistor' || kind === 'resistor-network' || kind === 'capacitor' ? [] : (['partNumber'] as const);
  const keys: readonly FactKey[] = [
    ...new Set<FactKey>([...(KIND_ROWS[kind].value ? (['value'] as const) : []), 'package', ...own, 'variant', ...number]),
  ];
  const choices = keys.map((key) => {
    const values = WORDS[key] ?? (FIGURES[key as NumericFact] || []); // as: the other keys are numeric
    return fc.option(fc.constantFrom(...values), { nil: null });
  });
  return fc.tuple(...choices).map((values): Part => {
    const facts: Partial<Record<FactKey, Fact>> = {};
    values.forEach((value, at) => {
      const key = keys[at];
      if (value === null || key === undefined) return;
      facts[key] = factOf(key, value, kind);
      if (key === 'tolerance-low') facts['tolerance-high'] = factOf('tolerance-high', value, kind);
    });
    return { kind, facts, text: 'as it was written' };
  });
});

const said = ({ kind, facts }: Part): string =>
  JSON.stringify([
    kind,
    ...Object.values(facts)
      .map(({ key, value }) => `${key}=${value}`)
      .sort(),
  ]);

/** All alternatives of one fact of a part, and the part without it. */
function neighbours(part: Part): Part[] {
  return (Object.keys(part.facts) as FactKey[]).flatMap((key) => {
    const { [key]: gone, ...rest } = part.facts;
    const others = (WORDS[key] ?? FIGURES[key as NumericFact] ?? []).filter((value) => value !== gone?.value);
    const without = key.startsWith('tolerance') ? [] : [{ ...part, facts: rest }];
    return [...without, ...others.map((value) => ({ ...part, facts: { ...rest, [key]: factOf(key, value, part.kind) } }))];
  });
}

void test('parts that differ in a fact have different codes', () => {
  fc.assert(
    fc.property(PART, PART, (one, other) => {
      for (const near of [other, ...neighbours(one)])
        if (said(near) !== said(one) && Object.keys(near.facts).length > 0 && Object.keys(one.facts).length > 0)
          assert.notEqual(partCode(near), partCode(one), `${said(near)} ${said(one)}`);
    }),
    { numRuns: 2000 },
  );
});

void test('the order in which facts were read, and the text, change no code', () => {
  fc.assert(
    fc.property(PART, (part) => {
      const turned: Part = { ...part, facts: Object.fromEntries(Object.entries(part.facts).reverse()), text: 'another' };
      if (Object.keys(part.facts).length > 0) assert.equal(partCode(turned), partCode(part));
    }),
  );
});

function pattern(text: string): CodePattern {
  const read = parseCodePattern(text);
  assert.ok(read.ok, text);
  return read.pattern;
}

void test('the default pattern spells today’s code', () => {
  const today = pattern(DEFAULT_PATTERN);
  fc.assert(fc.property(PART, (part) => assert.equal(codeBy(today, part), partCode(part))));
});

void test('clashes are the parts that a pattern makes one, and no others', () => {
  const short = pattern('{kind}_{value}_{package}');
  fc.assert(
    fc.property(fc.array(PART, { maxLength: 12 }), (parts) => {
      const stock = parts.map((part) => ({ part }));
      assert.deepEqual(codeClashes(pattern(DEFAULT_PATTERN), stock), []);
      for (const { code, of } of codeClashes(short, stock)) {
        assert.ok(new Set(of.map(({ part }) => partCode(part))).size > 1);
        for (const { part } of of) assert.equal(codeBy(short, part), code);
      }
    }),
  );
});

void test('reading a pattern never throws, and says where it went wrong', () => {
  fc.assert(fc.property(fc.string(), (text) => typeof parseCodePattern(text).ok === 'boolean'));
  for (const [text, code] of [
    ['', 'empty'],
    ['{kind}-{value', 'unclosed'],
    ['{kind}-{size}', 'no-such-piece'],
    ['{kind}-{value}-{value}', 'piece-twice'],
    ['{kind}AB{value}', 'letters-between'],
    ['X{kind}', 'letters-between'],
    ['{kind}{value}', 'no-separator'],
    ['{kind}-{rest}; bolt: {kind}', 'no-such-kind'],
    ['{kind}-{rest}; {kind}', 'kind-twice'],
  ] as const) {
    const read = parseCodePattern(text);
    assert.equal(read.ok ? null : read.fault.code, code, text);
  }
  const own = pattern('{kind}-{rest}; screw: {kind}_{thread}x{length}'.replace('x{', '_{'));
  const screw: Part = {
    kind: 'screw',
    facts: { thread: factOf('thread', 'M3', 'screw'), length: factOf('length', '1e-2', 'screw') },
    text: '',
  };
  assert.equal(codeBy(own, screw), 'HS_M3_10MM');
});
