import { done, refuse, type Outcome } from '#core/stock/refusal.ts';
import type { Lab } from '#db/database.ts';
import { deleteDraft, draftVersion, noteKept, readDraft, type Draft } from '#db/drafts.ts';
import { action, type Action, type Clock, type Who } from './action.ts';
import { draftBoard } from './draft-board.ts';
import { importList } from './import-list.ts';
import type { ActInput, ImportInput, ImportResult, SaveBoardInput, SaveBoardResult } from './inputs.ts';
import { lostDraft } from './lost-draft.ts';
import { perform, repeatOf } from './perform.ts';
import { readDraftFile, type DraftReading } from './read-draft.ts';
import { saveBoard } from './save-board.ts';

export interface KeepDraftInput extends ActInput {
  readonly draft: string;
  /** version that was looked at; where another changed it since, it is not kept */
  readonly saw?: number;
}
/** What a kept draft became. */
export type KeptDraft = (ImportResult & { readonly became: 'bags' }) | (SaveBoardResult & { readonly became: 'board' });

/**
 * Makes a draft real: a list its bags, a BOM its board; the draft goes in the same transaction. A repeat is known by its id and
 * the name of the draft alone, so that it is answered also when the draft is gone.
 */
export async function keepDraft(
  lab: Lab,
  clock: Clock,
  who: Who,
  { saw, ...input }: KeepDraftInput,
): Promise<Outcome<KeptDraft>> {
  const draft = await lab.read((tx) => readDraft(tx, input.draft)); // before the repeat is looked for: it may be kept meanwhile
  const before = await repeatOf<KeptDraft>(lab, 'keepDraft', input);
  if (!before.ok) return before;
  if (before.value) return done(before.value);
  if (!draft) return lab.read((tx) => lostDraft(tx, input.draft));
  if (saw !== undefined && saw !== draft.version) return refuse('draft-changed', { draft: draft.name });
  const read = await readDraftFile(draft);
  if (!read.ok) return read;
  return perform(lab, keeping(draft, read.value), clock, who, input);
}

/** The act of keeping a draft as it was read; refused where something was said of it since. */
function keeping(draft: Draft, { kept }: DraftReading): Action<KeepDraftInput, KeptDraft> {
  return action<KeepDraftInput, KeptDraft>(
    'keepDraft',
    async (tx, clock, who, input) => {
      const version = await draftVersion(tx, draft.id);
      if (version === null) return lostDraft(tx, draft.id);
      if (version !== draft.version) return refuse('draft-changed', { draft: draft.name });
      const { id, note } = input;
      const asked: ActInput = { id, ...(note !== undefined && { note }) };
      await deleteDraft(tx, draft.id);
      await noteKept(tx, draft.id, id, clock.now());
      if (draft.is === 'list') {
        const { box } = draft.told;
        const list: ImportInput = { ...asked, rows: kept, source: draft.name, ...(box !== null && { box }) };
        const made = await importList(tx, clock, who, list);
        return made.ok ? done({ ...made.value, became: 'bags' }) : made;
      }
      const { board, revision } = await draftBoard(tx, draft);
      const bom: SaveBoardInput = { ...asked, lines: kept, source: draft.name, board, ...(revision !== null && { revision }) };
      const saved = await saveBoard(tx, clock, who, bom);
      return saved.ok ? done({ ...saved.value, became: 'board' }) : saved;
    },
    () => {
      if (draft.is === 'list') importList.ready?.({ id: '', rows: kept, source: draft.name });
    },
  );
}
