import type { Doubt } from '#core/part/doubt.ts';
import type { FactKey, NumericFact, Part, WordFact } from '#core/part/part.ts';
import { numberFact, wordFact } from '#core/part/part.ts';
import { compare, toNumber } from '#core/quantity/decimal.ts';
import type { ReadRow } from './bom.ts';

/** Makes the two sentences of a doubt; `say/` holds them. */
export type SayDoubt = (doubt: Doubt) => { readonly why: string; readonly settle: string };

/** Facts behind the fields of the contract that an ordering code may tell. */
const DECODABLE: readonly (readonly [string, FactKey])[] = [
  ['value', 'value'],
  ['tolerance', 'tolerance-low'],
  ['voltage', 'voltage'],
  ['power', 'power'],
  ['current', 'current'],
  ['dielectric', 'dielectric'],
  ['technology', 'technology'],
  ['package', 'package'],
  ['partNumber', 'partNumber'],
  ['maker', 'maker'],
];

/** A row as the `read` contract prints it; what is not stated is null. Box, place and alternates stand there only where the row has them. */
export function readJson(row: ReadRow, say: SayDoubt): object {
  return {
    row: row.row,
    refs: row.refs,
    quantity: row.quantity,
    fitted: row.fitted,
    part: partJson(row.part),
    location: row.location,
    ...(row.box ? { box: row.box } : {}),
    ...(row.place ? { place: row.place } : {}),
    supplier: row.supplier,
    ...(row.alternates ? { alternates: row.alternates.map(partJson) } : {}),
    doubts: row.doubts.map((doubt) => ({ field: doubt.field, ...say(doubt) })),
  };
}

/** The part of the `read` contract, numbers in SI base units. */
export function partJson(part: Part): object {
  const number = (key: NumericFact): number | null => {
    const value = numberFact(part, key);
    return value === null ? null : toNumber(value);
  };
  const word = (key: WordFact): string | null => wordFact(part, key);
  return {
    kind: part.kind,
    value: number('value'),
    unit: part.facts.value?.unit ?? null,
    tolerance: symmetricTolerance(part),
    voltage: number('voltage'),
    power: number('power'),
    current: number('current'),
    dielectric: word('dielectric'),
    technology: word('technology'),
    package: word('package'),
    partNumber: word('partNumber'),
    maker: word('maker'),
    decoded: DECODABLE.filter(([, key]) => part.facts[key]?.origin === 'decoded').map(([field]) => field),
    text: part.text,
  };
}

/** The fraction of a tolerance that is the same on both sides, else null. */
function symmetricTolerance(part: Part): number | null {
  const low = part.facts['tolerance-low'];
  const high = part.facts['tolerance-high'];
  const [below, above] = [numberFact(part, 'tolerance-low'), numberFact(part, 'tolerance-high')];
  if (!low || !high || below === null || above === null || low.unit !== 'fraction' || high.unit !== 'fraction') return null;
  return compare(below, above) === 0 ? toNumber(above) : null;
}
