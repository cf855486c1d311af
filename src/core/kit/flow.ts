/** Pieces that go from bags to lines: `take[line]` maps a bag to its pieces. */
export type Flow = Map<number, number>[];

export interface FlowProblem {
  /** pieces in each bag */
  readonly holds: readonly number[];
  /** for each line the bags it may take from */
  readonly bags: readonly (readonly number[])[];
}

export function noFlow(problem: FlowProblem): Flow {
  return problem.bags.map(() => new Map());
}

export function received(flow: Flow, line: number): number {
  let sum = 0;
  for (const pieces of flow[line]?.values() ?? []) sum += pieces;
  return sum;
}

/**
 * Gives lines as much as they want and the bags hold, by paths that move pieces from line to line; a line never loses what it
 * has already received in sum, so what was promised first stays promised. Returns the pieces still lacking. Exact: whole numbers.
 */
export function augment(problem: FlowProblem, flow: Flow, wants: readonly number[]): number {
  const left = [...problem.holds];
  for (const takes of flow) for (const [bag, pieces] of takes) left[bag] = (left[bag] ?? 0) - pieces;
  let lacking = 0;
  wants.forEach((want, line) => {
    let more = want - received(flow, line);
    while (more > 0) {
      const moved = pushPath(problem, flow, left, line, more);
      if (moved === 0) break;
      more -= moved;
    }
    lacking += Math.max(0, more);
  });
  return lacking;
}

interface Step {
  readonly bag: number;
  /** the line that reaches for the bag */
  readonly line: number;
  /** the step by which that line was asked to give up pieces; null for the line in want */
  readonly from: Step | null;
}

/** Finds the shortest chain 'line takes from a bag, whose other line takes from another bag, …' that ends in a bag with something left. */
function pushPath(problem: FlowProblem, flow: Flow, left: number[], start: number, most: number): number {
  const seen = new Set<number>();
  let front: Step[] = stepsOf(problem, start, null, seen);
  while (front.length > 0) {
    const end = front.find(({ bag }) => (left[bag] ?? 0) > 0);
    if (end) return move(flow, left, end, most);
    front = front.flatMap((step) =>
      takersOf(flow, step.bag).flatMap((line) => (line === start ? [] : stepsOf(problem, line, step, seen))),
    );
  }
  return 0;
}

function stepsOf(problem: FlowProblem, line: number, from: Step | null, seen: Set<number>): Step[] {
  const fresh = (problem.bags[line] ?? []).filter((bag) => !seen.has(bag));
  for (const bag of fresh) seen.add(bag);
  return fresh.map((bag) => ({ bag, line, from }));
}

function takersOf(flow: Flow, bag: number): number[] {
  return flow.flatMap((takes, line) => ((takes.get(bag) ?? 0) > 0 ? [line] : []));
}

function move(flow: Flow, left: number[], end: Step, most: number): number {
  let amount = Math.min(most, left[end.bag] ?? 0);
  for (let step = end; step.from; step = step.from) amount = Math.min(amount, flow[step.line]?.get(step.from.bag) ?? 0);
  left[end.bag] = (left[end.bag] ?? 0) - amount;
  for (let step: Step | null = end; step; step = step.from) {
    change(flow, step.line, step.bag, amount);
    if (step.from) change(flow, step.line, step.from.bag, -amount);
  }
  return amount;
}

function change(flow: Flow, line: number, bag: number, by: number): void {
  const takes = flow[line];
  if (!takes) return;
  const pieces = (takes.get(bag) ?? 0) + by;
  if (pieces === 0) takes.delete(bag);
  else takes.set(bag, pieces);
}

/** The bags that stand in the way of a line that lacks pieces: those it may reach by any chain, all empty. */
export function inTheWay(problem: FlowProblem, flow: Flow, line: number): number[] {
  const seen = new Set<number>();
  let front = stepsOf(problem, line, null, seen);
  while (front.length > 0) {
    front = front.flatMap((step) => takersOf(flow, step.bag).flatMap((other) => stepsOf(problem, other, step, seen)));
  }
  return [...seen].toSorted((a, b) => a - b);
}
