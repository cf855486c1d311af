/** Edits (insert, delete, replace, swap of neighbours) between two words: the optimal string alignment distance. */
export function distance(a: string, b: string): number {
  const rows: number[][] = [Array.from({ length: b.length + 1 }, (_, at) => at)];
  const cell = (i: number, j: number): number => rows[i]?.[j] ?? Infinity;
  for (let i = 1; i <= a.length; i += 1) {
    const row = [i];
    rows.push(row);
    for (let j = 1; j <= b.length; j += 1) {
      const same = a[i - 1] === b[j - 1];
      const swapped = a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1];
      const least = Math.min(cell(i - 1, j) + 1, cell(i, j - 1) + 1, cell(i - 1, j - 1) + (same ? 0 : 1));
      row.push(swapped ? Math.min(least, cell(i - 2, j - 2) + 1) : least);
    }
  }
  return cell(a.length, b.length);
}

/** The known name that a mistyped one most likely meant: `mtach` -> `match`; null when none is near. */
export function nearestName(typed: string, known: readonly string[]): string | null {
  const most = Math.max(1, Math.floor(typed.length / 3));
  const near = known
    .map((name) => ({ name, edits: name.startsWith(typed) && typed.length > 1 ? 0 : distance(typed.toLowerCase(), name) }))
    .filter(({ edits }) => edits <= most)
    .toSorted((a, b) => a.edits - b.edits || a.name.localeCompare(b.name, 'en'));
  return near[0]?.name ?? null;
}
