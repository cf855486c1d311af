import type { ActView } from '#api/acts.ts';
import type { BagView } from '#api/bags.ts';

const SHOWN = 6;
/** An act that names so many bags is a list, a kit or the like: it says little of what lies on the bench. */
const FEW = 8;

/** The bags touched last, the newest first; an act on many bags at once stands back behind those on few. */
export function touchedLast(acts: readonly ActView[], bags: readonly BagView[], shown = SHOWN): BagView[] {
  const known = new Map(bags.map((bag) => [bag.bag, bag]));
  const few = acts.filter((act) => act.bags.length < FEW);
  const many = acts.filter((act) => act.bags.length >= FEW);
  const touched = new Set([...few, ...many].flatMap((act) => act.bags));
  return [...touched]
    .map((bag) => known.get(bag))
    .filter((bag) => bag !== undefined)
    .slice(0, shown);
}
