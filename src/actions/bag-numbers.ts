/** The number after the greatest that is taken: {1, 2, 7} → 8; none → 1. */
export function nextNumber(taken: Iterable<number>): number {
  let greatest = 0;
  for (const number of taken) if (number > greatest) greatest = number;
  return greatest + 1;
}
