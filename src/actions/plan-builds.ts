import type { Choice, ReadRow } from '#core/bom/bom.ts';
import { matchBom, type MatchedLine } from '#core/bom/match.ts';
import type { Demand, Need, Plan, PlannedBuild, PlannedLine, Stop } from '#core/kit/kit.ts';
import { mayPlan } from '#core/kit/problem.ts';
import { route } from '#core/kit/route.ts';
import { USUAL_SPARES } from '#core/kit/spares.data.ts';
import { trays } from '#core/kit/trays.ts';
import type { Because } from '#core/serve/verdict.ts';
import type { Stock } from '#core/stock/stock.ts';
import type { StockNow } from './follow-stock.ts';
import type { CellInput } from './inputs.ts';
import { planKit } from './plan-kit.ts';

/** A BOM to be planned: its lines as read, and what was chosen by hand for its board. */
export interface Bom {
  readonly rows: readonly ReadRow[];
  readonly choices: readonly Choice[];
  /** demands that are left off the board for now; of a file there are none */
  readonly later?: readonly string[];
}

/** A build that nothing is promised to yet: one that is asked for now, or one that the lab keeps as planned. */
export interface OpenBuild extends Bom {
  /** id of a planned build; any other word for one that is asked for */
  readonly key: string;
  /** whether the lab keeps it as planned */
  readonly kept: boolean;
  readonly name: string;
  readonly boards: number;
  readonly priority: number;
  readonly due: string | null;
}

/** One build of a plan: what it gets, every line of its BOM in the order of the file, and the walk. */
export interface PlannedBom {
  /** change number of the stock that was planned on */
  readonly change: number;
  readonly plan: Plan;
  readonly open: OpenBuild;
  readonly build: PlannedBuild;
  readonly lines: readonly PlannedBomLine[];
  /** the same lines put against the bags, before anything was planned */
  readonly matched: readonly MatchedLine[];
  readonly route: readonly Stop[];
  readonly cells: readonly CellInput[];
}

/** A line with the key of its demand, by which a choice for it is kept. */
export interface PlannedBomLine extends PlannedLine {
  readonly demand: string;
}

interface Settings {
  /** without them not a piece above the need is taken */
  readonly spares: boolean;
  /** names of the builds that pieces of a bag are promised to, by its number */
  readonly promised?: ReadonlyMap<number, readonly string[]>;
}

/** Plans builds together on a picture of the stock; answers them in the order of the plan, the first served first. Nothing is written. */
export async function planBuilds(now: StockNow, builds: readonly OpenBuild[], settings: Settings): Promise<PlannedBom[]> {
  const stock = now.stock();
  const matched = new Map(builds.map((one) => [one.key, matchBom(one.rows, now.index, one.choices, one.boards, one.later)]));
  const demands = builds.map((one) => demandOf(one, matched.get(one.key) ?? []));
  const plan = await planKit(stock, demands, settings.spares ? { spares: USUAL_SPARES } : {});
  const taken = new Map([...(settings.promised ?? [])].map(([bag, names]) => [bag, [...names]]));
  return plan.builds.map((build) => {
    const open = builds.find(({ key }) => key === build.build);
    if (!open) throw new Error(`a plan for build ${build.build}, which nobody asked for`);
    const planned = new Map(build.lines.map((line) => [line.line, line]));
    const mine = matched.get(open.key) ?? [];
    const lines = mine.map((line, at) => {
      const key = `${open.key}/${at}`;
      return { ...answerOf(key, line, planned.get(key), taken), demand: line.demand };
    });
    for (const bag of bagsOf(build)) taken.set(bag, [...(taken.get(bag) ?? []), open.name]);
    return { change: stock.change, plan, open, build, lines, matched: mine, ...walkOf(build, stock) };
  });
}

function demandOf({ key, boards, priority, due }: OpenBuild, matched: readonly MatchedLine[]): Demand {
  const needs = matched.flatMap(({ row, refs, perBoard, fitted, candidates }, at): Need[] =>
    fitted && perBoard > 0 ? [{ line: `${key}/${at}`, row, refs, perBoard, candidates }] : [],
  );
  return { build: key, boards, priority, due, needs };
}

function bagsOf(build: PlannedBuild): Set<number> {
  return new Set(build.lines.flatMap(({ takes }) => takes.map(({ bag }) => bag)));
}

type Taken = ReadonlyMap<number, readonly string[]>;

/** What is said of a line: where it gets pieces, the plan's reasons; where it gets none, why nothing serves; and who came first. */
function answerOf(key: string, matched: MatchedLine, planned: PlannedLine | undefined, taken: Taken): PlannedLine {
  const { row, refs, verdict, because, ofLine } = matched;
  if (!planned) return { line: key, row, refs, need: 0, spare: 0, short: 0, verdict, because, takes: [] };
  if (planned.short === 0) return { ...planned, because: [...ofLine, ...planned.because] };
  const isShort = ({ code }: Because): boolean => code === 'short';
  const first = [...planned.because.filter(isShort), ...promisedOf(matched, taken)];
  const rest =
    planned.takes.length > 0 ? [...ofLine, ...planned.because, ...because.filter(({ code }) => code === 'astray')] : because;
  const said = [...first, ...rest.filter((one) => !isShort(one))];
  return planned.takes.length > 0 ? { ...planned, because: said } : { ...planned, verdict, because: said };
}

/** The builds that come first at the bags which this line could take from. */
function promisedOf({ candidates }: MatchedLine, taken: Taken): Because[] {
  const names = candidates.filter(mayPlan).flatMap(({ bag }) => taken.get(bag) ?? []);
  return [...new Set(names)].map((build) => ({ code: 'promised', args: { build } }));
}

function walkOf(build: PlannedBuild, stock: Stock): Pick<PlannedBom, 'route' | 'cells'> {
  const stops = route(build, stock);
  const lineOf = new Map(
    trays(build.lines, new Map(stock.bags.map((bag) => [bag.number, bag]))).map(({ line, tray, cell }) => [
      `${tray}/${cell}`,
      line,
    ]),
  );
  const cells = stops.map(({ bag, tray, cell }) => ({ line: lineOf.get(`${tray}/${cell}`) ?? '', bag, tray, cell }));
  return { route: stops, cells };
}
