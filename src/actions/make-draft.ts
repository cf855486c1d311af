import { randomUUID } from 'node:crypto';
import { done, type Outcome } from '#core/stock/refusal.ts';
import type { Lab } from '#db/database.ts';
import { dropDraftsBefore, insertDraft, type Draft } from '#db/drafts.ts';
import type { Clock } from './action.ts';
import { readDraftFile, type DraftReading } from './read-draft.ts';

const DAYS_KEPT = 30;
const DAY = 24 * 60 * 60 * 1000;

/** A draft with its reading. */
export interface OpenDraft {
  readonly draft: Draft;
  readonly reading: DraftReading;
}

/** Keeps a file that was brought in, to be looked at; refused, and not kept, where it is no table. Old drafts go. */
export async function makeDraft(
  lab: Lab,
  clock: Clock,
  { name, is, file }: Pick<Draft, 'name' | 'is' | 'file'>,
): Promise<Outcome<OpenDraft>> {
  const told = { columns: {}, answers: [], out: [], box: null, board: null, revision: null };
  const read = await readDraftFile({ file, name, told });
  if (!read.ok) return read;
  const made = clock.now();
  const draft: Draft = { id: randomUUID(), name, is, file, told, rows: read.value.rows.length, made, version: 1 };
  await lab.transact(async (tx) => {
    await dropDraftsBefore(tx, new Date(Date.parse(made) - DAYS_KEPT * DAY).toISOString());
    await insertDraft(tx, draft);
  });
  return done({ draft, reading: read.value });
}
