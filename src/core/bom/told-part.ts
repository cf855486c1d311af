import type { Doubt } from '#core/part/doubt.ts';
import { isAssumption } from '#core/part/doubted.ts';
import type { ReadField } from '#core/part/hints.ts';
import { KIND_ROWS } from '#core/part/kinds.data.ts';
import { KINDS, type Fact, type FactKey, type Kind, type Part } from '#core/part/part.ts';
import { readPart, type PartReading } from '#core/part/read-part.ts';
import type { ReadRow } from './bom.ts';
import { partFields, type RoleCell } from './row-cells.ts';

/** Facts that a person may tell, each with the cell that it would stand in and the unit of a bare number. */
const FACT_FIELDS = {
  value: { cell: 'value', facts: ['value'], unit: '' },
  unit: { cell: 'value', facts: ['value'], unit: '' },
  tolerance: { cell: 'tolerance', facts: ['tolerance-low', 'tolerance-high'], unit: '%' },
  voltage: { cell: 'voltage', facts: ['voltage', 'voltage-kind'], unit: 'V' },
  power: { cell: 'power', facts: ['power'], unit: 'W' },
  current: { cell: 'current', facts: ['current'], unit: 'A' },
  dielectric: { cell: 'dielectric', facts: ['dielectric'], unit: '' },
  technology: { cell: 'technology', facts: ['technology'], unit: '' },
  package: { cell: 'package', facts: ['package'], unit: '' },
  partNumber: { cell: 'partNumber', facts: ['partNumber'], unit: '' },
  maker: { cell: 'maker', facts: ['maker'], unit: '' },
} as const satisfies Readonly<
  Record<string, { readonly cell: ReadField; readonly facts: readonly FactKey[]; readonly unit: string }>
>;
export type FactField = keyof typeof FACT_FIELDS;

export function isFactField(field: string): field is FactField {
  return field in FACT_FIELDS;
}

type Told = Pick<ReadRow, 'part' | 'refs' | 'doubts'>;

/** What the whole part is, told in words. */
export function toldPart({ refs }: Told, said: string): PartReading {
  const { part, doubts } = readPart(said, { refs });
  return { part: { ...part, text: said }, doubts };
}

/** Facts that a part of any kind may have. */
const OF_ANY: ReadonlySet<FactKey> = new Set<FactKey>(['package', 'partNumber', 'maker']);
/** Facts that go with another. */
const WITH: Readonly<Partial<Record<FactKey, FactKey>>> = { 'tolerance-high': 'tolerance-low', 'voltage-kind': 'voltage' };

/**
 * Another kind reads the row anew. What was read before stays where the new reading is silent and the kind can have it; a value
 * in the unit of the kind stays as it was read. Null where the words name no kind.
 */
export function toldKind(row: Told, said: string, cells: readonly RoleCell[] | undefined): PartReading | null {
  const kind = kindSaid(said);
  if (kind === null) return null;
  const { part: before, refs } = row;
  const fields = cells && partFields(cells);
  const read = readPart(before.text, { refs, kind, ...(fields && Object.keys(fields).length > 0 && { fields }) });
  const unit = KIND_ROWS[kind].value;
  const value = before.facts.value?.unit === unit ? before.facts.value : read.part.facts.value;
  const may = ({ key }: Fact): boolean => OF_ANY.has(key) || KIND_ROWS[kind].facts.includes(WITH[key] ?? key);
  const kept = Object.values(before.facts).filter((fact) => may(fact) && !read.part.facts[fact.key]);
  const rest = Object.values(read.part.facts).filter(({ key }) => key !== 'value');
  const facts = byKey([...kept, ...rest, ...(value && value.unit === unit ? [value] : [])]);
  const of = (doubts: readonly Doubt[], valued: boolean): Doubt[] =>
    doubts.filter(({ field }) => field !== 'kind' && (field === 'value' || field === 'unit') === valued);
  const doubts = [...of(read.doubts, false), ...of(value === read.part.facts.value ? read.doubts : row.doubts, true)];
  return { part: { ...before, kind, facts }, doubts };
}

/** The name of a kind, or words that leave no doubt about it. */
function kindSaid(said: string): Kind | null {
  const word = said.toLowerCase().replaceAll(' ', '-');
  const named = KINDS.find((kind) => kind === word || `${kind}s` === word);
  if (named) return named;
  const { part, doubts } = readPart(said);
  return part.kind === 'other' || doubts.some(({ field }) => field === 'kind') ? null : part.kind;
}

const BARE = /^\d+(?:[.,]\d+)?$/;
const UNIT_ALONE = /^(?:[pnuµμmkMG]?(?:F|H|Hz|Ω|V|A|ohms?)|[kM])$/;

/** The part with the fact that was told; null where the words say no such fact of a part of this kind, or more than one. */
export function toldFact(row: Told, field: FactField, said: string): Part | null {
  const { part, refs } = row;
  const { cell, facts, unit } = FACT_FIELDS[field];
  const text =
    UNIT_ALONE.test(said) && cell === 'value' ? `${bareValue(row)} ${said}` : BARE.test(said) && unit ? `${said} ${unit}` : said;
  const keys: readonly FactKey[] = facts;
  const read = readPart('', { refs, kind: part.kind, fields: { [cell]: text } });
  const told = keys.flatMap((key) => read.part.facts[key] ?? []);
  const doubtful = read.doubts.some((doubt) => (doubt.field === field || doubt.field === cell) && !isAssumption(doubt));
  const strange = cell === 'value' && told.some((fact) => fact.unit !== KIND_ROWS[part.kind].value);
  if (told.length === 0 || doubtful || strange) return null;
  const rest = Object.values(part.facts).filter(({ key }) => !keys.includes(key));
  return { ...part, facts: byKey([...rest, ...told.map((fact): Fact => ({ ...fact, origin: 'stated' }))]) };
}

/** The number to which a unit was missing. */
function bareValue({ doubts }: Told): string {
  return String(doubts.find(({ code }) => code === 'unit-assumed')?.args['text'] ?? '');
}

function byKey(facts: readonly Fact[]): Part['facts'] {
  return Object.fromEntries(facts.map((fact) => [fact.key, fact]));
}
