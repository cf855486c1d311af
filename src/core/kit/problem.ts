import { free, type Bag, type Stock } from '#core/stock/stock.ts';
import type { Candidate, Demand, Need } from './kit.ts';

/** How well a bag answers: 0 chosen by hand, 1 exact, 2 serves, 3 an accepted check. */
export type Grade = 0 | 1 | 2 | 3;

export interface Option {
  /** index in `Problem.bags` */
  readonly bag: number;
  readonly grade: Grade;
}

/** A line that wants pieces, and the bags that may give them. */
export interface Line {
  readonly line: string;
  /** index in `Problem.builds` */
  readonly build: number;
  readonly perBoard: number;
  readonly need: number;
  readonly options: readonly Option[];
}

export interface Problem {
  /** in the order in which they are planned: priority, due date, written order */
  readonly builds: readonly Demand[];
  readonly lines: readonly Line[];
  /** bags with something free that some line may take, by number */
  readonly bags: readonly Bag[];
}

/** `exact`, `serves`, and checks that were accepted may be planned; nothing else, and never from a bag that is astray. */
export function mayPlan(candidate: Candidate): boolean {
  return candidate.verdict === 'exact' || candidate.verdict === 'serves' || (candidate.verdict === 'check' && candidate.accepted);
}

export function gradeOf(candidate: Candidate): Grade {
  if (candidate.because.some(({ code }) => code === 'chosen')) return 0;
  return candidate.verdict === 'exact' ? 1 : candidate.verdict === 'serves' ? 2 : 3;
}

/** Builds in planning order: small priority first, then the earlier due date (none is last), then as written. */
export function inOrder(demands: readonly Demand[]): Demand[] {
  return demands.toSorted((a, b) => a.priority - b.priority || compareDue(a.due, b.due));
}

function compareDue(a: string | null, b: string | null): number {
  if (a === b) return 0;
  if (a === null) return 1;
  return b === null || a < b ? -1 : 1;
}

/** The stock and the demands as plain numbers; `may` says which candidates count. */
export function problemOf(
  stock: Stock,
  demands: readonly Demand[],
  may: (candidate: Candidate, build: string) => boolean = mayPlan,
): Problem {
  const builds = inOrder(demands);
  const usable = new Map(stock.bags.filter((bag) => free(bag) > 0 && bag.state !== 'astray').map((bag) => [bag.number, bag]));
  const wanted = new Set(builds.flatMap(({ needs }) => needs.flatMap(({ candidates }) => candidates.map(({ bag }) => bag))));
  const bags = [...usable.values()].filter(({ number }) => wanted.has(number)).toSorted((a, b) => a.number - b.number);
  const place = new Map(bags.map(({ number }, at) => [number, at]));
  const optionsOf = (need: Need, build: string): Option[] => {
    const best = new Map<number, Grade>();
    for (const candidate of need.candidates) {
      const bag = place.get(candidate.bag);
      if (bag === undefined || !may(candidate, build)) continue;
      best.set(bag, Math.min(best.get(bag) ?? 3, gradeOf(candidate)) as Grade); // as: the smaller of two grades is a grade
    }
    return [...best].map(([bag, grade]) => ({ bag, grade })).toSorted((a, b) => a.bag - b.bag);
  };
  const lines = builds.flatMap((demand, build) =>
    demand.needs.map((need): Line => ({
      line: need.line,
      build,
      perBoard: need.perBoard,
      need: demand.boards * need.perBoard,
      options: optionsOf(need, demand.build),
    })),
  );
  return { builds, lines, bags };
}
