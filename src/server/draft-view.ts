import type { ShownDraft, TakenNumber } from '#actions/show-draft.ts';
import type { DraftColumn, DraftDoubt, DraftRow, DraftView } from '#api/drafts.ts';
import type { ReadRow } from '#core/bom/bom.ts';
import type { ColumnGuess, ColumnRole } from '#core/bom/columns.ts';
import { columnSure, columnWord, sayColumn } from '#say/en/columns.ts';
import { doubtText } from '#say/en/doubts.ts';
import { offeredAnswers, rightMeans, sayDraftTrouble, sayTakenNumber } from '#say/en/draft-answers.ts';
import { sayFileNote } from '#say/en/file-notes.ts';
import { sayRowGloss } from '#say/en/gloss-row.ts';
import { refusalText } from '#say/en/refusals.ts';
import { sayPart } from '#say/en/said.ts';

/** lines of the file that are shown over its columns */
const SAMPLES = 6;

/** A draft as it crosses the wire. */
export function draftView(shown: ShownDraft): DraftView {
  const { draft, reading, bags, board, trouble, more, moreDoubted, doubts } = shown;
  const answers = Map.groupBy(draft.told.answers, ({ row }) => row);
  const out = new Set(draft.told.out);
  const rows = shown.rows.map((row) => ({
    ...draftRow(shown, row),
    out: out.has(row.row),
    answers: (answers.get(row.row) ?? []).map((answer) => ({ ...answer })),
  }));
  const planned = [...bags.values()];
  return {
    draft: draft.id,
    version: draft.version,
    name: draft.name,
    is: draft.is,
    bytes: draft.file.length,
    notes: reading.notes.map(sayFileNote),
    columns: draftColumns(shown),
    roles: shown.roles.map((role) => ({ role, word: columnWord(role) })),
    rows,
    more,
    moreDoubted,
    doubts,
    box: draft.told.box,
    board: board?.board ?? null,
    revision: board?.revision ?? null,
    known: board?.known ?? false,
    bags: planned.length,
    numbers: numbersOf(planned.map(({ number }) => number)),
    pieces: planned.reduce((sum, { quantity }) => sum + quantity, 0),
    trouble: trouble && sayDraftTrouble(refusalText(trouble), shown.taken.size > 0),
  };
}

function numbersOf(numbers: readonly number[]): DraftView['numbers'] {
  const [one, ...others] = numbers;
  if (one === undefined) return null;
  const widest = (found: { first: number; last: number }, number: number): { first: number; last: number } => ({
    first: Math.min(found.first, number),
    last: Math.max(found.last, number),
  });
  return others.reduce(widest, { first: one, last: one });
}

function draftColumns({ reading: { columns, table }, evidence }: ShownDraft): DraftColumn[] {
  const first = table.filter((cells) => cells.some((cell) => cell.trim() !== '')).slice(0, SAMPLES);
  return columns.map((guess: ColumnGuess) => ({
    column: guess.column,
    header: guess.header,
    role: guess.role satisfies ColumnRole,
    sure: columnSure(guess),
    evidence: sayColumn(guess, evidence.get(guess.column) ?? { said: 0, fit: null }),
    samples: first.map((cells) => (cells[guess.column - 1] ?? '').trim()),
  }));
}

function draftRow({ draft, glosses, bags, taken }: ShownDraft, row: ReadRow): Omit<DraftRow, 'out' | 'answers'> {
  const { part, refs, quantity, fitted, doubts } = row;
  const bag = bags.get(row.row);
  return {
    row: row.row,
    refs: [...refs],
    quantity: bag ? (bag.toCount && bag.quantity === 0 ? null : bag.quantity) : quantity,
    about: bag !== undefined && bag.quantity > bag.sure,
    fitted,
    kind: part.kind,
    text: part.text,
    said: sayPart(part),
    gloss: sayRowGloss(row, glosses.get(row.row) ?? []),
    bag: bag?.number ?? null,
    box: bag ? bag.box : (row.box ?? null),
    place: bag ? bag.place : (row.place ?? null),
    part: part.kind !== 'not-a-part' || row.kept !== undefined,
    doubts: [
      ...numberTaken(taken.get(row.row)),
      ...doubts.map((doubt) => ({
        field: doubt.field,
        ...doubtText(doubt),
        answers: offeredAnswers(doubt, row),
        right: rightMeans(doubt, row, draft.is),
        stops: false,
      })),
    ],
  };
}

/** A number that is taken is asked first: nothing can be kept before it has an answer. */
function numberTaken(taken: TakenNumber | undefined): DraftDoubt[] {
  return taken ? [{ field: 'bag', ...sayTakenNumber(taken.number, taken.by, taken.free), right: null, stops: true }] : [];
}
