/** A number with its noun: `1, 'board'` → `1 board`; `2, 'board'` → `2 boards`; `1, 'line was', 'lines were'` → `1 line was`. */
export function count(number: string | number | undefined, one: string, many = `${one}s`): string {
  return `${number} ${Number(number) === 1 ? one : many}`;
}
