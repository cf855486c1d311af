import { cautionsOf, type Caution } from '#core/kit/cautions.ts';
import type { Bag } from '#core/stock/stock.ts';

/** What is to be minded with the part that a stop takes; of a bag that is gone nothing is known. */
export function kitCautions(bag: Bag | null): Caution[] {
  return bag ? cautionsOf(bag.part) : [];
}
