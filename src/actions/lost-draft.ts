import { refuse } from '#core/stock/refusal.ts';
import { findAct } from '#db/acts.ts';
import type { Tx } from '#db/database.ts';
import { findKept } from '#db/drafts.ts';
import type { KeptDraft } from './keep-draft.ts';

/** Why there is no such draft any more: it was kept, and became this; or nobody knows of it. */
export async function lostDraft(tx: Tx, draft: string): Promise<ReturnType<typeof refuse>> {
  const kept = await findKept(tx, draft);
  const act = kept && (await findAct(tx, kept.act));
  if (!act) return refuse('no-such-draft', { draft });
  const made = act.result as KeptDraft; // as: `keepDraft` sealed it, and wrote its id down
  const became =
    made.became === 'bags'
      ? { became: made.became, bags: made.bags, pieces: made.pieces, first: made.first, last: made.last }
      : { became: made.became, board: made.board, revision: made.revision, lines: made.lines };
  const undone = act.undoneBy === null ? {} : { undoneBy: act.undoneBy };
  return refuse('draft-kept', { draft, act: act.id, at: kept.at, ...became, ...undone });
}
