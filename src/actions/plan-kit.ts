import { AIMS } from '#core/kit/aims.ts';
import { uncontended } from '#core/kit/alone.ts';
import { assemble } from '#core/kit/assemble.ts';
import { completeBoards } from '#core/kit/boards.ts';
import { byFlow } from '#core/kit/by-flow.ts';
import { checkPlan } from '#core/kit/check-plan.ts';
import { received, type Flow } from '#core/kit/flow.ts';
import { splitIndependent, type Group } from '#core/kit/groups.ts';
import type { Demand, Plan } from '#core/kit/kit.ts';
import type { Model, Solution } from '#core/kit/model.ts';
import { columnsOf, costsOf, modelOf, readSolution, withAim, withFloor, withServed } from '#core/kit/model-of.ts';
import { problemOf, type Problem } from '#core/kit/problem.ts';
import { withSpares } from '#core/kit/spares.ts';
import type { SpareRule } from '#core/kit/spares.data.ts';
import type { Stock } from '#core/stock/stock.ts';
import { SolveStopped, type Limits } from '#solver/limits.ts';
import { solve } from '#solver/solve.ts';

export interface PlanSettings {
  /** spares to take; none where absent */
  readonly spares?: readonly SpareRule[];
  /** nodes for each solve, seconds for the whole plan */
  readonly limits?: Limits;
  /** another solver, for tests */
  readonly solve?: (model: Model, limits: Limits) => Promise<Solution>;
}

type Run = NonNullable<PlanSettings['solve']>;

const PLAN_LIMITS: Limits = { nodes: 2000, seconds: 30 };

/**
 * Plans kits for all open builds at once, on a snapshot: as many complete boards as the bags allow, build by build, then fewest
 * short pieces, best verdicts, fewest bags, oldest lots. The same stock gives the same plan where the proof is `optimal`.
 */
export async function planKit(stock: Stock, demands: readonly Demand[], settings: PlanSettings = {}): Promise<Plan> {
  const problem = problemOf(stock, demands);
  const boards = completeBoards(problem);
  const { flow, gap } = await takesOf(problem, boards, settings);
  const builds = assemble(stock, problem, flow, boards);
  const spared = settings.spares ? withSpares(builds, stock, settings.spares) : builds;
  const plan: Plan = { proof: gap === 0 ? 'optimal' : 'gap', gap, builds: spared };
  const faults = checkPlan(plan, stock, demands);
  if (faults.length > 0) throw new Error(`a plan that can't be taken was made: ${JSON.stringify(faults.slice(0, 3))}`);
  return plan;
}

/** Group by group: the closed form where it holds, else the solver, the small ones first, with a fair share of the time that is left. */
async function takesOf(
  problem: Problem,
  boards: readonly number[],
  settings: PlanSettings,
): Promise<{ flow: Flow; gap: number }> {
  const flow: Flow = problem.lines.map(() => new Map());
  const contended: Group[] = [];
  for (const group of splitIndependent(problem)) {
    const simple = uncontended(problem, group);
    if (simple) for (const [line, takes] of simple) flow[line] = takes;
    else contended.push(group);
  }
  contended.sort((a, b) => a.lines.length * a.bags.length - b.lines.length * b.bags.length);
  const limits = settings.limits ?? PLAN_LIMITS;
  const end = performance.now() + limits.seconds * 1000;
  let gap = 0;
  for (const [at, group] of contended.entries()) {
    const seconds = Math.max(0, end - performance.now()) / 1000 / (contended.length - at);
    const planned = await byStages(problem, group, boards, { ...limits, seconds }, settings.solve ?? solve);
    for (const line of group.lines) flow[line] = planned.takes[line] ?? new Map();
    gap = Math.max(gap, planned.gap);
  }
  return { flow, gap };
}

/** One aim after the other: each solve may give up nothing of what the aims before it reached, and begins with what they found. */
async function byStages(
  problem: Problem,
  group: Group,
  boards: readonly number[],
  limits: Limits,
  run: Run,
): Promise<{ takes: Flow; gap: number }> {
  const made = modelOf(problem, group, boards);
  let [gap, takes] = [0, byFlow(problem, group, boards)];
  let model = withServed(
    made,
    group.lines.reduce((sum, line) => sum + received(takes, line), 0),
  );
  const stages = AIMS.flatMap((aim) => {
    const costs = costsOf(problem, group, made, aim);
    return costs ? [{ aim, costs }] : [];
  });
  const end = performance.now() + limits.seconds * 1000;
  for (const [at, { aim, costs }] of stages.entries()) {
    const seconds = Math.max(LEAST_SECONDS, (end - performance.now()) / 1000 / (stages.length - at));
    const solution = await unlessStopped(run(withAim(model, costs), { ...limits, seconds, start: columnsOf(made, takes) }));
    if (solution === null) return { takes, gap: 1 };
    if (solution.proof === 'infeasible' || solution.proof === 'unbounded')
      throw new Error(`a plan was known, and the solver calls its model ${solution.proof}`);
    takes = readSolution(problem, made, solution);
    gap = Math.max(gap, solution.gap);
    model = withFloor(model, aim, costs, solution.objective);
  }
  return { takes, gap };
}

/** Null where a limit came before an answer: what was known is taken, with its gap. Any other trouble is a bug, and is told. */
async function unlessStopped(solution: Promise<Solution>): Promise<Solution | null> {
  try {
    return await solution;
  } catch (error) {
    if (error instanceof SolveStopped) return null;
    throw error;
  }
}

/** Less is not worth starting. */
const LEAST_SECONDS = 0.05;
