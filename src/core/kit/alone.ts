import { free } from '#core/stock/stock.ts';
import { ageRanks, numberRanks } from './aims.ts';
import type { Group } from './groups.ts';
import type { Grade, Line, Problem } from './problem.ts';

interface Holder {
  readonly bag: number;
  readonly holds: number;
  readonly age: number;
  readonly number: number;
}

/** Sets of bags that are compared one by one; where there are more, the solver decides. */
const MOST_SETS = 2000;

/**
 * The best takes of every line of a group as if it were alone. All aims but the boards are sums over lines, so where these takes
 * fit into the bags together nothing is contended and they are the best plan of the group. Else null: the solver decides.
 */
export function uncontended(problem: Problem, group: Group): Map<number, Map<number, number>> | null {
  const [ages, numbers] = [ageRanks(problem, group), numberRanks(group)];
  const left = new Map(group.bags.map((bag) => [bag, holds(problem, bag)]));
  const plan = new Map<number, Map<number, number>>();
  for (const at of group.lines) {
    const line = problem.lines[at];
    const takes = line ? takesAlone(problem, line, ages, numbers) : null;
    if (takes === null) return null;
    for (const [bag, pieces] of takes) {
      const rest = (left.get(bag) ?? 0) - pieces;
      if (rest < 0) return null;
      left.set(bag, rest);
    }
    plan.set(at, takes);
  }
  return plan;
}

function holds(problem: Problem, bag: number): number {
  const found = problem.bags[bag];
  return found ? free(found) : 0;
}

/** Grade by grade, best first: all of a grade while the need lasts, then the best bags of the last one. */
function takesAlone(
  problem: Problem,
  line: Line,
  ages: Map<number, number>,
  numbers: Map<number, number>,
): Map<number, number> | null {
  const takes = new Map<number, number>();
  let need = line.need;
  for (const grade of [0, 1, 2, 3] satisfies Grade[]) {
    const holders = line.options
      .filter((option) => option.grade === grade)
      .map(({ bag }): Holder => ({ bag, holds: holds(problem, bag), age: ages.get(bag) ?? 0, number: numbers.get(bag) ?? 0 }))
      .toSorted((a, b) => a.age - b.age || a.number - b.number);
    const best = need > 0 ? bestOfGrade(holders, need) : [];
    if (best === null) return null;
    for (const [bag, pieces] of best) takes.set(bag, pieces);
    need -= best.reduce((sum, [, pieces]) => sum + pieces, 0);
  }
  return takes;
}

type Takes = readonly (readonly [bag: number, pieces: number])[];

/** The fewest bags that hold `need`; among those the oldest lots, then the lowest numbers. Holders come oldest first. */
function bestOfGrade(holders: readonly Holder[], need: number): Takes | null {
  if (holders.reduce((sum, one) => sum + one.holds, 0) <= need) return holders.map((one) => [one.bag, one.holds]);
  const count = fewest(holders, need);
  if (choose(holders.length, count) > MOST_SETS) return null;
  const of = new Map(holders.map((one) => [one.bag, one]));
  let best: { takes: Takes; cost: readonly number[] } | null = null;
  for (const set of subsets(holders, count)) {
    const takes = fill(set, need);
    if (!takes) continue;
    const cost = costOf(takes, of);
    if (!best || before(cost, best.cost)) best = { takes, cost };
  }
  return best?.takes ?? null;
}

function fewest(holders: readonly Holder[], need: number): number {
  let [count, sum] = [0, 0];
  for (const one of holders.map((holder) => holder.holds).toSorted((a, b) => b - a)) {
    if (sum >= need) break;
    count += 1;
    sum += one;
  }
  return count;
}

/** Oldest first, all of each but the last. */
function fill(set: readonly Holder[], need: number): Takes | null {
  let rest = need;
  const takes = set.map((one): [number, number] => {
    const pieces = Math.min(one.holds, rest);
    rest -= pieces;
    return [one.bag, pieces];
  });
  return rest > 0 ? null : takes.filter(([, pieces]) => pieces > 0);
}

function costOf(takes: Takes, of: ReadonlyMap<number, Holder>): readonly number[] {
  const sum = (rank: (holder: Holder) => number): number =>
    takes.reduce((total, [bag, pieces]) => {
      const holder = of.get(bag);
      return holder ? total + pieces * rank(holder) : total;
    }, 0);
  return [sum(({ age }) => age), sum(({ number }) => number)];
}

function before(a: readonly number[], b: readonly number[]): boolean {
  const at = a.findIndex((value, i) => value !== b[i]);
  return at >= 0 && (a[at] ?? 0) < (b[at] ?? 0);
}

function choose(n: number, k: number): number {
  let ways = 1;
  for (let i = 1; i <= k; i += 1) ways = (ways * (n - k + i)) / i;
  return ways;
}

function* subsets(holders: readonly Holder[], count: number, from = 0): Generator<readonly Holder[]> {
  if (count === 0) {
    yield [];
    return;
  }
  for (let at = from; at <= holders.length - count; at += 1) {
    const first = holders[at];
    if (first) for (const rest of subsets(holders, count - 1, at + 1)) yield [first, ...rest];
  }
}
