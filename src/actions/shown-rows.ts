import type { ReadRow } from '#core/bom/bom.ts';
import type { ToldDraft } from '#db/drafts.ts';

/** Rows of a draft that are shown of a long list. */
export interface ShownRows {
  /** in the order of the file */
  readonly rows: readonly ReadRow[];
  /** rows that wait for nothing and are not among them */
  readonly more: number;
  /** rows with doubts that are not among them: they come as others get their answer */
  readonly moreDoubted: number;
}

/** rows of each sort at most: more on one page help nobody, and cost seconds */
const MOST_SHOWN = 2000;

/** Those with doubts, those that somebody said something of, and the first of those that wait for nothing; a number that is taken comes before all. */
export function shownRows(
  all: readonly ReadRow[],
  { answers, out }: Pick<ToldDraft, 'answers' | 'out'>,
  taken: ReadonlySet<number>,
  most = MOST_SHOWN,
): ShownRows {
  const gone = new Set(out);
  const told = new Set([...answers.map(({ row }) => row), ...out]);
  const stops = ({ row }: ReadRow): boolean => taken.has(row);
  const asks = (row: ReadRow): boolean => !gone.has(row.row) && (row.doubts.length > 0 || stops(row));
  const [doubted, quiet] = [all.filter(asks), all.filter((row) => !asks(row))];
  const first = [...doubted.filter(stops), ...doubted.filter((row) => !stops(row))].slice(0, most);
  const said = quiet.filter(({ row }) => told.has(row)).slice(0, most);
  const clear = quiet.filter(({ row }) => !told.has(row)).slice(0, most);
  const shown = new Set([...first, ...said, ...clear]);
  return {
    rows: all.filter((row) => shown.has(row)),
    more: quiet.length - said.length - clear.length,
    moreDoubted: doubted.length - first.length,
  };
}
