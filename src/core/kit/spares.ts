import { free, type Stock } from '#core/stock/stock.ts';
import type { PlannedBuild, PlannedLine, Take } from './kit.ts';
import { sizeClass } from './size-class.ts';
import type { SpareRule } from './spares.data.ts';

/**
 * Adds spares to planned builds: only from bags that the line opens anyway, only from what all needs together leave, so that a
 * spare never causes a short. 12 of a 0402 → 17 where the bag has 5 left.
 */
export function withSpares(builds: readonly PlannedBuild[], stock: Stock, rules: readonly SpareRule[]): PlannedBuild[] {
  const bags = new Map(stock.bags.map((bag) => [bag.number, bag]));
  const left = new Map(stock.bags.map((bag) => [bag.number, free(bag)]));
  for (const { lines } of builds)
    for (const { takes } of lines) for (const { bag, take } of takes) left.set(bag, (left.get(bag) ?? 0) - take);
  const usual = (line: PlannedLine): number => {
    const part = bags.get(line.takes[0]?.bag ?? 0)?.part;
    const rule = part && rules.find(({ size }) => size === sizeClass(part));
    return rule && line.short === 0 ? Math.max(rule.least, Math.ceil(line.need * rule.share)) : 0;
  };
  const add = (line: PlannedLine): PlannedLine => {
    let wanted = usual(line);
    const takes = line.takes.map(({ bag, take }): Take => {
      const more = Math.max(0, Math.min(wanted, left.get(bag) ?? 0));
      wanted -= more;
      left.set(bag, (left.get(bag) ?? 0) - more);
      return { bag, take: take + more };
    });
    return { ...line, takes, spare: takes.reduce((sum, { take }) => sum + take, 0) - (line.need - line.short) };
  };
  return builds.map((build) => ({ ...build, lines: build.lines.map(add) }));
}
