/** How many steps the rail at the top of a label has, unless the lab sets another number. */
export const RAIL_STEPS = 60;

/** Where the mark of a bag stands on its rail, 0 front to 1 back: (number − 1) modulo the steps; 61 → 0 again. */
export function railMark(number: number, steps = RAIL_STEPS): number {
  return ((number - 1) % steps) / (steps - 1);
}
