import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { KIND_ROWS } from '#core/part/kinds.data.ts';
import { KINDS, NUMERIC_FACTS, type Fact, type FactKey, type Kind, type NumericFact, type Part } from '#core/part/part.ts';
import { VARIANT_ROWS } from '#core/part/variant-words.data.ts';
import { decimal } from '#core/quantity/decimal.ts';
import { RULES } from './rules.data.ts';
import { isNeverSwapped } from './safety.ts';
import { serve } from './serve.ts';
import { rankOf, type Answer, type Verdict } from './verdict.ts';

const RUNS = { seed: 20260311, numRuns: 2000 };

/** Few values of each fact, so that two parts often agree, better and fall short. */
const POOL: Readonly<Partial<Record<FactKey, readonly string[]>>> = {
  value: ['1e-6', '1e-7'],
  'tolerance-low': ['0.01', '0.05'],
  'tolerance-high': ['0.01', '0.05'],
  voltage: ['6.3', '25', '50'],
  power: ['0.1', '0.25'],
  current: ['1', '2'],
  pins: ['4', '6'],
  pitch: ['2.5e-3', '2.54e-3'],
  length: ['8e-3', '10e-3'],
  diameter: ['3e-3', '5e-3'],
  'load-capacitance': ['12e-12', '18e-12'],
  'temperature-coefficient': ['25e-6', '100e-6'],
  'temperature-low': ['25', '55'],
  'temperature-high': ['85', '125'],
  'voltage-kind': ['dc', 'ac', 'mains'],
  dielectric: ['C0G', 'U2J', 'X7R', 'X5R', 'X7S', 'Y5P', 'Y5V', 'Z5U', '2C1', '2R1'],
  technology: ['ceramic', 'film', 'electrolytic', 'tantalum'],
  polarised: ['yes', 'no'],
  package: ['0603', '1206', 'EIA-3216', 'SOT-23', 'SC-59', 'SOIC-8', 'SOIC'],
  colour: ['red', 'blue'],
  polarity: ['npn', 'pnp'],
  thread: ['M3', 'M3x0.5', 'M4'],
  head: ['pan', 'cap'],
  drive: ['hex', 'slot'],
  material: ['brass', 'nylon'],
  safety: ['X2', 'Y2', 'X1/Y2', 'T', 'F'],
  partNumber: ['LM358', 'LM358DR', 'LM358D/TR', 'AB0603-1K'],
};
const CAPACITOR_ALONE: readonly FactKey[] = ['voltage-kind', 'polarised'];

function keysOf(kind: Kind): FactKey[] {
  const own = RULES[kind].facts.map(({ key }) => key);
  return [...new Set<FactKey>([...own, ...(kind === 'capacitor' ? CAPACITOR_ALONE : []), 'partNumber'])];
}

function variantsOf(kind: Kind): string[] {
  const words = VARIANT_ROWS.flatMap(([, word, , kinds]) => (word !== '' && kinds.split(' ').includes(kind) ? [word] : []));
  return [...words.slice(0, 5), 'other'];
}

function factOf(kind: Kind, key: FactKey): fc.Arbitrary<Fact> {
  const [unit] = key in NUMERIC_FACTS ? NUMERIC_FACTS[key as NumericFact] : [null]; // as: asked before
  const own = key === 'value' ? (KIND_ROWS[kind].value ?? 'ohm') : unit;
  const values = key === 'variant' ? variantsOf(kind) : (POOL[key] ?? []);
  return fc
    .constantFrom(...values)
    .map((value) => ({ key, value: own === null ? value : decimal(value), unit: own, origin: 'stated' }));
}

const kinds = fc.constantFrom(...KINDS.filter((kind) => kind !== 'not-a-part'));

/** A part of this kind; `all`: with every fact that the rules of its kind compare, else with some of them. */
function partOf(kind: Kind, all = false): fc.Arbitrary<Part> {
  const rows = Object.fromEntries(keysOf(kind).map((key) => [key, factOf(kind, key)]));
  return fc.record(rows, all ? {} : { requiredKeys: [] }).map((facts) => ({ kind, facts, text: '' }));
}

