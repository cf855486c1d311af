import { isOfPart } from '#core/part/doubted.ts';
import type { DoubtField } from '#core/part/doubt.ts';
import type { ReadField } from '#core/part/hints.ts';
import { KINDS, type Fact, type FactKey, type Kind, type Part } from '#core/part/part.ts';
import { readPart } from '#core/part/read-part.ts';
import { done, refuse, type Outcome } from '#core/stock/refusal.ts';
import type { ReadRow } from './bom.ts';
import { readRefs } from './refs.ts';

/** What a person said of a field of a row: the text that should stand there, or null where it is right as it was read. */
export interface RowAnswer {
  readonly row: number;
  readonly field: string;
  readonly text: string | null;
}

/** Fields that an answer may be about: those of a doubt, the part as a whole, and where the bag goes. */
export const ANSWER_FIELDS = [
  'part',
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
  'maker',
  'quantity',
  'refs',
  'fitted',
  'row',
  'location',
  'bag',
  'box',
  'place',
  'supplier',
] as const;
type AnswerField = (typeof ANSWER_FIELDS)[number];

const PART_FIELDS: Readonly<Partial<Record<AnswerField, { readonly cell: ReadField; readonly facts: readonly FactKey[] }>>> = {
  value: { cell: 'value', facts: ['value'] },
  unit: { cell: 'value', facts: ['value'] },
  tolerance: { cell: 'tolerance', facts: ['tolerance-low', 'tolerance-high'] },
  voltage: { cell: 'voltage', facts: ['voltage', 'voltage-kind'] },
  power: { cell: 'power', facts: ['power'] },
  current: { cell: 'current', facts: ['current'] },
  dielectric: { cell: 'dielectric', facts: ['dielectric'] },
  technology: { cell: 'technology', facts: ['technology'] },
  package: { cell: 'package', facts: ['package', 'pins'] },
  partNumber: { cell: 'partNumber', facts: ['partNumber'] },
  maker: { cell: 'maker', facts: ['maker'] },
};

/**
 * A row as it stands once a person has answered for it, one answer after the other: what was told wins over what was read, and no
 * doubt remains on its field. An answer that can't be read is refused, by row and field. `{field: 'value', text: '4.7 µF'}`.
 */
export function answered(row: ReadRow, answers: readonly RowAnswer[]): Outcome<ReadRow> {
  let told = row;
  for (const answer of answers) {
    const next = answerOne(told, answer);
    if (!next.ok) return next;
    told = next.value;
  }
  return done(told);
}

function isField(field: string): field is AnswerField {
  return (ANSWER_FIELDS as readonly string[]).includes(field);
}

function answerOne(row: ReadRow, { field, text }: RowAnswer): Outcome<ReadRow> {
  if (!isField(field)) return cannot(row, field, text ?? '', 'field');
  if (text === null) return done(settled(row, field));
  const said = text.trim();
  if (said === '') return cannot(row, field, text, 'text');
  if (field === 'part') return done(withPart(row, said));
  if (field === 'kind') return withKind(row, said);
  if (field === 'quantity') return withQuantity(row, said);
  if (field === 'refs') return withRefs(row, said);
  if (field === 'fitted') return withFitted(row, said);
  if (field === 'row') return cannot(row, field, text, 'field');
  if (field === 'location') return done(settled({ ...row, location: said, bag: said }, field));
  if (field === 'bag' || field === 'box' || field === 'place' || field === 'supplier')
    return done(settled({ ...row, [field]: said }, field));
  return withFact(row, field, said);
}

function cannot(row: ReadRow, field: string, received: string, expected: string): Outcome<ReadRow> {
  return refuse('not-valid', { row: row.row, field, received: received.slice(0, 80), expected });
}

/** Without the doubts that the answer is about. */
function settled(row: ReadRow, field: AnswerField): ReadRow {
  const gone: ReadonlySet<DoubtField | 'part' | 'bag' | 'box' | 'place'> = new Set(
    field === 'value' || field === 'unit' ? ['value', 'unit'] : field === 'bag' ? ['location'] : [field],
  );
  const stays = row.doubts.filter((doubt) => !gone.has(doubt.field) && !(field === 'part' && isOfPart(doubt)));
  return { ...row, doubts: stays };
}

function withPart(row: ReadRow, said: string): ReadRow {
  const { part, doubts } = readPart(said, { refs: row.refs });
  const clear = settled(row, 'part');
  return { ...clear, part: { ...part, text: said }, doubts: [...clear.doubts, ...doubts] };
}

/** Another kind reads the same text anew; what was read from cells of their own stays where the text does not say it. */
function withKind(row: ReadRow, said: string): Outcome<ReadRow> {
  const kind = kindSaid(said);
  if (kind === null) return cannot(row, 'kind', said, 'kind');
  const { part, doubts } = readPart(row.part.text, { refs: row.refs, kind });
  const kept = Object.values(row.part.facts).filter(
    (fact) => fact.key !== 'value' && fact.key !== 'doubted' && !part.facts[fact.key],
  );
  const clear = settled(row, 'kind');
  const others = clear.doubts.filter((doubt) => !isOfPart(doubt));
  const own = doubts.filter(({ field }) => field !== 'kind');
  return done({ ...clear, part: { ...part, kind, facts: { ...part.facts, ...byKey(kept) } }, doubts: [...others, ...own] });
}

function kindSaid(said: string): Kind | null {
  const word = said.toLowerCase().replaceAll(' ', '-');
  return KINDS.find((kind) => kind === word || `${kind}s` === word) ?? null;
}

function withQuantity(row: ReadRow, said: string): Outcome<ReadRow> {
  const figures = said.replaceAll(/[\s\u202f\u00a0]/g, '');
  const quantity = Number(figures);
  if (!/^\d{1,10}$/.test(figures) || !Number.isSafeInteger(quantity)) return cannot(row, 'quantity', said, 'plain-figures');
  return done(settled({ ...row, quantity }, 'quantity'));
}

function withRefs(row: ReadRow, said: string): Outcome<ReadRow> {
  const { refs, doubts, tooMany } = readRefs(said);
  if (tooMany !== null || doubts.length > 0 || refs.length === 0) return cannot(row, 'refs', said, 'refs');
  return done(settled({ ...row, refs }, 'refs'));
}

function withFitted(row: ReadRow, said: string): Outcome<ReadRow> {
  if (/^(?:yes|y|true|fitted)$/i.test(said)) return done(settled({ ...row, fitted: true }, 'fitted'));
  if (/^(?:no|n|false|not fitted)$/i.test(said)) return done(settled({ ...row, fitted: false }, 'fitted'));
  return cannot(row, 'fitted', said, 'yes-or-no');
}

function withFact(row: ReadRow, field: AnswerField, said: string): Outcome<ReadRow> {
  const of = PART_FIELDS[field];
  if (!of) return cannot(row, field, said, 'field');
  const read = readPart('', { refs: row.refs, kind: row.part.kind, fields: { [of.cell]: said } }).part;
  const told = of.facts.flatMap((key) => read.facts[key] ?? []);
  if (told.length === 0) return cannot(row, field, said, field);
  const rest = Object.values(row.part.facts).filter(({ key }) => !of.facts.includes(key));
  const part: Part = { ...row.part, facts: { ...byKey(rest), ...byKey(told.map((fact) => ({ ...fact, origin: 'stated' }))) } };
  return done(settled({ ...row, part }, field));
}

function byKey(facts: readonly Fact[]): Part['facts'] {
  return Object.fromEntries(facts.map((fact) => [fact.key, fact]));
}
