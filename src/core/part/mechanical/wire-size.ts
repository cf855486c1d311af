import { compare, decimal, multiply, ratio, subtract, type Decimal } from '#core/quantity/decimal.ts';
import { AWG } from './awg.data.ts';

const AREAS: ReadonlyMap<string, Decimal> = new Map(AWG.map(([awg, , area]) => [awg, decimal(area)]));

/** The copper of a gauge in mm², as ASTM B258 publishes it; null for what is no gauge. `"24"` → 0.20473. */
export function areaOfAwg(awg: string): Decimal | null {
  return AREAS.get(awg) ?? null;
}

/**
 * A size in mm² (IEC 60228) and a gauge are different wires, never the same; they may be judged for each other while neither has a
 * tenth more copper: 0.5 mm² and AWG 20, not 1.5 mm² and AWG 16.
 */
const CLOSE = decimal('0.1');

function isClose(awg: string, squareMillimetres: Decimal): boolean {
  const area = areaOfAwg(awg);
  return area !== null && compare(apart(area, squareMillimetres), multiply(area, CLOSE)) <= 0;
}

function apart(a: Decimal, b: Decimal): Decimal {
  return compare(a, b) < 0 ? subtract(b, a) : subtract(a, b);
}

interface Sizes {
  readonly awg: string | null;
  readonly area: Decimal | null;
}

function sizesOf(words: readonly string[]): Sizes {
  const awg = words.flatMap((word) => /^awg(\d\/0|\d{1,2})$/.exec(word)?.[1] ?? [])[0] ?? null;
  const area = words.flatMap((word) => /^(\d+(?:\.\d+)?)mm2$/.exec(word)?.[1] ?? [])[0];
  return { awg, area: area === undefined ? null : decimal(area) };
}

/** How the sizes of two wires answer each other where one is a gauge and the other in mm²; null where that is not so. */
function acrossMeasures(mine: readonly string[], wanted: readonly string[]): 'near' | 'other' | null {
  const [own, asked] = [sizesOf(mine), sizesOf(wanted)];
  const [gauge, trade] = own.awg !== null && own.area === null ? [own, asked] : [asked, own];
  if (gauge.awg === null || gauge.area !== null || trade.area === null || trade.awg !== null) return null;
  return isClose(gauge.awg, trade.area) ? 'near' : 'other';
}

/** Do the words of two wires name sizes that are surely another: `awg24` and `0.5mm2`? Words in the same measure are not looked at. */
export function wireSizesClash(mine: readonly string[], wanted: readonly string[]): boolean {
  return acrossMeasures(mine, wanted) === 'other';
}

/** May one wire be judged for the other: `awg20` and `0.5mm2`? */
export function wireSizesNear(mine: readonly string[], wanted: readonly string[]): boolean {
  return acrossMeasures(mine, wanted) === 'near';
}

/** The words of a wire that names both: a size in mm² beside its own gauge only explains it. Two sizes that disagree both stand. */
export function settleWireSize(words: ReadonlySet<string>): ReadonlySet<string> {
  const { awg, area } = sizesOf([...words]);
  if (awg === null || area === null || !isClose(awg, area)) return words;
  return new Set([...words].filter((word) => !word.endsWith('mm2')));
}

/** What a ratio of two whole measures is: `6.4`, `3.2` → `2to1`; null where it is no whole number. */
export function shrinkRatio(wide: Decimal, narrow: Decimal): string | null {
  const whole = ratio(wide, narrow, 0);
  return compare(multiply(whole, narrow), wide) === 0 ? `${Number(whole)}to1` : null;
}
