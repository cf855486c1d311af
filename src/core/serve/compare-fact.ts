import { dielectricFit } from '#core/part/dielectric.ts';
import { numberFact, wordFact, type Fact, type FactKey, type NumericFact, type Part } from '#core/part/part.ts';
import { compare, decimal, multiply, type Decimal } from '#core/quantity/decimal.ts';
import { factText } from './fact-text.ts';
import { fit, isChip } from './outline.ts';
import { USUAL_CHIP_POWER } from './packages.data.ts';
import type { FactRule } from './rules.data.ts';
import { variantFindings } from './variant.ts';
import { finding, type Finding } from './finding.ts';
import type { BecauseCode, Verdict } from './verdict.ts';

/** What one rule says of a bag's fact against a line's; nothing where the line asks nothing and it does not matter. */
export function compareFact({ key, rule, matters }: FactRule, has: Part, asked: Part): Finding[] {
  if (rule === 'variant') return variantFindings(has, asked, matters);
  const [mine, wanted] = [has.facts[key], asked.facts[key]];
  if (rule === 'told' && Boolean(mine) !== Boolean(wanted))
    return [
      finding(
        'missing',
        'differs',
        { fact: key, has: mine ? factText(mine) : '', asked: wanted ? factText(wanted) : 'none' },
        key,
      ),
    ];
  if (!wanted) return mine && matters ? [finding('check', 'not-asked', { fact: key, has: factText(mine) }, key)] : [];
  if (!mine && key === 'technology' && goesWithoutSaying(wanted, has)) return [];
  if (!mine)
    return [
      rule === 'safety' && asked.kind !== 'fuse'
        ? finding('missing', 'safety', { fact: key, asked: factText(wanted) }, key)
        : silent(key, wanted, has),
    ];
  const level = sameFact(key, mine, wanted) ? 'exact' : LEVEL_OF[rule](key, has, asked, mine, wanted);
  const softened = level === 'exact' && (mine.origin === 'assumed' || wanted.origin === 'assumed') ? 'serves' : level;
  const args = { fact: key.startsWith('tolerance') ? 'tolerance' : key, has: factText(mine), asked: factText(wanted) };
  return [finding(softened, codeOf(level, rule, key), args, key)];
}

function codeOf(level: Verdict, rule: FactRule['rule'], key: FactKey): BecauseCode {
  if (level === 'exact') return 'same';
  if (level === 'serves') return 'betters';
  if (rule === 'safety') return 'safety';
  if (key === 'package' && level === 'check') return 'similar';
  if (rule === 'dielectric' && level === 'check') return 'differs';
  return rule === 'at-least' || rule === 'at-most' || rule === 'dielectric' ? 'below' : 'differs';
}

type Level = (key: FactKey, has: Part, asked: Part, mine: Fact, wanted: Fact) => Verdict;

const LEVEL_OF: Readonly<Record<FactRule['rule'], Level>> = {
  equal: () => 'missing',
  told: () => 'missing',
  near: (_key, _has, _asked, mine, wanted) => (isNear(fact(mine), fact(wanted)) ? 'check' : 'missing'),
  variant: () => 'check',
  judge: () => 'check',
  'at-least': (_key, _has, _asked, mine, wanted) =>
    number(mine) !== null && compare(fact(mine), fact(wanted)) > 0 ? 'serves' : 'missing',
  'at-most': (key, has, asked) => atMost(key, has, asked),
  dielectric: (_key, _has, _asked, mine, wanted) => DIELECTRIC_LEVEL[dielectricFit(mine.value, wanted.value)],
  package: (_key, _has, _asked, mine, wanted) =>
    ({ same: 'exact', similar: 'check', differs: 'missing' } as const)[fit(mine.value, wanted.value)],
  safety: (_key, _has, _asked, mine, wanted) => (standsForSafety(mine.value, wanted.value) ? 'check' : 'missing'),
};

function sameFact(key: FactKey, mine: Fact, wanted: Fact): boolean {
  if (key === 'thread') return thread(mine.value) === thread(wanted.value);
  return mine.value.toLowerCase() === wanted.value.toLowerCase() && mine.unit === wanted.unit;
}

