import type { Refusal } from '#core/stock/refusal.ts';

/** cells named at once; a list with more wrong is to be looked at as a whole */
const MOST_NAMED = 20;

/**
 * One refusal for all cells that can't be what they stand for, so that a list is mended in one go; a single one stays as it is, null
 * for none. Each line of `cells` is row, column, code, text and why (or the most that there may be), by tabs.
 */
export function refusedCells(refusals: readonly Refusal[]): Refusal | null {
  const [first, second] = refusals;
  if (!first || !second) return first ?? null;
  const lines = refusals
    .slice(0, MOST_NAMED)
    .map(({ code, args }) =>
      [args['row'], args['column'], code, String(args['text'] ?? '').replace(/\s+/g, ' '), args['why'] ?? args['most']].join(
        '\t',
      ),
    );
  return { code: 'cells-impossible', args: { cells: lines.join('\n'), more: refusals.length - lines.length } };
}
