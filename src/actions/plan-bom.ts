import type { Choice, ReadRow } from '#core/bom/bom.ts';
import { matchBom, type MatchedLine } from '#core/bom/match.ts';
import type { Need, Plan, PlannedBuild, PlannedLine, Stop } from '#core/kit/kit.ts';
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
}

/** A BOM against the bags: the plan, every line of the file in its order, and the walk. */
export interface PlannedBom {
  /** change number of the stock that was planned on */
  readonly change: number;
  readonly plan: Plan;
  readonly build: PlannedBuild;
  readonly lines: readonly PlannedBomLine[];
  readonly route: readonly Stop[];
  readonly cells: readonly CellInput[];
}

/** A line with the key of its demand, by which a choice for it is kept. */
export interface PlannedBomLine extends PlannedLine {
  readonly demand: string;
}

export const BUILD = 'build';

/** Plans one build on a picture of the stock. Nothing is written; without `spares` not a piece above the need is taken. */
export async function planBom(
  now: StockNow,
  bom: Bom,
  boards: number,
  { spares }: { readonly spares: boolean },
): Promise<PlannedBom> {
  const stock = now.stock();
  const matched = matchBom(bom.rows, now.index, bom.choices, boards);
  const needs = matched.flatMap((line, at) => (line.fitted && line.perBoard > 0 ? [needOf(line, at)] : []));
  const demand = { build: BUILD, boards, priority: 0, due: null, needs };
  const plan = await planKit(stock, [demand], spares ? { spares: USUAL_SPARES } : {});
  const [build] = plan.builds;
  if (!build) throw new Error('a plan for one build has one build');
  const planned = new Map(build.lines.map((line) => [line.line, line]));
  const lines = matched.map((line, at) => ({ ...answerOf(line, at, planned.get(keyOf(at))), demand: line.demand }));
  return { change: stock.change, plan, build, lines, ...walkOf(build, stock) };
}

function keyOf(at: number): string {
  return `${BUILD}/${at}`;
}

function needOf({ row, refs, perBoard, candidates }: MatchedLine, at: number): Need {
  return { line: keyOf(at), row, refs, perBoard, candidates };
}

/** What is said of a line: where it gets pieces, the plan's reasons; where it gets none, why nothing serves. */
function answerOf(matched: MatchedLine, at: number, planned: PlannedLine | undefined): PlannedLine {
  const { row, refs, verdict, because } = matched;
  if (!planned) return { line: keyOf(at), row, refs, need: 0, spare: 0, short: 0, verdict, because, takes: [] };
  const short = planned.because.filter(({ code }) => code === 'short');
  if (!planned.takes.length)
    return { ...planned, verdict, because: [...short, ...because.filter(({ code }) => code !== 'short')] };
  return planned.short ? { ...planned, because: [...planned.because, ...because.filter(isAstray)] } : planned;
}

function isAstray({ code }: Because): boolean {
  return code === 'astray';
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
