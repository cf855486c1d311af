import { done, refuse, type Outcome } from '#core/stock/refusal.ts';
import type { Lab } from '#db/database.ts';
import { readDraft, updateDraft, type ToldDraft } from '#db/drafts.ts';
import { firstTrouble, nameTrouble } from './checks.ts';
import type { Clock } from './action.ts';
import { lostDraft } from './lost-draft.ts';
import type { OpenDraft } from './make-draft.ts';
import { readDraftFile, type DraftReading } from './read-draft.ts';

type Answer = ToldDraft['answers'][number];

/** What a person says now; what is left out stays as it was. */
export interface DraftWord {
  readonly columns?: Readonly<Record<string, string>>;
  readonly answers?: readonly Answer[];
  readonly forget?: readonly Pick<Answer, 'row' | 'field'>[];
  readonly out?: readonly { readonly row: number; readonly out: boolean }[];
  readonly box?: string | null;
  readonly board?: string;
  readonly revision?: string | null;
}

const MOST_TRIES = 5;

/** Keeps what was said of a draft, where the file can be read with it; two who say something at once are both heard. */
export async function changeDraft(lab: Lab, clock: Clock, id: string, word: DraftWord): Promise<Outcome<OpenDraft>> {
  const trouble = firstTrouble(
    nameTrouble('board', word.board),
    nameTrouble('revision', word.revision?.trim() || null),
    nameTrouble('box', word.box?.trim() || null),
  );
  if (trouble) return { ok: false, refusal: trouble };
  for (let tries = 0; tries < MOST_TRIES; tries++) {
    const draft = await lab.read((tx) => readDraft(tx, id));
    if (!draft) return lab.read((tx) => lostDraft(tx, id));
    const told = toldAfter(draft.told, word);
    const read = await readDraftFile({ ...draft, told });
    if (!read.ok) return read;
    const stranger = strangerIn(word, read.value);
    if (stranger)
      return refuse('not-valid', { row: stranger.row, field: 'row', received: stranger.row, expected: 'row-of-file' });
    const rows = read.value.rows.length;
    if (await lab.transact((tx) => updateDraft(tx, draft, { told, rows, at: clock.now() })))
      return done({ draft: { ...draft, told, rows, version: draft.version + 1 }, reading: read.value });
  }
  return refuse('busy');
}

/** What was told, with the new word. An answer that is given again stands last: answers are taken in their order. */
export function toldAfter(told: ToldDraft, word: DraftWord): ToldDraft {
  const key = ({ row, field }: Pick<Answer, 'row' | 'field'>): string => `${row} ${field}`;
  const answers = new Map((word.answers ?? []).map((answer) => [key(answer), answer]));
  const gone = new Set([...answers.keys(), ...(word.forget ?? []).map(key)]);
  const out = new Set(told.out);
  for (const { row, out: leaves } of word.out ?? []) {
    if (leaves) out.add(row);
    else out.delete(row);
  }
  const named = (text: string | null | undefined, before: string | null): string | null =>
    text === undefined ? before : text?.trim() || null;
  return {
    columns: { ...told.columns, ...word.columns },
    answers: [...told.answers.filter((answer) => !gone.has(key(answer))), ...answers.values()],
    out: [...out].toSorted((a, b) => a - b),
    box: named(word.box, told.box),
    board: named(word.board, told.board),
    revision: named(word.revision, told.revision),
  };
}

/** What is said of a row that the file does not have. */
function strangerIn({ answers = [], out = [] }: DraftWord, { rows }: DraftReading): { readonly row: number } | null {
  const known = new Set(rows.map(({ row }) => row));
  return [...answers, ...out].find(({ row }) => !known.has(row)) ?? null;
}
