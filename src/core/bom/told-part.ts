import { readCell } from '#core/part/cell.ts';
import type { Doubt, DoubtField } from '#core/part/doubt.ts';
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
 * in the unit of the kind stays as it was read. Words that say more than the kind win over both: `33 ohm 0805 resistor`.
 * Null where the words name no kind.
 */
export function toldKind(row: Told, said: string, cells: readonly RoleCell[] | undefined): PartReading | null {
  const kind = kindSaid(said);
  if (kind === null) return null;
  const { part: before, refs } = row;
  const fields = cells && partFields(cells);
  const read = readPart(before.text, { refs, kind, ...(fields && Object.keys(fields).length > 0 && { fields }) });
  const unit = KIND_ROWS[kind].value;
  const value = before.facts.value?.unit === unit ? before.facts.value : read.part.facts.value;
  const kept = Object.values(before.facts).filter((fact) => may(kind, fact) && !read.part.facts[fact.key]);
  const rest = Object.values(read.part.facts).filter(({ key }) => key !== 'value');
  const facts = byKey([...kept, ...rest, ...(value && value.unit === unit ? [value] : [])]);
  const of = (doubts: readonly Doubt[], valued: boolean): Doubt[] =>
    doubts.filter(({ field }) => field !== 'kind' && (field === 'value' || field === 'unit') === valued);
  const doubts = [...of(read.doubts, false), ...of(value === read.part.facts.value ? read.doubts : row.doubts, true)];
  return withMore({ part: { ...before, kind, facts }, doubts }, toldMore(said, kind, refs), said);
}

/** May a part of the kind have the fact? */
function may(kind: Kind, { key }: Fact): boolean {
  return OF_ANY.has(key) || KIND_ROWS[kind].facts.includes(WITH[key] ?? key);
}

/** What words state of a part of the kind, whatever they were asked for; words that tell it only from others are no fact. */
function toldMore(said: string, kind: Kind, refs: readonly string[], but: readonly FactKey[] = []): PartReading {
  const { part, doubts } = readPart(said, { refs, kind });
  const stated = Object.values(part.facts).filter(
    (fact) =>
      fact.origin === 'stated' &&
      fact.key !== 'variant' &&
      !but.includes(fact.key) &&
      (fact.key === 'value' ? fact.unit === KIND_ROWS[kind].value : may(kind, fact)),
  );
  const fields = new Set(stated.flatMap(({ key }) => fieldsOf(key)));
  return { part: { ...part, facts: byKey(stated) }, doubts: doubts.filter(({ field }) => fields.has(field)) };
}

/** What was told of the part beside what was asked wins over what was read of it, with its own doubts in place of those. */
function withMore({ part, doubts }: PartReading, more: PartReading, text: string): PartReading {
  const told = Object.values(more.part.facts);
  if (told.length === 0) return { part, doubts };
  const fields = new Set(told.flatMap(({ key }) => fieldsOf(key)));
  // of a pair, such as both ends of a tolerance, none stays that is not told
  const rest = Object.values(part.facts).filter(({ key }) => !fieldsOf(key).some((field) => fields.has(field)));
  return {
    part: { ...part, facts: byKey([...rest, ...told]), text },
    doubts: [...doubts.filter(({ field }) => !fields.has(field)), ...more.doubts],
  };
}

/** The fields that a doubt about the fact can have. */
function fieldsOf(fact: FactKey): DoubtField[] {
  return Object.entries(FACT_FIELDS).flatMap(([field, { facts }]) =>
    // as: the keys of the table are fields of doubts, each checked by its type
    (facts as readonly FactKey[]).includes(fact) ? [field as FactField] : [],
  );
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

/**
 * The part with the fact that was told, and with whatever else the same words state (`4.7 nF 50 V 0805`); null where they say no
 * such fact of a part of this kind, or more than one. Words that name another kind tell that too.
 */
export function toldFact(row: Told, field: FactField, said: string, cells: readonly RoleCell[] | undefined): PartReading | null {
  const { part, refs, doubts } = row;
  const { cell, facts, unit } = FACT_FIELDS[field];
  const named = NAMES.has(field) ? null : kindNamed(said);
  if (named !== null && named !== part.kind) {
    const read = toldKind(row, said, cells);
    return read && toldFact({ ...row, ...read }, field, said, cells);
  }
  const alone = UNIT_ALONE.test(said) && cell === 'value';
  const bare = BARE.test(said) && unit;
  const text = alone ? `${bareValue(row)} ${said}` : bare ? `${said} ${unit}` : said;
  const keys: readonly FactKey[] = facts;
  const read = readPart('', { refs, kind: part.kind, fields: { [cell]: text } });
  const told = keys.flatMap((key) => read.part.facts[key] ?? []);
  const doubtful = read.doubts.some((doubt) => (doubt.field === field || doubt.field === cell) && !isAssumption(doubt));
  const strange = cell === 'value' && told.some((fact) => fact.unit !== KIND_ROWS[part.kind].value);
  if (told.length === 0 || doubtful || strange) return null;
  const rest = Object.values(part.facts).filter(({ key }) => !keys.includes(key));
  const fact = { ...part, facts: byKey([...rest, ...told.map((one): Fact => ({ ...one, origin: 'stated' }))]) };
  const clear = doubts.filter((doubt) => doubt.field !== 'kind' || named === null);
  return NAMES.has(field) || bare || alone
    ? { part: fact, doubts: clear }
    : withMore({ part: fact, doubts: clear }, toldMore(said, part.kind, refs, keys), part.text);
}

/** Fields whose text may be any name: what else it could be read as was not said. */
const NAMES: ReadonlySet<FactField> = new Set<FactField>(['partNumber', 'maker']);

/** The kind that the words name: `33 nF capacitor`, not `33 nF`. */
function kindNamed(said: string): Kind | null {
  const kind = kindSaid(said);
  const words = readCell('text', said).atoms.flatMap((atom) => (atom.type === 'word' ? atom.meaning.kinds : []));
  return kind !== null && words.includes(kind) ? kind : null;
}

/** The number to which a unit was missing. */
function bareValue({ doubts }: Told): string {
  return String(doubts.find(({ code }) => code === 'unit-assumed')?.args['text'] ?? '');
}

function byKey(facts: readonly Fact[]): Part['facts'] {
  return Object.fromEntries(facts.map((fact) => [fact.key, fact]));
}
