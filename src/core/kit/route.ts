import type { Bag, Box, Stock } from '#core/stock/stock.ts';
import type { PlannedBuild, Stop } from './kit.ts';
import { trays, USUAL_TRAY } from './trays.ts';

const NATURAL = new Intl.Collator('en', { numeric: true });

/**
 * The walk for one build: boxes in walking order (of those at one spot the one with the fewest boxes on it first), bags by place
 * and number, so that every box and bag is opened once; a bag for two lines is two stops in a row, one for each cell.
 */
export function route(build: PlannedBuild, stock: Stock, cellsOfTray = USUAL_TRAY): Stop[] {
  const bags = new Map(stock.bags.map((bag) => [bag.number, bag]));
  const boxes = new Map(stock.boxes.map((box) => [box.name, box]));
  const cells = new Map(trays(build.lines, bags, cellsOfTray).map((cell) => [cell.line, cell]));
  const stops = build.lines.flatMap((line) =>
    line.takes.map(({ bag, take }): Stop => ({
      bag,
      box: bags.get(bag)?.box ?? null,
      place: bags.get(bag)?.place ?? null,
      take,
      tray: cells.get(line.line)?.tray ?? 0,
      cell: cells.get(line.line)?.cell ?? 0,
      refs: line.refs,
    })),
  );
  return stops.toSorted(
    (a, b) => byPlace(bags.get(a.bag), bags.get(b.bag), boxes) || a.bag - b.bag || a.tray - b.tray || a.cell - b.cell,
  );
}

function byPlace(a: Bag | undefined, b: Bag | undefined, boxes: ReadonlyMap<string, Box>): number {
  const [x, y] = [a?.box ?? null, b?.box ?? null];
  if (x !== y) return byBox(x, y, boxes);
  const [at, to] = [a?.place ?? null, b?.place ?? null];
  if (at === to) return 0;
  if (at === null || to === null) return at === null ? 1 : -1;
  return NATURAL.compare(at, to);
}

function byBox(a: string | null, b: string | null, boxes: ReadonlyMap<string, Box>): number {
  if (a === null || b === null) return a === null ? 1 : -1;
  const [x, y] = [boxes.get(a), boxes.get(b)];
  const far = Number.MAX_SAFE_INTEGER;
  return (x?.order ?? far) - (y?.order ?? far) || (x?.lifts ?? 0) - (y?.lifts ?? 0) || NATURAL.compare(a, b);
}
