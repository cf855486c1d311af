import type { Doubt, DoubtCode, DoubtField } from './doubt.ts';
import { wordFact, type Part } from './part.ts';

const PART_FIELDS: ReadonlySet<DoubtField> = new Set<DoubtField>([
  'kind',
  'value',
  'unit',
  'tolerance',
  'voltage',
  'power',
  'current',
  'dielectric',
  'technology',
  'package',
  'partNumber',
]);

/** A unit taken from the kind is an assumption that the trade shares; any other doubt about a part is for a person. */
const ASSUMED: ReadonlySet<DoubtCode> = new Set<DoubtCode>(['unit-assumed']);

/** Does the doubt concern what the part is? */
export function isOfPart({ field }: Doubt): boolean {
  return PART_FIELDS.has(field);
}

/** May what was read be taken, as an assumption, in spite of the doubt? */
export function isAssumption({ code }: Doubt): boolean {
  return ASSUMED.has(code);
}

/**
 * The part as a bag keeps it: fields that were read with a doubt stay named in the fact `doubted`, so that a guess at the door
 * never becomes a certainty on the shelf. `47K 50V X7R`, read as 47 pF with a doubt → `doubted: value`.
 */
export function withDoubts(part: Part, doubts: readonly Doubt[]): Part {
  const fields = [...new Set(doubts.filter((doubt) => isOfPart(doubt) && !isAssumption(doubt)).map(({ field }) => field))];
  if (fields.length === 0) return part;
  const value = fields.toSorted().join(' ');
  return { ...part, facts: { ...part.facts, doubted: { key: 'doubted', value, unit: null, origin: 'assumed' } } };
}

/** The fields of a part that were read with a doubt. */
export function doubtedFields(part: Part): readonly string[] {
  return wordFact(part, 'doubted')?.split(' ') ?? [];
}
