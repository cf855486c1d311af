/** How many pieces above the count to take: the larger of `least` and `share` of the need, rounded up. */
export interface SpareRule {
  readonly size: string;
  readonly least: number;
  readonly share: number;
}

/** Spares for work by hand, by size class. Common practice, no source; a lab can set its own. */
export const USUAL_SPARES: readonly SpareRule[] = [
  { size: 'chip-0201', least: 10, share: 0.2 },
  { size: 'chip-0402', least: 5, share: 0.1 },
  { size: 'chip-0603', least: 3, share: 0.05 },
  { size: 'chip-large', least: 2, share: 0.05 },
  { size: 'small-outline', least: 1, share: 0 },
  { size: 'leaded', least: 2, share: 0 },
  { size: 'diode', least: 2, share: 0 },
  { size: 'fastener', least: 2, share: 0.1 },
  { size: 'length', least: 0, share: 0.1 },
  { size: 'other', least: 0, share: 0 },
];
