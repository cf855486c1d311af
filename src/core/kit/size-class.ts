import { wordFact, type Part } from '#core/part/part.ts';

export type SizeClass =
  | 'chip-0201'
  | 'chip-0402'
  | 'chip-0603'
  | 'chip-large'
  | 'small-outline'
  | 'leaded'
  | 'diode'
  | 'fastener'
  | 'length'
  | 'other';

const FASTENERS: ReadonlySet<string> = new Set(['screw', 'nut', 'washer', 'standoff']);
const DIODES: ReadonlySet<string> = new Set(['diode', 'zener', 'tvs', 'led']);
const PASSIVES: ReadonlySet<string> = new Set([
  'resistor',
  'capacitor',
  'inductor',
  'ferrite',
  'thermistor',
  'varistor',
  'jumper',
  'fuse',
]);

/** How easily a piece is lost at the bench: `0402` → chip-0402, `SOT-23` → small-outline, a leaded resistor → leaded, an IC → other. */
export function sizeClass(part: Part): SizeClass {
  const body = wordFact(part, 'package') ?? '';
  if (part.kind === 'wire') return 'length';
  if (FASTENERS.has(part.kind)) return 'fastener';
  if (/^(?:008004|01005|015015|0201|0202)$/.test(body)) return 'chip-0201';
  if (body === '0402' || body === '0303' || body === '0306') return 'chip-0402';
  if (/^(?:0603|0504|0508)$/.test(body)) return 'chip-0603';
  if (/^\d{4}$/.test(body) || body.startsWith('EIA-')) return 'chip-large';
  if (/^(?:T?SOT|SOD|SC|DFN|X\dSON)-?\d/i.test(body)) return 'small-outline';
  if (DIODES.has(part.kind)) return 'diode';
  return PASSIVES.has(part.kind) ? 'leaded' : 'other';
}
