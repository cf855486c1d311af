import { writeMarkings } from '#core/part/marking/write-markings.ts';
import type { Fact, Kind } from '#core/part/part.ts';
import { readValue, type ValueReading } from '#core/part/read-value.ts';
import { decimal, toNumber, ZERO, type Decimal } from '#core/quantity/decimal.ts';
import { writeRkm } from '#core/quantity/rkm.ts';
import { neighbours, seriesOf, type Series } from '#core/quantity/series.ts';
import { writeQuantity } from '#core/quantity/write-quantity.ts';
import { doubtText } from '#say/en/doubts.ts';

/** Units whose parts are made in preferred values, with the look of the part that has a printed value. */
const MADE: Readonly<Record<string, { readonly look: 'chip' | 'capacitor' | 'coil'; readonly kind: Kind } | null>> = {
  ohm: { look: 'chip', kind: 'resistor' },
  F: { look: 'capacitor', kind: 'capacitor' },
  H: { look: 'coil', kind: 'inductor' },
  V: null,
};
const SHOWN: readonly Series[] = ['E24', 'E96'];
const ONE_PERCENT = decimal('0.01');

/** A member of a series beside a value; `deviation` is a fraction of the value. */
export interface NearestTold {
  readonly series: Series;
  readonly nearest: string;
  readonly deviation: Decimal;
  readonly below: string;
  readonly above: string;
}

/** What there is to know of a value alone. `series` null where its unit has none. */
export interface ValueTold {
  readonly read: ValueReading;
  readonly number: number;
  readonly written: string;
  readonly code: string;
  readonly series: readonly Series[] | null;
  readonly nearest: readonly NearestTold[];
  readonly look: 'chip' | 'capacitor' | 'coil' | null;
  readonly marks: readonly { readonly text: string; readonly onePercent: boolean }[];
  readonly doubts: readonly { readonly field: string; readonly why: string; readonly settle: string }[];
}

/** How a value is read, its series, its neighbours in E24 and E96, its two spellings and its marks; null where the text is no value alone. */
export function tellValue(text: string): ValueTold | null {
  const read = readValue(text);
  if (!read) return null;
  const { value, unit, doubts } = read;
  const made = Object.hasOwn(MADE, unit);
  return {
    read,
    number: toNumber(value),
    written: writeQuantity(value, unit),
    code: writeRkm(value, unit),
    series: made ? seriesOf(value) : null,
    nearest: made && value !== ZERO ? SHOWN.flatMap((series) => nearestIn(value, unit, series)) : [],
    look: MADE[unit]?.look ?? null,
    marks: marksOf(value, unit),
    doubts: doubts.map((doubt) => ({ field: doubt.field, ...doubtText(doubt) })),
  };
}

function nearestIn(value: Decimal, unit: string, series: Series): NearestTold[] {
  const found = neighbours(value, series);
  if (!found) return [];
  const written = (member: Decimal): string => writeQuantity(member, unit);
  return [
    {
      series,
      nearest: written(found.nearest),
      deviation: found.deviation,
      below: written(found.below),
      above: written(found.above),
    },
  ];
}

/** What may be printed on a part of this value: first what any tolerance may have, then what says ±1 % by its form. */
function marksOf(value: Decimal, unit: string): ValueTold['marks'] {
  const made = MADE[unit];
  if (!made) return [];
  const texts = (tolerance: Decimal | null, notation?: string): string[] => {
    const facts = [fact('value', value, unit)];
    if (tolerance !== null)
      facts.push(fact('tolerance-low', tolerance, 'fraction'), fact('tolerance-high', tolerance, 'fraction'));
    const part = { kind: made.kind, facts: Object.fromEntries(facts.map((one) => [one.key, one])), text: '' };
    return writeMarkings(part).flatMap((mark) =>
      mark.look === made.look && (notation === undefined || mark.notation === notation) ? [mark.text] : [],
    );
  };
  return [
    ...texts(null).map((text) => ({ text, onePercent: false })),
    ...texts(ONE_PERCENT, 'e96').map((text) => ({ text, onePercent: true })),
  ];
}

function fact(key: Fact['key'], value: Decimal, unit: string): Fact {
  return { key, value, unit, origin: 'stated' };
}
