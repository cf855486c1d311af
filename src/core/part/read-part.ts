import { parseDecimal, multiply, decimal } from '#core/quantity/decimal.ts';
import type { Doubt } from './doubt.ts';
import type { PartHints } from './hints.ts';
import type { Fact, FactKey, Kind, Part } from './part.ts';

export type { PartHints, ReadField } from './hints.ts';

export interface PartReading {
  readonly part: Part;
  readonly doubts: readonly Doubt[];
}

const LETTERS: Readonly<Record<string, Kind>> = { R: 'resistor', C: 'capacitor', L: 'inductor', D: 'diode', Q: 'transistor', U: 'ic', IC: 'ic', J: 'connector', F: 'fuse', Y: 'crystal' };
const UNITS: Readonly<Partial<Record<Kind, string>>> = { resistor: 'ohm', capacitor: 'F', inductor: 'H' };
const SCALE: Readonly<Record<string, string>> = { p: '1e-12', n: '1e-9', u: '1e-6', µ: '1e-6', m: '1e-3', R: '1', k: '1e3', K: '1e3', M: '1e6', '': '1' };

/** First simple version of the signature: to be replaced by the table-driven reader. */
export function readPart(text: string, hints: PartHints = {}): PartReading {
  const whole = hints.fields ? Object.values(hints.fields).join(' ') : text;
  const kind = hints.kind ?? LETTERS[/^[A-Z]+/.exec(hints.refs?.[0] ?? '')?.[0] ?? ''] ?? 'other';
  const facts: Partial<Record<FactKey, Fact>> = {};
  const unit = UNITS[kind];
  const value = /\b(\d+(?:\.\d+)?) ?([pnuµmRkKM]?)(\d*)/.exec(hints.fields?.value ?? text);
  const number = value ? parseDecimal(`${value[1]}${value[3] ? `.${value[3]}` : ''}`) : null;
  if (unit && value && number) facts.value = { key: 'value', value: multiply(number, decimal(SCALE[value[2] ?? ''] ?? '1')), unit, origin: 'stated' };
  const size = /0402|0603|0805|1206|1210/.exec(whole)?.[0];
  if (size) facts.package = { key: 'package', value: size, unit: null, origin: 'stated' };
  const number2 = hints.fields?.partNumber;
  if (number2) facts.partNumber = { key: 'partNumber', value: number2, unit: null, origin: 'stated' };
  return { part: { kind, facts, text: text || whole }, doubts: [] };
}
