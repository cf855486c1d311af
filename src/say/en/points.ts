import type { Fact, Part } from '#core/part/part.ts';
import type { Point, PointKey, PointWord } from '#core/serve/points.ts';
import { factValue } from './fact-value.ts';
import { sayFact, sayTolerance, sayWord } from './fact-words.ts';
import { begun, kindWord } from './kind-words.ts';

const NAMES = {
  part: 'Part',
  kind: 'Kind',
  value: 'Value',
  tolerance: 'Tolerance',
  voltage: 'Voltage',
  'voltage-kind': 'Kind of voltage',
  power: 'Power',
  current: 'Current',
  pins: 'Pins',
  pitch: 'Pitch',
  length: 'Length',
  diameter: 'Diameter',
  'load-capacitance': 'Load capacitance',
  'temperature-coefficient': 'Temperature coefficient',
  'temperature-low': 'Lowest temperature',
  'temperature-high': 'Highest temperature',
  dielectric: 'Dielectric',
  technology: 'Technology',
  polarised: 'Polarity',
  package: 'Package',
  colour: 'Colour',
  polarity: 'Polarity',
  thread: 'Thread',
  head: 'Head',
  drive: 'Drive',
  material: 'Material',
  safety: 'Safety class',
  partNumber: 'Part number',
  maker: 'Maker',
  variant: 'Description',
  alternate: 'Alternate',
  state: 'Bag',
} satisfies Record<PointKey, string>;

/** What the value of a part is called, by its unit. */
const VALUE_NAMES: Readonly<Record<string, string>> = {
  ohm: 'Resistance',
  F: 'Capacitance',
  Hz: 'Frequency',
  H: 'Inductance',
  V: 'Voltage',
  A: 'Current',
};

const WORDS = {
  same: 'same',
  higher: 'higher',
  lower: 'lower',
  tighter: 'tighter',
  wider: 'wider',
  steadier: 'steadier',
  'less-steady': 'less steady',
  similar: 'looks alike',
  differs: 'differs',
  any: 'any will do',
  'not-asked': 'not asked',
  'not-stated': 'not stated',
  'goes-without-saying': 'goes without saying',
  usual: 'usual for the size',
  'dc-by-practice': 'DC by practice',
  'by-number': 'by the part number',
  'other-maker': 'other maker, same facts',
  packing: 'other packing',
  version: 'may be another version',
  'words-only': 'told by words only',
  'never-swapped': 'never swapped by rule',
  'nothing-alike': 'nothing alike',
  doubt: 'read with a doubt',
  alternate: 'named by the line',
  'to-look-at': 'look at it',
} satisfies Record<PointWord, string>;

/** A point in words. */
export interface SaidPoint {
  readonly point: string;
  readonly asked: string | null;
  readonly has: string | null;
  readonly fit: Point['fit'];
  readonly word: string;
}

/** A point of two parts as a person reads it: `Capacitance`, `10 µF` for `10 µF`, same. */
export function sayPoint(point: Point, has: Part, asked: Part): SaidPoint {
  const { key, fit, word } = point;
  return {
    point: pointName(key, has, asked),
    asked: saidSide(asked, key, point.asked),
    has: saidSide(has, key, point.has),
    fit,
    word: WORDS[word],
  };
}

function pointName(key: PointKey, has: Part, asked: Part): string {
  if (key === 'value') return valueName(asked.facts.value ?? has.facts.value);
  return key === 'safety' && has.kind === 'fuse' ? 'Speed' : NAMES[key];
}

function valueName(value: Fact | undefined): string {
  return VALUE_NAMES[value?.unit ?? ''] ?? NAMES.value;
}

/** What one side states; else what the finding says of it. */
function saidSide(part: Part, key: PointKey, told: string | null): string | null {
  if (key === 'part' || key === 'alternate' || key === 'state') return told;
  if (key === 'kind') return told === null ? null : begun(kindWord(part.kind));
  if (key === 'tolerance') return saidTolerance(part) ?? told;
  const fact = part.facts[key];
  if (!fact || fact.value === '') return told === null ? null : factValue(key, told);
  return `${fact.origin === 'assumed' ? 'assumed ' : ''}${saidFact(key, fact)}`;
}

function saidFact(key: PointKey, fact: Fact): string {
  if (key === 'variant') return fact.value.split(' ').map(sayWord).join(', ');
  const said = factValue(key, fact.value);
  return said === fact.value ? sayFact(fact) : said;
}

function saidTolerance({ kind, facts }: Part): string | null {
  const [low, high] = [facts['tolerance-low'], facts['tolerance-high']];
  if (low && high) return sayTolerance(low, high, kind);
  if (low) return `\u2212${sayFact(low)}`;
  return high ? `+${sayFact(high)}` : null;
}
