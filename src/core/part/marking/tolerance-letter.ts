import { compare, decimal, multiply, shift, type Decimal } from '#core/quantity/decimal.ts';
import { readToleranceLetter, type Tolerance } from '#core/quantity/tolerance.ts';
import type { Evidence, Piece } from './marking.ts';
import { OF_LOOK, type NotationRow } from './notations.data.ts';
import { say } from './weigh.ts';

interface Told {
  readonly tolerance: Tolerance | null;
  readonly against: readonly Evidence[];
}

const TEN_PICOFARAD = decimal('1e-11');
const MICROFARAD = decimal('1e-6');
const SELDOM = /[EHLNPW]/;
const MAKERS = /[APRUVWY]/;

/** What a tolerance letter means beside this value; two ways at exactly 10 pF, where makers differ. */
export function toleranceLetter(row: NotationRow, letter: string | null, value: Decimal): Told[] {
  if (row.tolerance !== undefined)
    return [{ tolerance: { low: decimal(row.tolerance), high: decimal(row.tolerance), unit: 'fraction' }, against: [] }];
  if (letter === null) return [{ tolerance: null, against: [] }];
  const capacitor = OF_LOOK[row.look].unit === 'F';
  if (capacitor && MAKERS.test(letter)) return [{ tolerance: null, against: [say('letter-by-maker', { letter })] }];
  const share = readToleranceLetter(letter, capacitor ? value : null);
  if (share === null) return [{ tolerance: null, against: [say('letter-by-maker', { letter })] }];
  const against: Evidence[] = [
    ...(SELDOM.test(letter) ? [say('letter-seldom', { letter })] : []),
    ...(row.look === 'chip' && /[KM]/.test(letter) ? [say('letter-two-ways', { letter })] : []),
    ...(capacitor && share.unit === 'fraction' && compare(share.low, decimal('0.05')) <= 0 && compare(value, MICROFARAD) > 0
      ? [say('tight-for-size')]
      : []),
  ];
  const absolute = capacitor && value === TEN_PICOFARAD ? readToleranceLetter(letter, multiply(value, decimal('0.9'))) : null;
  if (absolute === null || absolute.unit !== 'F') return [{ tolerance: share, against }];
  const boundary = say('ten-picofarad', { letter });
  return [
    { tolerance: share, against: [...against, boundary] },
    { tolerance: absolute, against: [...against, boundary] },
  ];
}

export function tolerancePieces(letter: string | null, tolerance: Tolerance | null, row: NotationRow): Piece[] {
  if (letter === null || row.tolerance !== undefined) return [];
  if (tolerance === null) return [{ typed: letter, is: 'unknown', means: '' }];
  return [{ typed: letter, is: 'tolerance', means: writeTolerance(tolerance) }];
}

/** Low and high in % or pF, with a stroke between where they differ: `10`, `20/80`, `0.5pF`. */
function writeTolerance({ low, high, unit }: Tolerance): string {
  const shown = (one: Decimal): string => String(Number(shift(one, unit === 'F' ? 12 : 2)));
  return `${low === high ? shown(low) : `${shown(low)}/${shown(high)}`}${unit === 'F' ? 'pF' : '%'}`;
}
