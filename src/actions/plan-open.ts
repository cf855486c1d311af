import { promisedBags } from '#db/bags.ts';
import { readBoard } from '#db/boards.ts';
import type { Lab, Tx } from '#db/database.ts';
import { readBuilds } from '#db/read-builds.ts';
import type { FollowedStock } from './follow-stock.ts';
import { USUAL_PRIORITY } from './plan-build.ts';
import { planBuilds, type Bom, type OpenBuild, type PlannedBom } from './plan-builds.ts';

/** A build that is asked for and not kept. */
export interface Wish extends Bom {
  readonly name: string;
  readonly boards: number;
  readonly priority?: number;
  readonly due?: string;
}

export interface OpenPlan {
  /** the planned builds of the lab and what was asked for, the first served first */
  readonly all: readonly PlannedBom[];
  /** what was asked for, as it was asked */
  readonly asked: readonly PlannedBom[];
}

/**
 * Plans what is asked for together with every planned build of the lab; what is asked for comes last among equals. Reserved
 * builds keep their bags and are not planned again. Nothing is written.
 */
export async function planOpen(
  lab: Lab,
  stock: FollowedStock,
  wishes: readonly Wish[],
  { spares }: { readonly spares: boolean },
): Promise<OpenPlan> {
  const { kept, promised } = await lab.read(async (tx) => ({ kept: await plannedBuilds(tx), promised: await promisedBags(tx) }));
  const asked = wishes.map(openBuild);
  const all = await planBuilds(await stock.current(), [...kept, ...asked], { spares, promised });
  return { all, asked: asked.flatMap(({ key }) => all.filter(({ open }) => open.key === key)) };
}

/** The same for one BOM. */
export async function planAsked(
  lab: Lab,
  stock: FollowedStock,
  wish: Wish,
  settings: { readonly spares: boolean },
): Promise<{ planned: PlannedBom; all: readonly PlannedBom[] }> {
  const { all, asked } = await planOpen(lab, stock, [wish], settings);
  const [planned] = asked;
  if (!planned) throw new Error('a plan for a build has that build');
  return { planned, all };
}

function openBuild({ name, boards, priority, due, rows, choices, later = [] }: Wish, at: number): OpenBuild {
  const rank = { priority: priority ?? USUAL_PRIORITY, due: due ?? null };
  return { key: `asked ${at + 1}`, kept: false, name, boards, ...rank, rows, choices, later };
}

/** The planned builds with their BOMs; equal ones in the order in which they were planned. */
async function plannedBuilds(tx: Tx): Promise<OpenBuild[]> {
  const found: OpenBuild[] = [];
  for (const { id: key, name, state, board, revision, boards, priority, due } of await readBuilds(tx)) {
    if (state !== 'planned' || board === null || revision === null) continue;
    const bom = await readBoard(tx, board, revision);
    if (bom)
      found.push({ key, kept: true, name, boards, priority, due, rows: bom.lines, choices: bom.choices, later: bom.later });
  }
  return found;
}
