import { expectedLeftovers } from '#actions/expected-leftovers.ts';
import type { Leftover, KitPick } from '#actions/inputs.ts';
import { readKit, type Kit } from '#db/read-builds.ts';
import type { Lab } from '#db/database.ts';
import type { Chance } from './random.ts';

/** The build as it stands now. */
export async function kitNow(lab: Lab, build: string): Promise<Kit> {
  const kit = await lab.read((tx) => readKit(tx, build));
  if (!kit) throw new Error(`the story speaks of a build that is not there: ${build}`);
  return kit;
}

/** All that was planned, but for a bag that gave less than it should. */
export function picksOf({ takes }: Kit, short?: { readonly bag: number; readonly missing: number }): KitPick[] {
  return takes.map(({ id, bag, planned }) =>
    bag === short?.bag ? { take: id, quantity: planned - short.missing, short: true } : { take: id, quantity: planned },
  );
}

/** What was not lost or spoiled of the spares comes back: half of them at least. */
export function leftovers(kit: Kit, chance: Chance): Leftover[] {
  return expectedLeftovers(kit).flatMap(({ take, expected }) => {
    const quantity = chance.whole(`leftover ${kit.build.name} ${take.tray} ${take.cell}`, Math.ceil(expected / 2), expected);
    return quantity > 0 ? [{ take: take.id, quantity }] : [];
  });
}