const pairs = kinds.chain((kind) => fc.tuple(partOf(kind), partOf(kind)));
const few = (part: Part, keep: readonly FactKey[]): Part => ({
  ...part,
  facts: Object.fromEntries(Object.entries(part.facts).filter(([key]) => keep.includes(key as FactKey))), // as: facts are kept by their key
});
const without = (part: Part, key: FactKey): Part =>
  few(
    part,
    (Object.keys(part.facts) as FactKey[]).filter((one) => one !== key),
  );
/** A part and one that differs from it in a fact or two. */
const near = kinds.chain((kind) =>
  fc.tuple(partOf(kind), partOf(kind), fc.subarray(keysOf(kind), { maxLength: 2 })).map(([part, other, keys]): [Part, Part] => {
    const facts = { ...part.facts, ...few(other, keys).facts };
    return [{ ...part, facts }, part];
  }),
);
const shown = (...parts: readonly Part[]): string =>
  parts
    .map(
      ({ kind, facts }) =>
        `${kind} ${Object.values(facts)
          .map(({ key, value }) => `${key}=${value}`)
          .join(' ')}`,
    )
    .join(' | ');
const noWorse = (a: Verdict, b: Verdict): boolean => rankOf(a) <= rankOf(b);

const sameNumber = (a: Part, b: Part): boolean =>
  a.facts.partNumber !== undefined && serve(a, b).because.some(({ code }) => code === 'part-number');
/** One number and other facts: no two parts are so. */
const contradict = (a: Part, b: Part): boolean =>
  sameNumber(a, b) && Object.values(a.facts).some(({ key, value }) => key !== 'partNumber' && b.facts[key]?.value !== value);

/** Facts of which silence says something: a fuse that says nothing melts, a header that says nothing has pins. */
const SILENCE_SPEAKS: ReadonlySet<FactKey> = new Set(['variant', 'technology']);
const says = ({ because }: Answer, key: FactKey): boolean =>
  because.some(
    ({ code, args }) =>
      args['fact'] === key || (args['fact'] === 'tolerance' && key.startsWith('tolerance')) || code === 'polarised',
  );

void test('what the stock does not say never makes it serve: a fact that the line asks, once removed, leaves a check at best', () => {
  // a stated fact below the demand is missing, an unstated one is check: by the meaning of the words, so that silence may lift to check
  fc.assert(
    fc.property(fc.oneof(pairs, near), ([has, asked]) => {
      const before = serve(has, asked);
      for (const key of Object.keys(has.facts) as FactKey[]) {
        const after = serve(without(has, key), asked);
        const least = noWorse(before.verdict, 'check') ? before.verdict : 'check';
        // what the line leaves open and the bag states is looked at; two that are both silent agree
        const unasked = asked.facts[key] === undefined && says(before, key);
        // the same number settles what either side leaves open, and contradicting it is worse than silence
        if (sameNumber(has, asked) && key !== 'partNumber') continue;
        assert.ok(
          unasked || noWorse(least, after.verdict),
          `${key}: ${before.verdict}, then ${after.verdict}: ${shown(has, asked)}`,
        );
      }
    }),
    RUNS,
  );
});

void test('a line that asks less is answered no worse, but where it leaves open what a person must then look at', () => {
  fc.assert(
    fc.property(fc.oneof(pairs, near), ([has, asked]) => {
      const before = serve(has, asked);
      for (const key of Object.keys(asked.facts) as FactKey[]) {
        // without what it is known by it asks for nothing, and silence on some words is an answer
        if (RULES[asked.kind].identity.includes(key) || key === 'partNumber' || SILENCE_SPEAKS.has(key)) continue;
        const after = serve(has, without(asked, key));
        const opened = after.because.some(({ code }) => code === 'safety' || code === 'described') || says(after, key);
        const right = noWorse(after.verdict, before.verdict) || (opened && noWorse(after.verdict, 'check'));
        assert.ok(right, `${key}: ${before.verdict}, then ${after.verdict} ${JSON.stringify(after)}: ${shown(has, asked)}`);
      }
    }),
    RUNS,
  );
});

