import { AXIAL_SIZES, CHIP_SIZES, METRIC_ALSO, METRIC_BODIES, METRIC_WHEN_ALONE, TANTALUM_CASES } from './packages.data.ts';
import type { Kind } from './part.ts';

/** A package as read: its name in the trade's spelling, and for which kinds it counts where that is limited. */
export interface PackageReading {
  readonly name: string;
  readonly start: number;
  readonly end: number;
  readonly of?: readonly Kind[];
  /** the other reading of the same digits: `0603` metric is `0201` */
  readonly other?: string;
  /** how sure the text is that this is a package: a bare number may be something else */
  readonly bare?: boolean;
}

/** Chip sizes by their imperial and by their metric names. */
export const IMPERIAL: ReadonlySet<string> = new Set(CHIP_SIZES.map(([imperial]) => imperial));
export const FROM_METRIC: ReadonlyMap<string, string> = new Map([
  ...CHIP_SIZES.flatMap(([imperial, metric]) => (metric ? [[metric, imperial] as const] : [])),
  ...Object.entries(METRIC_ALSO),
]);
export const ALONE_METRIC: ReadonlySet<string> = new Set(METRIC_WHEN_ALONE.split(' '));
export const BODIES: ReadonlySet<string> = new Set(METRIC_BODIES.split(' '));
export const AXIAL: ReadonlySet<string> = new Set(AXIAL_SIZES.split(' '));
const TANTALUM: ReadonlySet<string> = new Set(TANTALUM_CASES.map(([metric]) => metric));
/** A four-digit number on its own: a chip size where there is one of that name. */
export function bareSize(digits: string, start: number): PackageReading | null {
  const end = start + digits.length;
  if (ALONE_METRIC.has(digits))
    return {
      name: FROM_METRIC.get(digits) ?? digits,
      start,
      end,
      bare: true,
      ...(BODIES.has(digits) || TANTALUM.has(digits) ? { other: digits } : {}),
    };
  if (IMPERIAL.has(digits)) return { name: digits, start, end, bare: true };
  if (AXIAL.has(digits))
    return { name: `DIN${digits}`, start, end, bare: true, of: ['resistor', 'inductor', 'capacitor', 'diode'] };
  if (BODIES.has(digits)) return { name: digits, start, end, bare: true, of: ['led', 'crystal', 'oscillator', 'inductor'] };
  return TANTALUM.has(digits) ? { name: `EIA-${digits}`, start, end, bare: true, of: ['capacitor'] } : null;
}
