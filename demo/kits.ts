import type { Leftover, KitPick } from '#actions/inputs.ts';
import type { ReservedBom } from '#actions/reserve-bom.ts';
import { takesOf } from '#db/builds.ts';
import type { Lab } from '#db/database.ts';
import type { Chance } from './random.ts';

/** A kit of the story as it lies in its trays. */
export interface Kit {
  readonly key: string;
  /** id of the build */
  readonly build: string;
  readonly takes: readonly KitTake[];
}

interface KitTake {
  readonly take: string;
  readonly bag: number;
  readonly planned: number;
  /** of these, pieces above the need of the line */
  readonly spare: number;
}

/** A reserved kit, its takes in the order of the walk, as the cells of the plan are. */
export async function keepKit(lab: Lab, key: string, { planned, result }: ReservedBom): Promise<Kit> {
  const build = result.builds[0]?.build;
  if (build === undefined) throw new Error(`${key} was reserved without a build`);
  const takes = await lab.read((tx) => takesOf(tx, build));
  return {
    key,
    build,
    takes: planned.cells.map((cell, at) => {
      const [line, take] = [planned.build.lines.find((one) => one.line === cell.line), takes[at]];
      if (!line || !take) throw new Error(`${key}: the walk and the takes differ at stop ${at + 1}`);
      return {
        take: take.id,
        bag: cell.bag,
        planned: take.planned,
        spare: line.takes.at(-1)?.bag === cell.bag ? Math.min(line.spare, take.planned) : 0,
      };
    }),
  };
}

/** All that was planned, but for a bag that gave less than it should. */
export function picksOf(kit: Kit, short?: { readonly bag: number; readonly missing: number }): KitPick[] {
  return kit.takes.map(({ take, bag, planned }) =>
    bag === short?.bag ? { take, quantity: planned - short.missing, short: true } : { take, quantity: planned },
  );
}

/** What was not lost or spoiled of the spares comes back. */
export function leftovers(kit: Kit, chance: Chance): Leftover[] {
  return kit.takes.flatMap(({ take, bag, spare }) => {
    const quantity = chance.whole(`leftover ${kit.key} ${bag}`, Math.floor(spare / 2), spare);
    return quantity > 0 ? [{ take, quantity }] : [];
  });
}
