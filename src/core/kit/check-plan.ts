import { free, type Stock } from '#core/stock/stock.ts';
import { augment, noFlow } from './flow.ts';
import type { Demand, Need, Plan, PlannedBuild, PlannedLine } from './kit.ts';
import { mayPlan } from './problem.ts';

export type FaultCode =
  | 'bag-over' // {bag, free, taken}
  | 'bag-unknown' // {line, bag}
  | 'bag-twice' // {line, bag}
  | 'not-allowed' // {line, bag}: no candidate, or a check that nobody accepted
  | 'not-whole' // {line, received}
  | 'sum' // {line, need, short, spare, taken}
  | 'need' // {line, expected, received}
  | 'line-missing'
  | 'line-unknown' // {line}
  | 'buildable' // {build, expected, received}
  | 'short-avoidable'; // {lacking, avoidable}: bags hold pieces that a short line could have had, a spare perhaps

/** What is wrong with a plan; each is our own bug. */
export interface Fault {
  readonly code: FaultCode;
  readonly args: Readonly<Record<string, string | number>>;
}

/** Checks a plan against stock and demands from nothing but their numbers, whoever made it. No faults: it can be taken. */
export function checkPlan(plan: Plan, stock: Stock, demands: readonly Demand[]): Fault[] {
  const needs = new Map(demands.flatMap(({ needs, boards }) => needs.map((need) => [need.line, { need, boards }] as const)));
  const lines = plan.builds.flatMap((build) => build.lines);
  const seen = new Set(lines.map(({ line }) => line));
  return [
    ...lines.flatMap((line): Fault[] => (needs.has(line.line) ? [] : [{ code: 'line-unknown', args: { line: line.line } }])),
    ...[...needs.keys()].flatMap((line): Fault[] => (seen.has(line) ? [] : [{ code: 'line-missing', args: { line } }])),
    ...(seen.size === lines.length ? [] : [{ code: 'line-unknown', args: { line: 'twice' } } as const]),
    ...lines.flatMap((line) => lineFaults(line, needs.get(line.line), stock)),
    ...bagFaults(lines, stock),
    ...plan.builds.flatMap((build) => buildableFaults(build, demands)),
    ...shortFaults(lines, stock, demands),
  ];
}

function lineFaults(line: PlannedLine, of: { need: Need; boards: number } | undefined, stock: Stock): Fault[] {
  const faults: Fault[] = [];
  const expected = of ? of.boards * of.need.perBoard : line.need;
  if (line.need !== expected) faults.push({ code: 'need', args: { line: line.line, expected, received: line.need } });
  for (const number of [line.short, line.spare]) {
    if (!Number.isSafeInteger(number) || number < 0)
      faults.push({ code: 'not-whole', args: { line: line.line, received: number } });
  }
  let taken = 0;
  const bags = new Set<number>();
  for (const { bag, take } of line.takes) {
    taken += take;
    if (!Number.isSafeInteger(take) || take <= 0) faults.push({ code: 'not-whole', args: { line: line.line, received: take } });
    if (bags.has(bag)) faults.push({ code: 'bag-twice', args: { line: line.line, bag } });
    bags.add(bag);
    const found = stock.bags.find(({ number }) => number === bag);
    if (!found || found.state === 'astray') faults.push({ code: 'bag-unknown', args: { line: line.line, bag } });
    const allowed = of?.need.candidates.some((candidate) => candidate.bag === bag && mayPlan(candidate)) ?? false;
    if (!allowed) faults.push({ code: 'not-allowed', args: { line: line.line, bag } });
  }
  if (taken !== line.need - line.short + line.spare || line.short > line.need) {
    faults.push({ code: 'sum', args: { line: line.line, need: line.need, short: line.short, spare: line.spare, taken } });
  }
  return faults;
}

function bagFaults(lines: readonly PlannedLine[], stock: Stock): Fault[] {
  const taken = new Map<number, number>();
  for (const { takes } of lines) for (const { bag, take } of takes) taken.set(bag, (taken.get(bag) ?? 0) + take);
  return stock.bags.flatMap((bag): Fault[] => {
    const sum = taken.get(bag.number) ?? 0;
    return sum > 0 && sum > free(bag) ? [{ code: 'bag-over', args: { bag: bag.number, free: free(bag), taken: sum } }] : [];
  });
}

function buildableFaults(build: PlannedBuild, demands: readonly Demand[]): Fault[] {
  const demand = demands.find((one) => one.build === build.build);
  const per = new Map(demand?.needs.map(({ line, perBoard }) => [line, perBoard]) ?? []);
  const reached = build.lines.map((line) => {
    const pieces = per.get(line.line) ?? 0;
    return pieces > 0 ? Math.floor((line.need - line.short) / pieces) : Infinity;
  });
  const expected = Math.min(demand?.boards ?? 0, ...reached);
  return build.buildable === expected
    ? []
    : [{ code: 'buildable', args: { build: build.build, expected, received: build.buildable } }];
}

/** The shorts of a plan against the least that any plan leaves. */
function shortFaults(lines: readonly PlannedLine[], stock: Stock, demands: readonly Demand[]): Fault[] {
  const bags = stock.bags.filter((bag) => free(bag) > 0 && bag.state !== 'astray');
  const place = new Map(bags.map(({ number }, at) => [number, at]));
  const needs = demands.flatMap(({ needs, boards }) => needs.map((need) => ({ need, wants: need.perBoard * boards })));
  const problem = {
    holds: bags.map(free),
    bags: needs.map(({ need }) => [...new Set(need.candidates.filter(mayPlan).flatMap(({ bag }) => place.get(bag) ?? []))]),
  };
  const least = augment(
    problem,
    noFlow(problem),
    needs.map(({ wants }) => wants),
  );
  const lacking = lines.reduce((sum, { short }) => sum + short, 0);
  return lacking > least ? [{ code: 'short-avoidable', args: { lacking, avoidable: lacking - least } }] : [];
}
