import { compare, decimal, multiply, type Decimal } from '#core/quantity/decimal.ts';
import { plainDigits } from '#core/quantity/write-quantity.ts';
import { shrinkRatio } from './wire-size.ts';

export interface Tube {
  /** inner diameter as it comes, in mm */
  readonly wide: Decimal | null;
  /** `3to1`, or `to3.2mm` where the ratio is no whole number */
  readonly words: readonly string[];
}

const NAMED = /heat ?shrink|schrumpfschlauch|schrumpfschlauche|gaine thermo|termorretractil|termoretraibile|termorestringente/;
const RATIO = /(?<![\d.,])([2346])\s?(?::|to|zu|a)\s?1(?![\d.,])/;
const PAIR = /(?<![\d.,])(\d+(?:[.,]\d+)?)\s?(?:mm)?\s?(?:\/|auf|to|->)\s?(\d+(?:[.,]\d+)?)(?:\s?mm)?(?![\d.,:"])/;
const INCHES = /(?<![\d.,/])(\d+)\/(\d+)\s?(?:"|in(?:ch)?(?![a-z]))/;
const WIDE = /(?<![\d.,:/])(\d+(?:[.,]\d+)?)\s?mm/;
const TO_MILLIMETRES = decimal('25.4');

/** What a folded text says of a heat-shrink tube: `3:1 6 mm`, `ht 6.4/3.2`, `1/4"`; null where it names none. */
export function tubeOf(folded: string): Tube | null {
  if (!NAMED.test(folded)) return null;
  const told = RATIO.exec(folded)?.[1];
  const inches = INCHES.exec(folded);
  if (inches) return { wide: fromInches(Number(inches[1]), Number(inches[2])), words: told ? [`${told}to1`] : [] };
  const left = folded.replace(RATIO, ' ');
  const pair = PAIR.exec(left);
  if (pair) return fromPair(numberOf(pair[1]), numberOf(pair[2]));
  const wide = WIDE.exec(left)?.[1];
  return { wide: wide === undefined ? null : numberOf(wide), words: told ? [`${told}to1`] : [] };
}

const numberOf = (figures = '0'): Decimal => decimal(figures.replace(',', '.'));

function fromPair(one: Decimal, other: Decimal): Tube {
  const [wide, narrow] = compare(one, other) < 0 ? [other, one] : [one, other];
  return { wide, words: [shrinkRatio(wide, narrow) ?? `to${plainDigits(narrow)}mm`] };
}

/** Sixteenths and the like end after a few places; other parts of an inch are no trade size. */
function fromInches(over: number, under: number): Decimal | null {
  return [1, 2, 4, 8, 16, 32, 64].includes(under) ? multiply(decimal(String(over / under)), TO_MILLIMETRES) : null;
}
