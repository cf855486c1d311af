import type { ActView } from '#api/acts.ts';
import type { BagView } from '#api/bags.ts';

const SHOWN = 6;

/** The bags touched last, the newest first; an act on many bags at once stands back behind those on few. */
export function touchedLast(acts: readonly ActView[], bags: readonly BagView[], shown = SHOWN): BagView[] {
  const known = new Map(bags.map((bag) => [bag.bag, bag]));
  // more bags than an act names are a list, a kit or the like: it says little of what lies on the bench
  const few = acts.filter(({ more }) => more === 0);
  const many = acts.filter(({ more }) => more > 0);
  const touched = new Set([...few, ...many].flatMap((act) => act.bags));
  return [...touched]
    .map((bag) => known.get(bag))
    .filter((bag) => bag !== undefined)
    .slice(0, shown);
}
