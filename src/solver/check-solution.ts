import type { Model } from '#core/kit/model.ts';

/** How far a sum of continuous columns may miss a bound, relative to its size; sums of whole numbers may not miss at all. */
const SLACK = 1e-7;

/** Whole columns to the nearest whole number, the others into their bounds; null where a whole column is not near one. */
export function rounded(model: Model, values: readonly number[]): number[] | null {
  const out: number[] = [];
  for (const [at, column] of model.columns.entries()) {
    const value = values[at] ?? Number.NaN;
    const near = column.whole ? Math.round(value) : Math.min(Math.max(value, column.low), column.high);
    if (!(Math.abs(near - value) <= 1e-5 * Math.max(1, Math.abs(value)))) return null;
    out.push(near === 0 ? 0 : near);
  }
  return out;
}

/** Names of the columns and rows that values break; the solver's word is not taken for it. */
export function broken(model: Model, values: readonly number[]): string[] {
  const columns = model.columns.filter(({ low, high }, at) => outside(values[at] ?? Number.NaN, low, high, 0));
  const rows = model.rows.filter(({ terms, low, high }) => {
    const whole = terms.every(([column, coefficient]) => model.columns[column]?.whole === true && Number.isInteger(coefficient));
    const size = terms.reduce((most, [column, coefficient]) => Math.max(most, Math.abs(coefficient * (values[column] ?? 0))), 1);
    const sum = terms.reduce((total, [column, coefficient]) => total + coefficient * (values[column] ?? 0), 0);
    return outside(sum, low, high, whole ? 0 : SLACK * size);
  });
  return [...columns, ...rows].map(({ name }) => name);
}

function outside(value: number, low: number, high: number, slack: number): boolean {
  return !(value >= low - slack && value <= high + slack);
}

/** Σ cost × column, from the values themselves: the solver's own sum carries dust. */
export function objectiveOf(model: Model, values: readonly number[]): number {
  return model.columns.reduce((sum, { cost }, at) => sum + cost * (values[at] ?? 0), 0);
}

/** Whether every feasible objective is a whole number, so that a bound may be rounded. */
export function wholeObjective(model: Model): boolean {
  return model.columns.every(({ cost, whole }) => cost === 0 || (whole && Number.isInteger(cost)));
}
