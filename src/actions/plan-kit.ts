import { AIMS } from '#core/kit/aims.ts';
import { uncontended } from '#core/kit/alone.ts';
import { assemble } from '#core/kit/assemble.ts';
import { completeBoards, flowProblem, wantsOf } from '#core/kit/boards.ts';
import { checkPlan } from '#core/kit/check-plan.ts';
import { augment, noFlow, received, type Flow } from '#core/kit/flow.ts';
import { splitIndependent, type Group } from '#core/kit/groups.ts';
import type { Demand, Plan } from '#core/kit/kit.ts';
import type { Model, Solution } from '#core/kit/model.ts';
import { costsOf, modelOf, readSolution, withAim, withFloor, withServed } from '#core/kit/model-of.ts';
import { problemOf, type Problem } from '#core/kit/problem.ts';
import { withSpares } from '#core/kit/spares.ts';
import type { SpareRule } from '#core/kit/spares.data.ts';
import type { Stock } from '#core/stock/stock.ts';
import { USUAL_LIMITS, type Limits } from '#solver/limits.ts';
import { solve } from '#solver/solve.ts';

export interface PlanSettings {
  /** spares to take; none where absent */
  readonly spares?: readonly SpareRule[];
  readonly limits?: Limits;
  /** another solver, for tests */
  readonly solve?: (model: Model, limits: Limits) => Promise<Solution>;
}

/**
 * Plans kits for all open builds at once, on a snapshot: as many complete boards as the bags allow, build by build, then fewest
 * short pieces, best verdicts, fewest bags, oldest lots. The same stock gives the same plan where the proof is `optimal`.
 */
export async function planKit(stock: Stock, demands: readonly Demand[], settings: PlanSettings = {}): Promise<Plan> {
  const problem = problemOf(stock, demands);
  const boards = completeBoards(problem);
  const flow: Flow = problem.lines.map(() => new Map());
  let gap = 0;
  for (const group of splitIndependent(problem)) gap = Math.max(gap, await planGroup(problem, group, boards, flow, settings));
  const builds = assemble(stock, problem, flow, boards);
  const spared = settings.spares ? withSpares(builds, stock, settings.spares) : builds;
  const plan: Plan = { proof: gap === 0 ? 'optimal' : 'gap', gap, builds: spared };
  const faults = checkPlan(plan, stock, demands);
  if (faults.length > 0) throw new Error(`a plan that can't be taken was made: ${JSON.stringify(faults.slice(0, 3))}`);
  return plan;
}

/** Writes the takes of a group into the flow; answers with its gap. */
async function planGroup(problem: Problem, group: Group, boards: readonly number[], flow: Flow, settings: PlanSettings): Promise<number> {
  const simple = uncontended(problem, group);
  if (simple) {
    for (const [line, takes] of simple) flow[line] = takes;
    return 0;
  }
  const fallback = withoutSolver(problem, group, boards);
  const { takes, gap } = await byStages(problem, group, boards, fallback, settings);
  for (const line of group.lines) flow[line] = takes[line] ?? new Map();
  return gap;
}

/** One aim after the other: each solve may give up nothing of what the aims before it reached. */
async function byStages(problem: Problem, group: Group, boards: readonly number[], fallback: Flow, settings: PlanSettings): Promise<{ takes: Flow; gap: number }> {
  const limits = settings.limits ?? USUAL_LIMITS;
  const made = modelOf(problem, group, boards);
  let model = withServed(made, group.lines.reduce((sum, line) => sum + received(fallback, line), 0));
  let [gap, takes] = [0, fallback];
  for (const aim of AIMS) {
    const costs = costsOf(problem, group, made, aim);
    if (!costs) continue;
    const solution = await (settings.solve ?? solve)(withAim(model, costs), limits).catch(() => null);
    limits.signal?.throwIfAborted();
    if (solution === null || solution.values.length === 0) return { takes, gap: 1 };
    takes = readSolution(problem, made, solution);
    gap = Math.max(gap, solution.gap);
    model = withFloor(model, aim, costs, solution.objective);
  }
  return { takes, gap };
}

/** Complete boards, then fewest shorts, by flow alone: exact, and the plan where the solver gives nothing. */
function withoutSolver(problem: Problem, group: Group, boards: readonly number[]): Flow {
  const whole = flowProblem(problem);
  const mine = noFlow(whole);
  const only = (wants: readonly number[]): number[] => wants.map((want, line) => (group.lines.includes(line) ? want : 0));
  augment(whole, mine, only(wantsOf(problem, boards)));
  augment(whole, mine, only(problem.lines.map(({ need }) => need)));
  return mine;
}
