import type { DoubtField } from '#core/part/doubt.ts';
import { isOfPart } from '#core/part/doubted.ts';
import { isNoBagNumber, readBagNumber } from '#core/stock/bag-number.ts';
import { done, refuse, type Outcome } from '#core/stock/refusal.ts';
import type { ReadRow } from './bom.ts';
import { needDoubts } from './per-board.ts';
import { readQuantity } from './quantity.ts';
import { readRefs } from './refs.ts';
import type { RoleCell } from './row-cells.ts';
import { isFactField, toldFact, toldKind, toldPart, type FactField } from './told-part.ts';

/** What a person said of a field of a row: the text that should stand there, or null where it is right as it was read. */
export interface RowAnswer {
  readonly row: number;
  readonly field: string;
  readonly text: string | null;
}

/** Fields that an answer may be about beside the facts: the part as a whole, how many, and where the bag goes. */
const FIELDS = ['part', 'kind', 'quantity', 'refs', 'fitted', 'row', 'location', 'bag', 'box', 'place', 'supplier'] as const;
type AnswerField = (typeof FIELDS)[number] | FactField;

/**
 * A row as it stands once a person has answered for it: what was told wins over what was read, and no doubt remains on its field.
 * An answer that can't be read is refused, by row and field. `{field: 'value', text: '4.7 µF'}`; null: right as it was read.
 */
export function answered(row: ReadRow, answers: readonly RowAnswer[], cells?: readonly RoleCell[]): Outcome<ReadRow> {
  let told = row;
  // what was told of the part as a whole has no cells
  const read = answers.some(({ field, text }) => field === 'part' && text !== null) ? undefined : cells;
  for (const answer of inOrder(answers)) {
    const next = answerOne(told, answer, read);
    if (!next.ok) return next;
    told = next.value;
  }
  return done(told);
}

/** What others are read by comes first; what was said of the part before it was told anew, as a whole or by its kind, is void. */
function inOrder(answers: readonly RowAnswer[]): RowAnswer[] {
  const last = (field: string): number => answers.findLastIndex((one) => one.field === field && one.text !== null);
  const [part, kind] = [last('part'), last('kind')];
  const holds = ({ field, text }: RowAnswer, at: number): boolean => {
    if (!isPartField(field)) return true;
    return at >= part && (text !== null || at >= kind);
  };
  const rank = ({ field, text }: RowAnswer): number => {
    const at = text === null ? -1 : FIRST.indexOf(field);
    return at < 0 ? FIRST.length : at;
  };
  return answers.filter(holds).toSorted((a, b) => rank(a) - rank(b));
}

const FIRST: readonly string[] = ['refs', 'part', 'kind'];

function isField(field: string): field is AnswerField {
  return (FIELDS as readonly string[]).includes(field) || isFactField(field);
}

function isPartField(field: string): boolean {
  return field === 'part' || field === 'kind' || isFactField(field);
}

function answerOne(row: ReadRow, { field, text }: RowAnswer, cells: readonly RoleCell[] | undefined): Outcome<ReadRow> {
  if (!isField(field)) return cannot(row, field, text ?? '', 'field');
  if (text === null) return done(rightAsRead(row, field));
  const said = text.trim();
  if (said === '') return cannot(row, field, text, 'text');
  switch (field) {
    case 'quantity':
      return withQuantity(row, said);
    case 'refs':
      return withRefs(row, said);
    case 'fitted':
      return withFitted(row, said);
    case 'row':
      return cannot(row, field, text, 'field');
    case 'location':
    case 'bag':
      return withBag(row, field, said);
    case 'box':
    case 'place':
    case 'supplier':
      return done(settled({ ...row, [field]: said }, field));
    default:
      return withPart(row, field, said, cells);
  }
}

function cannot(row: ReadRow, field: string, received: string, expected: string): Outcome<ReadRow> {
  return refuse('not-valid', { row: row.row, field, received: received.slice(0, 80), expected });
}

