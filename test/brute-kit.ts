import { AIMS, aimsOf } from '#core/kit/aims.ts';
import { received, type Flow } from '#core/kit/flow.ts';
import { splitIndependent } from '#core/kit/groups.ts';
import type { Plan } from '#core/kit/kit.ts';
import { problemOf, type Problem } from '#core/kit/problem.ts';
import { free } from '#core/stock/stock.ts';
import type { Lab } from './small-labs.ts';

/** Every aim of a plan, most wanted first, smaller is better: boards (negative) build by build, then the sums of the finer aims. */
export function tupleOf(problem: Problem, flow: Flow): number[] {
  const boards = problem.builds.map(
    (demand, build) =>
      -Math.min(
        demand.boards,
        ...problem.lines.map((line, at) => (line.build === build ? Math.floor(received(flow, at) / line.perBoard) : Infinity)),
      ),
  );
  const aims = splitIndependent(problem).map((group) => aimsOf(problem, group, flow));
  return [
    ...boards,
    ...aims.reduce(
      (sums, one) => sums.map((sum, at) => sum + (one[at] ?? 0)),
      AIMS.map(() => 0),
    ),
  ];
}

/** The takes of a plan without its spares, as a flow of the problem. */
export function flowOf(problem: Problem, plan: Plan): Flow {
  const place = new Map(problem.bags.map(({ number }, at) => [number, at]));
  const lines = new Map(plan.builds.flatMap((build) => build.lines.map((line) => [line.line, line])));
  return problem.lines.map(
    ({ line }) => new Map((lines.get(line)?.takes ?? []).map(({ bag, take }) => [place.get(bag) ?? -1, take])),
  );
}

/** The best tuple of all plans there are, by trying every one. */
export function bruteBest({ stock, demands }: Lab): number[] {
  const problem = problemOf(stock, demands);
  const pairs = problem.lines.flatMap(({ options }, line) => options.map(({ bag }) => ({ line, bag })));
  const left = problem.bags.map(free);
  const wants = problem.lines.map(({ need }) => need);
  const flow: Flow = problem.lines.map(() => new Map());
  let best: number[] | null = null;
  const visit = (at: number): void => {
    const pair = pairs[at];
    if (!pair) {
      const tuple = tupleOf(problem, flow);
      if (best === null || less(tuple, best)) best = tuple;
      return;
    }
    const most = Math.min(left[pair.bag] ?? 0, wants[pair.line] ?? 0);
    for (let pieces = 0; pieces <= most; pieces += 1) {
      if (pieces > 0) flow[pair.line]?.set(pair.bag, pieces);
      left[pair.bag] = (left[pair.bag] ?? 0) - pieces;
      wants[pair.line] = (wants[pair.line] ?? 0) - pieces;
      visit(at + 1);
      left[pair.bag] = (left[pair.bag] ?? 0) + pieces;
      wants[pair.line] = (wants[pair.line] ?? 0) + pieces;
    }
    flow[pair.line]?.delete(pair.bag);
  };
  visit(0);
  return best ?? [];
}

function less(a: readonly number[], b: readonly number[]): boolean {
  const at = a.findIndex((value, i) => value !== b[i]);
  return at >= 0 && (a[at] ?? 0) < (b[at] ?? 0);
}
