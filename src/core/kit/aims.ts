import type { Bag } from '#core/stock/stock.ts';
import type { Flow } from './flow.ts';
import { received } from './flow.ts';
import type { Group } from './groups.ts';
import type { Grade, Problem } from './problem.ts';

/**
 * What a plan wants, most wanted first, once the complete boards are settled: fewest short pieces, those with the builds that
 * come last (pieces of incomplete boards go to the first builds); fewest pieces from accepted checks, then from bags that serve, then from exact ones (so that a bag chosen by hand comes first); fewest bags opened for
 * lines; oldest lots; lowest bag numbers.
 */
export const AIMS = ['short', 'order', 'checks', 'serves', 'exact', 'opened', 'age', 'number'] as const;
export type Aim = (typeof AIMS)[number];

export const GRADE_OF_AIM: Partial<Record<Aim, Grade>> = { checks: 3, serves: 2, exact: 1 };

/** Within a group: 0 for the oldest date, then 1, …; bags without a date come last. */
export function ageRanks(problem: Problem, group: Group): Map<number, number> {
  return ranks(problem, group, (bag) => bag.oldest ?? '9999-99-99');
}

/** Within a group: 0 for the lowest bag number, then 1, … */
export function numberRanks(group: Group): Map<number, number> {
  return new Map(group.bags.map((bag, at) => [bag, at]));
}

function ranks(problem: Problem, group: Group, keyOf: (bag: Bag) => string): Map<number, number> {
  const keyed = group.bags.flatMap((at): [number, string][] => {
    const bag = problem.bags[at];
    return bag ? [[at, keyOf(bag)]] : [];
  });
  const order = [...new Set(keyed.map(([, key]) => key))].toSorted();
  const rank = new Map(order.map((key, at) => [key, at]));
  return new Map(keyed.map(([at, key]) => [at, rank.get(key) ?? 0]));
}

/** What a flow comes to on every aim, in order; smaller is better. */
export function aimsOf(problem: Problem, group: Group, flow: Flow): number[] {
  const [ages, numbers] = [ageRanks(problem, group), numberRanks(group)];
  const sums: Record<Aim, number> = { short: 0, order: 0, checks: 0, serves: 0, exact: 0, opened: 0, age: 0, number: 0 };
  for (const line of group.lines) {
    const { need = 0, build = 0, options = [] } = problem.lines[line] ?? {};
    sums.short += need - received(flow, line);
    for (const [bag, pieces] of flow[line] ?? []) {
      const grade = options.find((option) => option.bag === bag)?.grade;
      for (const aim of AIMS) if (grade !== undefined && GRADE_OF_AIM[aim] === grade) sums[aim] += pieces;
      sums.order += pieces * build;
      sums.opened += 1;
      sums.age += pieces * (ages.get(bag) ?? 0);
      sums.number += pieces * (numbers.get(bag) ?? 0);
    }
  }
  return AIMS.map((aim) => sums[aim]);
}
