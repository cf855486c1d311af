import type { MatchedLine } from '#core/bom/match.ts';
import type { Candidate, Need } from './kit.ts';

/** The name of a line within a plan: `7c/12` is the line of row 12 in the build `7c`. */
export function lineName(build: string, row: number): string {
  return `${build}/${row}`;
}

/**
 * What the fitted lines of one board need, for the planner. A line that nothing serves keeps its nearest bag as a `missing`
 * candidate, which is never planned but carries the reasons.
 */
export function needsOf(matched: readonly MatchedLine[], build: string): Need[] {
  return matched
    .filter(({ fitted, perBoard }) => fitted && perBoard > 0)
    .map((line) => ({ line: lineName(build, line.row), row: line.row, refs: line.refs, perBoard: line.perBoard, candidates: candidatesOf(line) }));
}

function candidatesOf({ candidates, nearest, because }: MatchedLine): readonly Candidate[] {
  if (candidates.length || nearest === null) return candidates;
  return [{ bag: nearest, verdict: 'missing', because: because.filter(({ code }) => code !== 'short'), accepted: false }];
}
