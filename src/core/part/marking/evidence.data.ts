import type { EvidenceCode } from './marking.ts';

/**
 * How much each thing speaks for (above zero) or against (below) a reading; their sum makes it plausible. Our own judgement of the
 * practice of the trade, no source: a value outside all series weighs more than a seldom notation.
 */
export const WEIGHTS: Readonly<Record<EvidenceCode, number>> = {
  'usual-notation': 1,
  'less-usual-notation': 0,
  'usual-value': 1,
  'small-value': 1,
  'usual-tolerance': 1,
  'only-way': 1,
  'gap-fits': 2,
  'nought-adds-none': 0,
  'seldom-notation': -1,
  'rare-notation': -2,
  'unusual-value': -3,
  'first-figure-nought': -3,
  'rare-tolerance': -1,
  'tolerance-by-edition': -2,
  'rare-temperature': -1,
  'gap-against': -2,
  'special-mark': -2,
  'outside-range': -3,
  'tight-for-size': -1,
  'letter-two-ways': -1,
  'letter-by-maker': -1,
  'letter-seldom': -1,
  'ten-picofarad': -1,
  'r-two-ways': 0,
  turned: -2,
};

/** From this sum on a reading is likely; from the other on possible. */
export const LIKELY = 2;
export const POSSIBLE = 0;
/** Beside a likely reading, one that sums to less is not worth the eye. */
export const NOT_SHOWN_BELOW = -2;
