import type { Because, Verdict } from '#core/serve/verdict.ts';
import type { BuildState } from './builds.ts';
import type { Tx } from './engine.ts';
import { leftInCells } from './left-in-cells.ts';
import { grouped } from './rows.ts';
import { settledTakes, type IsSettled } from './settled-takes.ts';

/** A build as lists show it. */
export interface BuildSummary {
  readonly id: string;
  readonly name: string;
  readonly board: string | null;
  readonly revision: string | null;
  readonly boards: number;
  readonly made: number | null;
  readonly state: BuildState;
  readonly priority: number;
  readonly due: string | null;
  /** complete boards that its plan made; 0 while it is only planned */
  readonly buildable: number;
  readonly proof: string;
  /** instant at which it was entered: planned, or reserved at once */
  readonly reserved: string;
  readonly takes: number;
  /** takes that are still to be picked */
  readonly open: number;
  /** pieces that its lines lacked when it was planned */
  readonly short: number;
  /** of a soldered build: pieces that should lie in its trays still */
  readonly left: number;
  /** pieces that came back from its trays */
  readonly returned: number;
}

/** One stop of the walk, with what became of it. */
export interface KitTake {
  readonly id: string;
  readonly line: string;
  readonly bag: number;
  readonly code: string;
  readonly text: string;
  readonly box: string | null;
  readonly place: string | null;
  readonly tray: number;
  readonly cell: number;
  readonly refs: readonly string[];
  readonly planned: number;
  readonly picked: number;
  readonly returned: number;
  readonly state: 'open' | 'done';
  /** what was left of it is said to be used up or lost */
  readonly settled: boolean;
  /** what the bag holds now */
  readonly onHand: number;
}

export interface KitLine {
  readonly id: string;
  /** the plan's name of the line */
  readonly key: string;
  readonly row: number;
  readonly refs: readonly string[];
  readonly need: number;
  readonly spare: number;
  readonly short: number;
  readonly verdict: Verdict;
  readonly because: readonly Because[];
}

/** A build whole: its lines, and its takes in the order of the walk. */
export interface Kit {
  readonly build: BuildSummary;
  readonly lines: readonly KitLine[];
  readonly takes: readonly KitTake[];
}

/** Builds that were not taken back: those that go on first, by priority and due date; the ended ones after, newest first. */
export async function readBuilds(tx: Tx): Promise<BuildSummary[]> {
  const builds = await summaries(tx, null);
  const goesOn = ({ state }: BuildSummary): boolean => state === 'planned' || state === 'reserved' || state === 'picking';
  const due = (build: BuildSummary): string => build.due ?? '9999';
  const going = builds
    .filter(goesOn)
    .toSorted((a, b) => a.priority - b.priority || (due(a) < due(b) ? -1 : due(a) > due(b) ? 1 : 0));
  return [...going, ...builds.filter((build) => !goesOn(build)).toReversed()];
}

/** Builds that were not taken back, by the name of their board, the newest first. */
export async function readBuildsOfBoards(tx: Tx): Promise<Map<string, BuildSummary[]>> {
  const builds = (await summaries(tx, null)).toReversed();
  return grouped(
    builds.filter(({ board }) => board !== null),
    ({ board }) => board ?? '',
  );
}

/** One build with its route; null where there is none, or it was taken back. */
export async function readKit(tx: Tx, id: string): Promise<Kit | null> {
  const [build] = await summaries(tx, id);
  if (!build) return null;
  const lines = await tx.selectFrom('build_line').selectAll().where('build', '=', id).orderBy('ord').execute();
  const kitLines = lines.map((line): KitLine => ({
    id: line.id,
    key: line.key,
    row: line.row,
    refs: JSON.parse(line.refs) as string[], // as: `insertBuildLines` wrote it
    need: line.need,
    spare: line.spare,
    short: line.short,
    verdict: line.verdict as Verdict, // as: a planned line's verdict was entered
    because: JSON.parse(line.because) as Because[], // as: `insertBuildLines` wrote it
  }));
  return { build, lines: kitLines, takes: await readTakes(tx, build, new Map(kitLines.map((line) => [line.id, line]))) };
}