void test('a part with a number, or with all its facts, is exact for itself; one with less is so or is looked at', () => {
  fc.assert(
    fc.property(
      kinds.chain((kind) => fc.oneof(partOf(kind), partOf(kind, true))),
      (part) => {
        const { verdict, because } = serve(part, part);
        if (part.facts.partNumber) assert.equal(verdict, 'exact', `${JSON.stringify(because)} ${shown(part)}`);
        else if (RULES[part.kind].identity.some((key) => part.facts[key]))
          assert.ok(verdict === 'exact' || verdict === 'check', shown(part));
      },
    ),
    RUNS,
  );
});

/** Three parts of one kind with all facts stated, that differ in a few; mostly of those that may be bettered, and not of a safety class. */
const threes = fc
  .oneof(kinds, fc.constantFrom<Kind>('resistor', 'capacitor', 'inductor', 'resistor-network', 'header'))
  .chain((kind) =>
    fc
      .tuple(
        partOf(kind, true),
        partOf(kind, true),
        partOf(kind, true),
        fc.subarray(keysOf(kind), { minLength: 1, maxLength: 4 }),
        fc.constantFrom<readonly FactKey[]>([], ['safety'], ['safety', 'partNumber'], ['safety', 'partNumber', 'voltage-kind']),
      )
      .map(([a, other, third, keys, left]): [Part, Part, Part] => {
        const [first, second, last] = [
          a,
          { ...a, facts: { ...a.facts, ...few(other, keys).facts } },
          { ...a, facts: { ...a.facts, ...few(third, keys).facts } },
        ];
        const bare = (part: Part): Part => left.reduce(without, part);
        return [bare(first), bare(second), bare(last)];
      }),
  );

void test('of parts with all facts stated, what serves for one that serves for a third serves for that', () => {
  let served = 0;
  fc.assert(
    fc.property(threes, ([a, b, c]) => {
      if (contradict(a, b) || contradict(b, c) || contradict(a, c)) return;
      const [ab, bc] = [serve(a, b).verdict, serve(b, c).verdict];
      if (!noWorse(ab, 'serves') || !noWorse(bc, 'serves')) return;
      served += ab === 'serves' && bc === 'serves' ? 1 : 0;
      const ac = serve(a, c).verdict;
      assert.ok(noWorse(ac, 'serves'), `${ac}: ${shown(a, b, c)}`);
      assert.ok(ab !== 'exact' || bc !== 'exact' || ac === 'exact', shown(a, b, c));
    }),
    { ...RUNS, numRuns: 6000 },
  );
  assert.ok(served > 10, String(served));
});

void test('what is never swapped by rule is exact, or looked at, or missing: it never serves', () => {
  fc.assert(
    fc.property(fc.oneof(pairs, near), ([has, asked]) => {
      if (isNeverSwapped(has, false) || isNeverSwapped(asked, true))
        assert.notEqual(serve(has, asked).verdict, 'serves', shown(has, asked));
    }),
    RUNS,
  );
});

void test('one kind of voltage never answers for another', () => {
  const rated = (part: Part): string | undefined => part.facts['voltage-kind']?.value;
  fc.assert(
    fc.property(fc.tuple(partOf('capacitor'), partOf('capacitor')), ([has, asked]) => {
      const other = { ...has, facts: { ...asked.facts, ...few(has, ['voltage-kind']).facts } };
      for (const bag of [has, other]) {
        const named = bag.facts.partNumber !== undefined && bag.facts.partNumber.value === asked.facts.partNumber?.value;
        if (named || !rated(bag) || !rated(asked) || rated(bag) === rated(asked)) continue;
        assert.ok(!noWorse(serve(bag, asked).verdict, 'serves'), shown(bag, asked));
      }
    }),
    RUNS,
  );
});
