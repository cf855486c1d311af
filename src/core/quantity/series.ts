import { compare, digitsOf, fromDigits, ratio, subtract, type Decimal } from './decimal.ts';
import { E24, NOT_ROUNDED } from './series.data.ts';

/** The series of preferred values of IEC 60063, by how many members a decade has. */
export const SERIES = ['E3', 'E6', 'E12', 'E24', 'E48', 'E96', 'E192'] as const;
export type Series = (typeof SERIES)[number];

/** Members from 100 to 999, rising. Up to E24 a list, from E48 on 100 × 10^(i/n) rounded, with one exception. */
const MEMBERS: ReadonlyMap<Series, readonly number[]> = new Map(
  SERIES.map((series) => [series, membersOf(Number(series.slice(1)))]),
);

function membersOf(count: number): number[] {
  if (count <= E24.length) return E24.filter((_, at) => at % (E24.length / count) === 0).map((two) => two * 10);
  return Array.from({ length: count }, (_, at) => {
    const rounded = Math.round(100 * 10 ** (at / count));
    return NOT_ROUNDED[rounded] ?? rounded;
  });
}

/** One decade of a series, from 100 to 999: `E3` → 100, 220, 470. */
export function membersIn(series: Series): readonly number[] {
  return MEMBERS.get(series) ?? [];
}

/** The three leading figures of a value above zero where it has no more: 9090 → 909, 47 → 470; of 12345 null. */
function threeFigures(value: Decimal): number | null {
  const { digits } = digitsOf(value);
  return digits > 0n && digits < 1000n ? Number(digits.toString().padEnd(3, '0')) : null;
}

/** All series that have a value, the coarsest first: 4700 → E3, E6, E12, E24, E192; 9090 → E48, E96, E192; 12345 → none. */
export function seriesOf(value: Decimal): Series[] {
  const figures = threeFigures(value);
  return figures === null ? [] : SERIES.filter((series) => membersIn(series).includes(figures));
}

export interface Neighbours {
  /** the next member below the value, never the value itself */
  readonly below: Decimal;
  readonly above: Decimal;
  /** the value itself where it is a member; of two that lie equally far the upper one, which is nearer by ratio */
  readonly nearest: Decimal;
  /** (nearest − value) / value, rounded to a millionth: −12e-3 is 1.2 % below */
  readonly deviation: Decimal;
}

/** The members of a series around a value above zero, in any decade; null for zero and below. `(9200, "E24")` → 9100, 10000. */
export function neighbours(value: Decimal, series: Series): Neighbours | null {
  const { digits, exponent } = digitsOf(value);
  if (digits <= 0n) return null;
  const power = digits.toString().length + exponent - 3;
  const scaled = membersIn(series).map((member) => fromDigits(BigInt(member), power));
  const last = fromDigits(BigInt(membersIn(series).at(-1) ?? 0), power - 1);
  const below = scaled.findLast((member) => compare(member, value) < 0) ?? last;
  const above = scaled.find((member) => compare(member, value) > 0) ?? fromDigits(1n, power + 3);
  const nearest = scaled.includes(value) ? value : nearer(value, below, above);
  return { below, above, nearest, deviation: ratio(subtract(nearest, value), value, 6) };
}

function nearer(value: Decimal, below: Decimal, above: Decimal): Decimal {
  return compare(subtract(value, below), subtract(above, value)) < 0 ? below : above;
}