const fact = (row: Fact): Decimal => row.value as Decimal; // as: only called on numeric facts
const number = (row: Fact): Decimal | null => (row.unit === null ? null : fact(row));

/** 3.6 V and 3.7 V name the same cell, 1.2 V and 1.5 V do not; leads 5 mm apart go where 5.08 mm is asked, 7.5 mm do not. */
function isNear(a: Decimal, b: Decimal): boolean {
  const [low, high] = compare(a, b) < 0 ? [a, b] : [b, a];
  return compare(multiply(high, decimal('0.9')), low) <= 0;
}

function atMost(key: FactKey, has: Part, asked: Part): Verdict {
  const numeric = key as NumericFact; // as: the rule table gives 'at-most' to numeric facts only
  const [mine, wanted] = [magnitude(has, numeric, has), magnitude(asked, numeric, has)];
  if (mine === null || wanted === null) return 'check';
  const order = compare(mine, wanted);
  return order < 0 ? 'serves' : order === 0 ? 'exact' : 'missing';
}

/** A fraction becomes absolute by the value, so that ±0.25 pF and ±5 % compare. */
function magnitude(part: Part, key: NumericFact, valueOf: Part): Decimal | null {
  const row = numberFact(part, key);
  if (row === null || part.facts[key]?.unit !== 'fraction') return row;
  const value = numberFact(valueOf, 'value') ?? numberFact(part, 'value');
  return value === null ? row : multiply(row, value);
}

const DIELECTRIC_LEVEL = { same: 'exact', serves: 'serves', close: 'check', 'falls-short': 'missing', unknown: 'check' } as const;

/** Y2 may stand for X2, a higher class for a lower of its letter, always by a person's decision; X never for Y (IEC 60384-14, from memory). */
function standsForSafety(has: string, asked: string): boolean {
  if (FUSES_ALIKE.has(`${has}/${asked}`)) return true;
  const [mine, wanted] = [/([XY])([1-4])/g, /^([XY])([1-4])$/] as const;
  const want = wanted.exec(asked.toUpperCase());
  if (!want) return false;
  const [, letter = '', grade = ''] = want;
  return [...has.toUpperCase().matchAll(mine)].some(([, l = '', g = '']) => (l === letter ? g <= grade : l === 'Y' && g <= '2'));
}

/** Slow and fast by words may mean time-lag and quick-acting (IEC 60127), or another standard's curves: a look. */
const FUSES_ALIKE: ReadonlySet<string> = new Set(['T/slow', 'slow/T', 'F/fast', 'fast/F']);

function silent(key: FactKey, wanted: Fact, has: Part): Finding {
  const size = wordFact(has, 'package');
  const usual = key === 'power' && has.kind === 'resistor' && size !== null ? USUAL_CHIP_POWER[size] : undefined;
  const args = { fact: key.startsWith('tolerance') ? 'tolerance' : key, asked: factText(wanted) };
  if (usual && size && compare(decimal(usual), fact(wanted)) >= 0)
    return finding('serves', 'usual', { ...args, package: size }, key);
  return finding('check', 'not-stated', args, key);
}

/** A dielectric code or a chip size says ceramic; what a code number says of a resistor's film is asked by nobody. */
function goesWithoutSaying(wanted: Fact, has: Part): boolean {
  if (has.kind === 'resistor') return wanted.origin === 'decoded';
  const chip = isChip(wordFact(has, 'package') ?? '');
  return has.kind === 'capacitor' && wanted.value === 'ceramic' && (chip || wordFact(has, 'dielectric') !== null);
}

const COARSE: Readonly<Record<string, string>> = {
  'M1.6': '0.35',
  M2: '0.4',
  'M2.5': '0.45',
  M3: '0.5',
  'M3.5': '0.6',
  M4: '0.7',
  M5: '0.8',
  M6: '1',
  M8: '1.25',
  M10: '1.5',
};

/** No pitch written means the coarse one: `M3x0.5` → `M3` (ISO 261). */
function thread(name: string): string {
  const [size = '', pitch] = name.toUpperCase().replaceAll(' ', '').split('X');
  return pitch === undefined || COARSE[size] === pitch ? size : `${size}X${pitch}`;
}
