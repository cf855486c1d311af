import { done, refuse, type Outcome } from '#core/stock/refusal.ts';
import type { Lab } from '#db/database.ts';
import { deleteDraft } from '#db/drafts.ts';

/** Throws a file away that is not kept yet. It is no act: no stock changes, and nobody follows it. */
export async function dropDraft(lab: Lab, id: string): Promise<Outcome<{ readonly draft: string }>> {
  const gone = await lab.transact((tx) => deleteDraft(tx, id));
  return gone ? done({ draft: id }) : refuse('no-such-draft', { draft: id });
}
