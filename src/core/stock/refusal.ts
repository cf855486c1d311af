/** Why an act was refused; nothing has changed. `say/` holds the sentence, `api/` the HTTP status. */
export type RefusalCode =
  | 'no-such-bag' // {bag}
  | 'no-such-build' // {build}
  | 'no-such-board' // {board}
  | 'no-such-act' // {act}
  | 'no-such-box' // {box}
  | 'no-such-draft' // {draft}: it was thrown away, or is too old
  | 'draft-kept' // {draft, act, at, became: bags, bags, pieces, first, last} or {…, became: board, board, revision, lines}; undoneBy
  | 'draft-changed' // {draft}: something was said of it meanwhile
  | 'box-left-out' // {box}: boxes are put into an order, all of them at once
  | 'box-twice' // {box}
  | 'not-enough' // {bag, onHand, asked}: the way on is `inHand` or fewer
  | 'in-hand-large' // {bag, onHand, asked}: far above the record; the way on is a count
  | 'below-zero' // {bag, later}: undo refused, later movements named
  | 'undone-already' // {act}
  | 'not-undoable' // {act, why}
  | 'id-reused' // {id}: the same id came with another body
  | 'number-taken' // {number}
  | 'not-whole' // {field, received}
  | 'not-positive' // {field, received}
  | 'out-of-range' // {field, received, least, most}
  | 'not-valid' // {field, received, expected}
  | 'plan-stale' // {bags}: what changed since the plan
  | 'override' // {bag, row, why, fact, has, asked}: it does not serve; taking it wants a reason
  | 'nothing-made' // {boards}: a promise for no board
  | 'takes-open' // {build, boards, open, bags}: stops that are not picked, and nobody said how many boards were made
  | 'picked-meanwhile' // {bag, tray, cell, picked, saw}: the stop is not as the person saw it
  | 'made-unknown' // {build, boards, lines}: lines are short, so how many were made is asked
  | 'nothing-to-do' // {}
  | 'build-state' // {build, state, wants}
  | 'newer-schema' // {found, known}
  | 'bad-home' // {folder, why}
  | 'not-empty' // {}: the lab already holds something
  | 'not-demo' // {}: only the demo may be cleared
  | 'busy' // {}
  | 'backup-bad' // {why, …}: cut short, changed, or no backup at all
  | 'disk-full' // {}
  | 'disk-read-only' // {}
  | 'disk-fault' // {}
  | 'lab-damaged' // {}
  | 'several-builds' // {build, builds}: `id day` of each, separated by commas
  // files
  | 'file-missing' // {file}
  | 'file-empty' // {file}
  | 'file-no-table' // {file, why}
  | 'file-binary' // {file, looksLike}
  | 'file-too-large' // {file, size, most}
  | 'no-such-column' // {file, column, columns}: a correction names a column that is not there
  | 'file-too-slow' // {file, seconds}: its reading was given up
  | 'too-many-columns' // {file, row, columns, most}
  | 'cell-too-long' // {file, row, column, length, most}
  | 'too-many-refs' // {file, row, column, text, most}
  | 'number-impossible' // {file, row, column, text, why}
  | 'cells-impossible'; // {file, cells, more}: several of the two above, a line each

export interface Refusal {
  readonly code: RefusalCode;
  readonly args: Readonly<Record<string, string | number>>;
}

/** A result, or the record of why there is none. */
export type Outcome<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly refusal: Refusal };

export function done<T>(value: T): Outcome<T> {
  return { ok: true, value };
}

export function refuse(code: RefusalCode, args: Refusal['args'] = {}): { readonly ok: false; readonly refusal: Refusal } {
  return { ok: false, refusal: { code, args } };
}
