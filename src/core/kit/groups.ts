import type { Problem } from './problem.ts';

/** Lines and bags that can touch each other: indices in the problem. */
export interface Group {
  readonly lines: readonly number[];
  readonly bags: readonly number[];
}

/** Splits a problem into groups that share no bag: what one takes is nothing to another. A line without bags is a group of its own. */
export function splitIndependent(problem: Problem): Group[] {
  const parent = Array.from({ length: problem.lines.length + problem.bags.length }, (_, at) => at);
  const root = (at: number): number => {
    let top = at;
    while (parent[top] !== undefined && parent[top] !== top) top = parent[top] ?? top;
    parent[at] = top;
    return top;
  };
  problem.lines.forEach(({ options }, line) => {
    for (const { bag } of options) parent[root(problem.lines.length + bag)] = root(line);
  });
  const groups = new Map<number, { lines: number[]; bags: number[] }>();
  problem.lines.forEach((_, line) => {
    const top = root(line);
    const group = groups.get(top) ?? { lines: [], bags: [] };
    groups.set(top, group);
    group.lines.push(line);
  });
  problem.bags.forEach((_, bag) => groups.get(root(problem.lines.length + bag))?.bags.push(bag));
  return [...groups.values()];
}
