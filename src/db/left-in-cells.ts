/** A take as far as it is told what of it should lie in its cell; `line` is the name of its line. */
interface CellTake {
  readonly line: string;
  readonly picked: number;
  readonly returned: number;
  /** what was left of it is said to be used up or lost */
  readonly settled: boolean;
}

/**
 * What should be left in the cells of a build, take by take in the order of the walk: of each line what was picked, less what its
 * boards use and what came back. Where several bags fed one line, the leftover is looked for in the last of them first.
 */
export function leftInCells(
  { boards, made }: { readonly boards: number; readonly made: number | null },
  needs: ReadonlyMap<string, number>,
  takes: readonly CellTake[],
): number[] {
  const left = new Map<string, number>();
  for (const { line, picked, returned } of takes) left.set(line, (left.get(line) ?? 0) + picked - returned);
  for (const [line, out] of left) {
    const used = boards ? Math.ceil(((needs.get(line) ?? 0) / boards) * (made ?? boards)) : 0;
    left.set(line, Math.max(0, out - used));
  }
  return takes
    .toReversed()
    .map(({ line, picked, returned, settled }) => {
      const some = Math.min(left.get(line) ?? 0, picked - returned);
      left.set(line, (left.get(line) ?? 0) - some);
      return settled ? 0 : some;
    })
    .toReversed();
}
