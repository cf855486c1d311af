/** A saved revision of a board: the lines of a file, older ones without what came later. */
export interface SavedRevision {
  readonly board: string;
  readonly revision: string;
  readonly file: string;
  readonly day: string;
  readonly who: string;
  /** refs of lines that this revision did not have yet */
  readonly without: readonly string[];
}

export const TIDE = 'Tide logger';
export const GREENHOUSE = 'Greenhouse node';
export const BENCH = 'Bench supply monitor';

export const REVISIONS: readonly SavedRevision[] = [
  { board: TIDE, revision: 'A', file: 'tide-logger.csv', day: '2025-02-20', who: 'Maren Oduya', without: ['D2', 'F1'] },
  { board: GREENHOUSE, revision: '2', file: 'greenhouse-node.csv', day: '2025-05-20', who: 'Ines Farrow', without: ['U3', 'C13'] },
  { board: BENCH, revision: '1', file: 'bench-supply-monitor.csv', day: '2025-09-01', who: 'Tobias Quell', without: ['BP1', 'C13'] },
  { board: GREENHOUSE, revision: '3', file: 'greenhouse-node.csv', day: '2026-04-15', who: 'Ines Farrow', without: [] },
  { board: TIDE, revision: 'B', file: 'tide-logger.csv', day: '2026-06-02', who: 'Maren Oduya', without: [] },
  { board: BENCH, revision: '2', file: 'bench-supply-monitor.csv', day: '2026-09-21', who: 'Tobias Quell', without: [] },
];

/**
 * What a person of the lab has looked at and taken by hand for a line of a board (by its row in the file), once for all revisions:
 * what leaves a fact open, what words describe too shortly, and what is never taken by rule, such as mains parts.
 */
export const ACCEPTED: readonly { readonly board: string; readonly row: number; readonly bag: number }[] = [
  { board: TIDE, row: 2, bag: 217 },
  { board: GREENHOUSE, row: 20, bag: 223 },
  { board: BENCH, row: 9, bag: 59 }, { board: BENCH, row: 18, bag: 134 }, { board: BENCH, row: 29, bag: 225 }, { board: BENCH, row: 30, bag: 208 },
  { board: BENCH, row: 37, bag: 228 },
];

/** A build, from the plan to what came back; days left out did not come. */
export interface BuiltBoard {
  readonly key: string;
  readonly name: string;
  readonly board: string;
  readonly revision: string;
  readonly boards: number;
  readonly who: string;
  readonly reserved: string;
  readonly picked?: string;
  readonly finished?: string;
  readonly cancelled?: string;
  readonly undone?: string;
  /** a bag that gave less than it should */
  readonly short?: { readonly bag: number; readonly missing: number };
}

export const BUILDS: readonly BuiltBoard[] = [
  { key: 'tide-1', name: 'Two loggers for the pier', board: TIDE, revision: 'A', boards: 2, who: 'Maren Oduya', reserved: '2025-03-03', picked: '2025-03-04', finished: '2025-03-08' },
  { key: 'greenhouse-1', name: 'Three nodes, first greenhouse', board: GREENHOUSE, revision: '2', boards: 3, who: 'Ines Farrow', reserved: '2025-06-02', picked: '2025-06-03', finished: '2025-06-10' },
  { key: 'bench-1', name: 'Monitor for bench one', board: BENCH, revision: '1', boards: 1, who: 'Tobias Quell', reserved: '2025-09-15', picked: '2025-09-15', finished: '2025-09-19' },
  { key: 'tide-2', name: 'Four loggers for the estuary', board: TIDE, revision: 'A', boards: 4, who: 'Maren Oduya', reserved: '2026-01-12', picked: '2026-01-13', finished: '2026-01-24', short: { bag: 62, missing: 2 } },
  { key: 'greenhouse-2', name: 'Two nodes, second greenhouse', board: GREENHOUSE, revision: '2', boards: 2, who: 'Ines Farrow', reserved: '2026-04-02', picked: '2026-04-03', finished: '2026-04-09' },
  { key: 'bench-2', name: 'Monitor for bench two', board: BENCH, revision: '1', boards: 1, who: 'Tobias Quell', reserved: '2026-08-10', picked: '2026-08-11', cancelled: '2026-08-14' },
  { key: 'tide-3', name: 'A logger by mistake', board: TIDE, revision: 'A', boards: 3, who: 'Maren Oduya', reserved: '2026-10-05', undone: '2026-10-05' },
  { key: 'greenhouse-3', name: 'A node for the allotment', board: GREENHOUSE, revision: '2', boards: 1, who: 'Ines Farrow', reserved: '2026-11-18' },
];
