import type { Bag } from '#core/stock/stock.ts';
import type { PlannedLine } from './kit.ts';
import { solderRank } from './solder-order.ts';

export interface Cell {
  readonly line: string;
  /** 1 for the first tray */
  readonly tray: number;
  /** 1 for the first cell of a tray */
  readonly cell: number;
  readonly refs: readonly string[];
}

/** Cells of a common compartment tray; a lab sets its own. */
export const USUAL_TRAY = 24;

const BY_REF = new Intl.Collator('en', { numeric: true });

/** One cell for each line that gets anything, numbered in the order of soldering, then by refs; several bags of one line share its cell. */
export function trays(lines: readonly PlannedLine[], bags: ReadonlyMap<number, Bag>, cells = USUAL_TRAY): Cell[] {
  const rank = (line: PlannedLine): number => {
    const bag = bags.get(line.takes[0]?.bag ?? 0);
    return bag ? solderRank(bag.part) : Infinity;
  };
  return lines
    .filter(({ takes }) => takes.length > 0)
    .map((line) => ({ line, rank: rank(line) }))
    .toSorted((a, b) => a.rank - b.rank || BY_REF.compare(a.line.refs[0] ?? '', b.line.refs[0] ?? '') || a.line.row - b.line.row)
    .map(({ line }, at) => ({ line: line.line, tray: Math.floor(at / cells) + 1, cell: (at % cells) + 1, refs: line.refs }));
}