/** Without the doubts that the answer is about. */
function settled(row: ReadRow, field: AnswerField): ReadRow {
  const gone: ReadonlySet<DoubtField | AnswerField> = new Set(
    field === 'value' || field === 'unit' ? ['value', 'unit'] : field === 'bag' ? ['location'] : [field],
  );
  const stays = row.doubts.filter((doubt) => !gone.has(doubt.field) && !(field === 'part' && isOfPart(doubt)));
  return { ...row, doubts: stays };
}

/** `about 50` that is right stays an estimate. */
function rightAsRead(row: ReadRow, field: AnswerField): ReadRow {
  const about =
    field === 'quantity' && row.quantity === null ? row.doubts.find(({ code }) => code === 'quantity-estimate') : undefined;
  const estimate = Number(about?.args['taken'] ?? Number.NaN);
  return { ...settled(row, field), ...(Number.isSafeInteger(estimate) && { estimate }) };
}

/**
 * Whole pieces; on a line with refs it says how many a board takes, however many refs there are. A bag may hold about so many, as a
 * list says it: that stays an estimate.
 */
function withQuantity(row: ReadRow, said: string): Outcome<ReadRow> {
  const { quantity, doubts } = readQuantity(said);
  const about = doubts.find(({ code }) => code === 'quantity-estimate')?.args['taken'];
  if (quantity === null && row.refs.length === 0 && ABOUT.test(said) && Number.isSafeInteger(about))
    return done(settled({ ...row, quantity: null, estimate: Number(about) }, 'quantity'));
  if (quantity === null || doubts.length > 0 || !Number.isSafeInteger(quantity))
    return cannot(row, 'quantity', said, 'plain-figures');
  const { estimate: _estimate, ...counted } = row;
  return done(settled({ ...counted, quantity, ...(row.refs.length > 0 && { perBoard: quantity }) }, 'quantity'));
}

const ABOUT = /^(?:about|approx(?:imately)?\.?|ca\.?|circa|etwa|~)\s*\d[\d.,' ]*(?:\s*[^\d\W]+\.?)?$/i;

function withRefs(row: ReadRow, said: string): Outcome<ReadRow> {
  const { refs, rest, doubts, tooMany } = readRefs(said);
  if (tooMany !== null || doubts.length > 0 || rest !== '' || refs.length === 0) return cannot(row, 'refs', said, 'refs');
  const clear = settled({ ...row, refs }, 'refs');
  const others = clear.doubts.filter(({ code }) => code !== 'quantity-not-refs');
  return done({ ...clear, doubts: [...others, ...needDoubts(row.part, refs, row.quantity, row.fitted)] });
}

function withFitted(row: ReadRow, said: string): Outcome<ReadRow> {
  if (/^(?:yes|y|true|fitted)$/i.test(said)) return done(settled({ ...row, fitted: true }, 'fitted'));
  if (/^(?:no|n|false|not fitted)$/i.test(said)) return done(settled({ ...row, fitted: false }, 'fitted'));
  return cannot(row, 'fitted', said, 'yes-or-no');
}

/** A number names the bag; other words say where it is. */
function withBag(row: ReadRow, field: 'location' | 'bag', said: string): Outcome<ReadRow> {
  if (field === 'bag' ? readBagNumber(said) === null : isNoBagNumber(said)) return cannot(row, field, said, 'bag-number');
  return done(settled({ ...row, location: said, bag: said }, field));
}

function withPart(
  row: ReadRow,
  field: 'part' | 'kind' | FactField,
  said: string,
  cells: readonly RoleCell[] | undefined,
): Outcome<ReadRow> {
  if (field === 'part') {
    const { part, doubts } = toldPart(row, said);
    const clear = settled(row, 'part');
    return done({ ...clear, part, doubts: [...clear.doubts, ...doubts] });
  }
  if (field === 'kind') {
    const read = toldKind(row, said, cells);
    if (!read) return cannot(row, 'kind', said, 'kind');
    const others = row.doubts.filter((doubt) => !isOfPart(doubt));
    return done({ ...row, part: read.part, doubts: [...others, ...read.doubts] });
  }
  const read = toldFact(row, field, said, cells);
  return read ? done(settled({ ...row, ...read }, field)) : cannot(row, field, said, field);
}
