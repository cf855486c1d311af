import { compare, decimal, digitsOf, type Decimal } from '#core/quantity/decimal.ts';
import { seriesOf } from '#core/quantity/series.ts';
import type { Fact, Facts, FactKey } from '../part.ts';
import { LIKELY, NOT_SHOWN_BELOW, POSSIBLE, WEIGHTS } from './evidence.data.ts';
import type { Evidence, EvidenceCode, Look, Plausible, Reading } from './marking.ts';

export const say = (code: EvidenceCode, args: Evidence['args'] = {}): Evidence => ({ code, args });

const sum = (evidence: readonly Evidence[]): number => evidence.reduce((all, { code }) => all + WEIGHTS[code], 0);

/** Which way a thing speaks; what weighs nothing is only told. */
export function speaks(code: EvidenceCode): 'for' | 'against' | 'neither' {
  const weight = WEIGHTS[code];
  return weight > 0 ? 'for' : weight < 0 ? 'against' : 'neither';
}

export function plausible(evidence: readonly Evidence[]): Plausible {
  const weight = sum(evidence);
  return weight >= LIKELY ? 'likely' : weight >= POSSIBLE ? 'possible' : 'unlikely';
}

/** The most plausible first, in the order they came where equal; far-fetched ones only where nothing is likely. */
export function ordered(readings: readonly Reading[]): Reading[] {
  const weighed = readings.map((reading) => ({ reading, weight: sum(reading.evidence) }));
  const some = weighed.some(({ weight }) => weight >= LIKELY);
  return weighed
    .filter(({ weight }) => !some || weight >= NOT_SHOWN_BELOW)
    .toSorted((a, b) => b.weight - a.weight)
    .map(({ reading }) => reading);
}

/** Below these, values are made outside the series too: shunts of 5 mΩ, capacitors of 0.5 and 9.3 pF (common practice, no source). */
const SMALL: Readonly<Partial<Record<Look, string>>> = { bands: '0.1', chip: '0.1', capacitor: '1e-11' };

/** Whether a value is one that is made: E24, and E96 where three figures may be told apart. A link of 0 ohm is. */
export function valueEvidence(value: Decimal, look: Look, figures: 2 | 3): Evidence {
  if (digitsOf(value).digits === 0n) return say('usual-value', { series: '' });
  const series = seriesOf(value);
  if (series.includes('E24')) return say('usual-value', { series: 'E24' });
  if (figures === 3 && series.includes('E96')) return say('usual-value', { series: 'E96' });
  const small = SMALL[look];
  return say(small !== undefined && compare(value, decimal(small)) < 0 ? 'small-value' : 'unusual-value');
}

/** Values that a part of this look is made in, in its base unit (common practice, no source). */
const RANGES: Readonly<Record<Look, readonly [least: string, most: string]>> = {
  bands: ['0.1', '1e8'],
  chip: ['1e-4', '1e8'],
  capacitor: ['1e-13', '1e-4'],
  can: ['4.7e-8', '1'],
  coil: ['1e-10', '1'],
};

export function rangeEvidence(value: Decimal, look: Look): Evidence[] {
  const [least, most] = RANGES[look];
  const zero = digitsOf(value).digits === 0n;
  const inside = zero
    ? look === 'chip' || look === 'bands'
    : compare(value, decimal(least)) >= 0 && compare(value, decimal(most)) <= 0;
  return inside ? [] : [say('outside-range')];
}

export function decodedFacts(rows: readonly (readonly [key: FactKey, value: Decimal, unit: string])[]): Facts {
  const facts: { [K in FactKey]?: Fact } = {};
  for (const [key, value, unit] of rows) facts[key] = { key, value, unit, origin: 'decoded' };
  return facts;
}
