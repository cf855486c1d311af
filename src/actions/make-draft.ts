import { done, refuse, type Outcome } from '#core/stock/refusal.ts';
import type { Lab } from '#db/database.ts';
import { dropDraftsBefore, insertDraft, readDraft, type Draft } from '#db/drafts.ts';
import type { Clock } from './action.ts';
import { readDraftFile, type DraftReading } from './read-draft.ts';

const DAYS_KEPT = 30;
const DAY = 24 * 60 * 60 * 1000;

/** A draft with its reading. */
export interface OpenDraft {
  readonly draft: Draft;
  readonly reading: DraftReading;
}

export interface MadeDraft extends OpenDraft {
  /** it had been brought before under this id */
  readonly repeat: boolean;
}

type Brought = Pick<Draft, 'id' | 'name' | 'is' | 'file'>;

/**
 * Keeps a file that was brought in, to be looked at; refused, and not kept, where it is no table. The same file again under
 * its id is the same draft, with what was told of it since. Old drafts go.
 */
export async function makeDraft(lab: Lab, clock: Clock, brought: Brought): Promise<Outcome<MadeDraft>> {
  const told = { columns: {}, answers: [], out: [], box: null, board: null, revision: null };
  const read = await readDraftFile({ ...brought, told });
  if (!read.ok) return read;
  const made = clock.now();
  const draft: Draft = { ...brought, told, rows: read.value.rows.length, made, version: 1 };
  const known = await lab.transact(async (tx) => {
    const before = await readDraft(tx, draft.id);
    if (before) return before;
    await dropDraftsBefore(tx, new Date(Date.parse(made) - DAYS_KEPT * DAY).toISOString());
    await insertDraft(tx, draft);
    return null;
  });
  if (!known) return done({ draft, reading: read.value, repeat: false });
  if (!isSame(known, brought)) return refuse('id-reused', { id: brought.id });
  const reading = known.version === 1 ? read : await readDraftFile(known);
  return reading.ok ? done({ draft: known, reading: reading.value, repeat: true }) : reading;
}

function isSame(known: Draft, { name, is, file }: Brought): boolean {
  return known.name === name && known.is === is && Buffer.compare(known.file, file) === 0;
}
