import type { Decimal } from '#core/quantity/decimal.ts';

/** The closed list of kinds; the order is the order in which screens and tables list them. */
export const KINDS = [
  'resistor',
  'resistor-network',
  'potentiometer',
  'thermistor',
  'varistor',
  'capacitor',
  'inductor',
  'ferrite',
  'transformer',
  'diode',
  'zener',
  'tvs',
  'led',
  'transistor',
  'mosfet',
  'ic',
  'regulator',
  'crystal',
  'oscillator',
  'connector',
  'header',
  'switch',
  'relay',
  'fuse',
  'battery',
  'sensor',
  'module',
  'display',
  'speaker',
  'testpoint',
  'jumper',
  'screw',
  'nut',
  'washer',
  'standoff',
  'wire',
  'mechanical',
  'other',
  'not-a-part',
] as const;
export type Kind = (typeof KINDS)[number];

/** Where a fact comes from. Only what was stated or measured is certain. */
export type Origin = 'stated' | 'decoded' | 'assumed' | 'measured';

/** Facts whose value is an exact number, with the SI base unit it is kept in. */
export const NUMERIC_FACTS = {
  /** in the unit of the kind: ohm, F, H, Hz, V (zener, regulator output), ohm at 100 MHz (ferrite) */
  value: ['ohm', 'F', 'H', 'Hz', 'V', 'A'],
  /** magnitudes below and above the value: a fraction (0.05) or absolute in the unit of the value */
  'tolerance-low': ['fraction', 'F', 'ohm', 'H', 'Hz', 'V'],
  'tolerance-high': ['fraction', 'F', 'ohm', 'H', 'Hz', 'V'],
  voltage: ['V'],
  power: ['W'],
  current: ['A'],
  pins: ['count'],
  pitch: ['m'],
  length: ['m'],
  diameter: ['m'],
  'load-capacitance': ['F'],
  'temperature-coefficient': ['1/K'],
  'temperature-low': ['degC'],
  'temperature-high': ['degC'],
} as const;
export type NumericFact = keyof typeof NUMERIC_FACTS;

/** Facts whose value is a word in its canonical spelling. */
export const WORD_FACTS = [
  'voltage-kind', // dc, ac, mains
  'dielectric', // C0G, X7R, …
  'technology', // ceramic, film, electrolytic, tantalum, polymer, supercap, mica, thick-film, thin-film, metal-film, carbon, wirewound, …
  'polarised', // yes, no
  'package', // 0805, EIA-3528, SOT-23, SOIC-8, …
  'colour',
  'polarity', // npn, pnp, n-channel, p-channel
  'thread', // M3, M3x0.35, 4-40 UNC
  'head', // of a screw
  'drive', // of a screw
  'material',
  'safety', // X2, Y1, …; fuse characteristic; anything that is never swapped by rule
  'partNumber',
  'maker',
  'doubted', // fields of a bag's part that were read with a doubt, by blanks; no demand has it
  'variant', // what else the text says that tells parts apart, when no fact of its own holds it
] as const;
export type WordFact = (typeof WORD_FACTS)[number];
export type FactKey = NumericFact | WordFact;

/** One row of what is known of a part. `value` is a `Decimal` for numeric facts, else a canonical word. */
export interface Fact {
  readonly key: FactKey;
  readonly value: string;
  readonly unit: string | null;
  readonly origin: Origin;
}

export type Facts = { readonly [K in FactKey]?: Fact };

/** What a part is, apart from where it lies and how many there are. `text` is what a person wrote. */
export interface Part {
  readonly kind: Kind;
  readonly facts: Facts;
  readonly text: string;
}

/** The exact number of a numeric fact, or null. */
export function numberFact(part: Part, key: NumericFact): Decimal | null {
  const fact = part.facts[key];
  return fact ? (fact.value as Decimal) : null; // as: numeric facts hold canonical decimals by construction
}

/** The word of a word fact, or null. */
export function wordFact(part: Part, key: WordFact): string | null {
  return part.facts[key]?.value ?? null;
}
