import type { Because, Verdict } from '#core/serve/verdict.ts';
import { rankOf } from '#core/serve/verdict.ts';
import { completeBoards, limitsOf } from './boards.ts';
import { received, type Flow } from './flow.ts';
import type { Candidate, Demand, Need, PlannedBuild, PlannedLine, Take } from './kit.ts';
import { mayPlan, problemOf, type Line, type Problem } from './problem.ts';
import type { Stock } from '#core/stock/stock.ts';

/** The plan in the words of the lab: lines with their takes, shorts and reasons, boards and what limits them. */
export function assemble(stock: Stock, problem: Problem, flow: Flow, boards: readonly number[]): PlannedBuild[] {
  return problem.builds.map((demand, build): PlannedBuild => ({
    build: demand.build,
    boards: demand.boards,
    buildable: boards[build] ?? 0,
    buildableWithChecks: withOpenChecks(stock, problem, build, boards),
    limitedBy: limitsOf(problem, boards, build),
    lines: problem.lines.flatMap((line, at) => {
      const need = line.build === build ? demand.needs.find((one) => one.line === line.line) : undefined;
      return need ? [plannedLine(problem, need, line, flow, at)] : [];
    }),
  }));
}

/** Boards if every check of this build were accepted, while the builds before it keep theirs. */
function withOpenChecks(stock: Stock, problem: Problem, build: number, boards: readonly number[]): number {
  const reached = boards[build] ?? 0;
  const demand = problem.builds[build];
  const open =
    demand?.needs.some(({ candidates }) => candidates.some((one) => one.verdict === 'check' && !one.accepted)) ?? false;
  if (!demand || !open || reached >= demand.boards) return reached;
  const upTo: Demand[] = problem.builds.slice(0, build + 1);
  const opened = problemOf(
    stock,
    upTo,
    (candidate, of) => mayPlan(candidate) || (of === demand.build && candidate.verdict === 'check'),
  );
  return completeBoards(opened)[build] ?? reached;
}

function plannedLine(problem: Problem, need: Need, line: Line, flow: Flow, at: number): PlannedLine {
  const takes = [...(flow[at] ?? [])]
    .map(([bag, take]): Take => ({ bag: problem.bags[bag]?.number ?? 0, take }))
    .toSorted((a, b) => a.bag - b.bag);
  const short = line.need - received(flow, at);
  const answers =
    takes.length > 0
      ? need.candidates.filter((one) => mayPlan(one) && takes.some(({ bag }) => bag === one.bag))
      : need.candidates;
  const verdict = verdictOf(answers, takes.length > 0);
  const because = answers.filter((one) => one.verdict === verdict).flatMap((one) => one.because);
  const lacking: Because[] = short > 0 ? [{ code: 'short', args: { free: line.need - short, need: line.need } }] : [];
  const nothing: Because[] = answers.length === 0 ? [{ code: 'nothing-like-it', args: {} }] : [];
  return {
    line: need.line,
    row: need.row,
    refs: need.refs,
    need: line.need,
    spare: 0,
    short,
    verdict,
    because: distinct([...lacking, ...because, ...nothing]),
    takes,
  };
}

/** The worst that is taken; with nothing taken the best that there is. */
function verdictOf(answers: readonly Candidate[], taken: boolean): Verdict {
  const sorted = answers.map(({ verdict }) => verdict).toSorted((a, b) => rankOf(a) - rankOf(b));
  return (taken ? sorted.at(-1) : sorted[0]) ?? 'missing';
}

function distinct(because: readonly Because[]): Because[] {
  return [...new Map(because.map((one) => [JSON.stringify(one), one])).values()];
}
