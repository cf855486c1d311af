import { flowProblem, wantsOf } from './boards.ts';
import { augment, noFlow, type Flow } from './flow.ts';
import type { Group } from './groups.ts';
import type { Grade, Problem } from './problem.ts';

const GRADES: readonly Grade[] = [0, 1, 2, 3];

/**
 * Takes for a group by flow alone: its complete boards, then the fewest short pieces, both exact; better grades are only tried
 * first. The solver begins with it, and it is the plan where the solver gives nothing.
 */
export function byFlow(problem: Problem, group: Group, boards: readonly number[]): Flow {
  const whole = flowProblem(problem);
  const flow = noFlow(whole);
  const mine = new Set(group.lines);
  const ofGroup = (wants: readonly number[]): number[] => wants.map((want, line) => (mine.has(line) ? want : 0));
  for (const wants of [wantsOf(problem, boards), problem.lines.map(({ need }) => need)]) {
    for (const worst of GRADES) augment({ ...whole, bags: bagsUpTo(problem, worst) }, flow, ofGroup(wants));
  }
  return flow;
}

function bagsUpTo(problem: Problem, worst: Grade): number[][] {
  return problem.lines.map(({ options }) => options.filter(({ grade }) => grade <= worst).map(({ bag }) => bag));
}
