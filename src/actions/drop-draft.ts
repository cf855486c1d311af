import { done, type Outcome } from '#core/stock/refusal.ts';
import type { Lab } from '#db/database.ts';
import { deleteDraft } from '#db/drafts.ts';
import { lostDraft } from './lost-draft.ts';

/** Throws a file away that is not kept yet. It is no act: no stock changes, and nobody follows it. */
export async function dropDraft(lab: Lab, id: string): Promise<Outcome<{ readonly draft: string }>> {
  return lab.transact(async (tx) => ((await deleteDraft(tx, id)) ? done({ draft: id }) : lostDraft(tx, id)));
}
