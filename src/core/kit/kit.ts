import type { Because, Verdict } from '#core/serve/verdict.ts';

/** A bag that may answer a line, as `core/bom` found it. */
export interface Candidate {
  readonly bag: number;
  readonly verdict: Verdict;
  readonly because: readonly Because[];
  /** a check that was accepted for this board, or a bag chosen by hand: may be planned */
  readonly accepted: boolean;
}

/** One line of a build as the planner sees it. */
export interface Need {
  /** unique within the plan: `<build>/<line>` */
  readonly line: string;
  readonly row: number;
  readonly refs: readonly string[];
  /** pieces for one board */
  readonly perBoard: number;
  readonly candidates: readonly Candidate[];
}

/** One build that competes for bags. Builds are planned in this order: priority (small first), due date, written order. */
export interface Demand {
  readonly build: string;
  readonly boards: number;
  readonly priority: number;
  readonly due: string | null;
  readonly needs: readonly Need[];
}

export interface Take {
  readonly bag: number;
  readonly take: number;
}

export interface PlannedLine {
  readonly line: string;
  readonly row: number;
  readonly refs: readonly string[];
  readonly need: number;
  readonly spare: number;
  readonly short: number;
  readonly verdict: Verdict;
  readonly because: readonly Because[];
  readonly takes: readonly Take[];
}

export interface PlannedBuild {
  readonly build: string;
  readonly boards: number;
  /** complete boards that the plan makes, at most `boards` */
  readonly buildable: number;
  /** the same if every open check of this build were accepted */
  readonly buildableWithChecks: number;
  /** what keeps it from more boards; empty where all can be built */
  readonly limitedBy: readonly Limit[];
  readonly lines: readonly PlannedLine[];
}

/** A bag, or a line that no bag answers, with the boards it lets be built. */
export type Limit = { readonly bag: number; readonly reaches: number } | { readonly line: string; readonly reaches: number };

/** `gap` is 0 when the proof is optimal. */
export interface Plan {
  readonly proof: 'optimal' | 'gap';
  readonly gap: number;
  readonly builds: readonly PlannedBuild[];
}

/** A stop on the walk: one bag opened once, for one tray cell. */
export interface Stop {
  readonly bag: number;
  readonly box: string | null;
  readonly place: string | null;
  readonly take: number;
  readonly tray: number;
  readonly cell: number;
  readonly refs: readonly string[];
}
