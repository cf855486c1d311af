import type { Facts, Kind } from '../part.ts';

/** What a person sees in their hand: it decides which notations may stand on it. */
export const LOOKS = ['bands', 'chip', 'capacitor', 'can', 'coil'] as const;
export type Look = (typeof LOOKS)[number];

export type Plausible = 'likely' | 'possible' | 'unlikely';

/** One thing that speaks for or against a reading. */
export interface Evidence {
  readonly code: EvidenceCode;
  readonly args: Readonly<Record<string, string>>;
}

export type EvidenceCode =
  // for
  | 'usual-notation'
  | 'less-usual-notation'
  | 'usual-value' // {series}
  | 'small-value' // made outside the series too
  | 'usual-tolerance'
  | 'only-way' // {colour, slot}: read from the other end a band has no meaning
  | 'gap-fits'
  | 'nought-adds-none' // {figures}: the last figure is the number of noughts
  // against
  | 'seldom-notation'
  | 'rare-notation'
  | 'unusual-value'
  | 'first-figure-nought'
  | 'rare-tolerance'
  | 'tolerance-by-edition' // {now, old}: the standard changed the colour in 2016
  | 'rare-temperature'
  | 'gap-against'
  | 'special-mark' // {colour}: a fifth band that is no figure
  | 'outside-range'
  | 'tight-for-size'
  | 'letter-two-ways' // {letter}
  | 'letter-by-maker' // {letter}
  | 'letter-seldom' // {letter}
  | 'ten-picofarad' // {letter}: absolute or a share, by maker
  | 'r-two-ways' // {text}: R is the point and a multiplier
  | 'turned'; // {text}: read upside down

/** What one piece of a marking stands for. `means`: digits, a power of ten, a decimal in the unit, a fraction. */
export interface Piece {
  readonly typed: string;
  readonly is: 'figures' | 'times' | 'value' | 'tolerance' | 'voltage' | 'temperature' | 'extra' | 'link' | 'unknown';
  readonly means: string;
}

/** One way to read a marking. All its facts are decoded; what the marking does not say is absent. */
export interface Reading {
  readonly notation: string;
  readonly look: Look;
  readonly kind: Kind;
  readonly facts: Facts;
  readonly pieces: readonly Piece[];
  readonly evidence: readonly Evidence[];
  readonly plausible: Plausible;
}

/** Why there is no reading at all. */
export type Unread =
  | { readonly code: 'underlined' | 'too-long' | 'no-notation'; readonly args: { readonly text: string } }
  | { readonly code: 'other-scheme'; readonly args: { readonly text: string } }
  | { readonly code: 'band-count'; readonly args: { readonly count: string } }
  | { readonly code: 'band-meaningless'; readonly args: { readonly colour: string; readonly slot: string } };

/** Readings, the most plausible first; `unread` says why there are none. */
export interface MarkingRead {
  readonly readings: readonly Reading[];
  readonly unread: Unread | null;
}
