import { free } from '#core/stock/stock.ts';
import { augment, inTheWay, noFlow, received, type FlowProblem } from './flow.ts';
import type { Limit } from './kit.ts';
import type { Problem } from './problem.ts';

export function flowProblem(problem: Problem): FlowProblem {
  return { holds: problem.bags.map(free), bags: problem.lines.map(({ options }) => options.map(({ bag }) => bag)) };
}

/**
 * Complete boards of each build, in planning order: as many of the first as its bags allow, then as many of the second without
 * taking one from the first, and so on. Whole boards by halving, each question answered exactly by a flow.
 */
export function completeBoards(problem: Problem): number[] {
  const boards = problem.builds.map(() => 0);
  problem.builds.forEach((demand, build) => {
    boards[build] = mostBoards(problem, boards, build, demand.boards);
  });
  return boards;
}

function mostBoards(problem: Problem, boards: readonly number[], build: number, most: number): number {
  let [low, high] = [0, most];
  while (low < high) {
    const middle = Math.ceil((low + high) / 2);
    if (lackingFor(problem, boards.with(build, middle)) === 0) low = middle;
    else high = middle - 1;
  }
  return low;
}

/** Pieces that lack if these many boards of each build are to be complete. */
export function lackingFor(problem: Problem, boards: readonly number[]): number {
  const flow = flowProblem(problem);
  return augment(flow, noFlow(flow), wantsOf(problem, boards));
}

export function wantsOf(problem: Problem, boards: readonly number[]): number[] {
  return problem.lines.map(({ build, perBoard }) => (boards[build] ?? 0) * perBoard);
}

/** What keeps a build from one more board: the bags that run out, or the lines that no bag answers. */
export function limitsOf(problem: Problem, boards: readonly number[], build: number): Limit[] {
  const reaches = boards[build] ?? 0;
  if (reaches >= (problem.builds[build]?.boards ?? 0)) return [];
  const flow = flowProblem(problem);
  const given = noFlow(flow);
  augment(flow, given, wantsOf(problem, boards));
  const wants = wantsOf(problem, boards.with(build, reaches + 1));
  augment(flow, given, wants);
  const limits = new Map<string, Limit>();
  problem.lines.forEach(({ line, build: of }, at) => {
    if (of !== build || received(given, at) >= (wants[at] ?? 0)) return;
    const bags = inTheWay(flow, given, at);
    if (bags.length === 0) limits.set(`line ${line}`, { line, reaches });
    for (const bag of bags) limits.set(`bag ${bag}`, { bag: problem.bags[bag]?.number ?? 0, reaches });
  });
  return [...limits.values()];
}