async function readTakes(tx: Tx, { id: build, made }: BuildSummary, lines: ReadonlyMap<string, KitLine>): Promise<KitTake[]> {
  const settled = await settledTakes(tx, build);
  const rows = await tx
    .selectFrom('kit_take')
    .innerJoin('build_line', 'build_line.id', 'kit_take.build_line')
    .innerJoin('bag', 'bag.id', 'kit_take.bag')
    .innerJoin('part', 'part.id', 'bag.part')
    .selectAll('kit_take')
    .select(['bag.number', 'bag.text', 'bag.box', 'bag.place', 'bag.on_hand', 'part.code'])
    .where('build_line.build', '=', build)
    .orderBy('kit_take.ord')
    .orderBy('bag.number')
    .execute();
  return rows.map((row) => ({
    id: row.id,
    line: lines.get(row.build_line)?.key ?? '',
    bag: row.number,
    code: row.code,
    text: row.text,
    box: row.box,
    place: row.place,
    tray: row.tray,
    cell: row.cell,
    refs: lines.get(row.build_line)?.refs ?? [],
    planned: row.planned,
    picked: row.picked,
    returned: row.returned,
    state: row.state,
    settled: settled(row.id, made),
    onHand: row.on_hand,
  }));
}

/** In the order in which they were entered. */
async function summaries(tx: Tx, id: string | null): Promise<BuildSummary[]> {
  const query = tx
    .selectFrom('build')
    .innerJoin('act', 'act.id', 'build.act')
    .leftJoin('board', 'board.id', 'build.board')
    .leftJoin('revision', 'revision.id', 'build.revision')
    .selectAll('build')
    .select(['act.recorded_at', 'board.name as board_name', 'revision.name as revision_name'])
    .where('build.state', '!=', 'undone')
    .orderBy('act.change')
    .orderBy('build.name');
  const rows = await (id === null ? query : query.where('build.id', '=', id)).execute();
  const takeQuery = tx
    .selectFrom('kit_take')
    .innerJoin('build_line', 'build_line.id', 'kit_take.build_line')
    .innerJoin('bag', 'bag.id', 'kit_take.bag')
    .select(['kit_take.id', 'build_line.build', 'kit_take.build_line as line', 'kit_take.state'])
    .select(['kit_take.picked', 'kit_take.returned'])
    .orderBy('kit_take.ord')
    .orderBy('bag.number');
  const takes = grouped(
    await (id === null ? takeQuery : takeQuery.where('build_line.build', '=', id)).execute(),
    (take) => take.build,
  );
  const lineQuery = tx.selectFrom('build_line').select(['id', 'build', 'need', 'short']);
  const lines = grouped(await (id === null ? lineQuery : lineQuery.where('build', '=', id)).execute(), (line) => line.build);
  const settled = await settledTakes(tx, id);
  return rows.map((row) => ({
    id: row.id,
    name: row.name,
    board: row.board_name,
    revision: row.revision_name,
    boards: row.boards,
    made: row.made,
    state: row.state as BuildState, // as: a CHECK of the table holds the words
    priority: row.priority,
    due: row.due,
    buildable: row.buildable,
    proof: row.proof,
    reserved: row.recorded_at,
    takes: takes.get(row.id)?.length ?? 0,
    open: (takes.get(row.id) ?? []).filter((take) => take.state === 'open').length,
    short: (lines.get(row.id) ?? []).reduce((sum, line) => sum + line.short, 0),
    left: leftOf(row, lines.get(row.id) ?? [], takes.get(row.id) ?? [], settled),
    returned: (takes.get(row.id) ?? []).reduce((sum, take) => sum + take.returned, 0),
  }));
}

/** Pieces that should lie in the trays of a soldered build still. */
function leftOf(
  build: { readonly state: string; readonly boards: number; readonly made: number | null },
  lines: readonly { readonly id: string; readonly need: number }[],
  takes: readonly { readonly id: string; readonly line: string; readonly picked: number; readonly returned: number }[],
  settled: IsSettled,
): number {
  if (build.state !== 'built') return 0;
  const needs = new Map(lines.map(({ id, need }) => [id, need]));
  const told = takes.map((take) => ({ ...take, settled: settled(take.id, build.made) }));
  return leftInCells(build, needs, told).reduce((sum, left) => sum + left, 0);
}
