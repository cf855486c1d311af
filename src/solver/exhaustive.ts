import type { Model, Solution } from '#core/kit/model.ts';
import { objectiveOf } from './check-solution.ts';

/** The optimum of a small model of whole columns by trying all of them: the reference that the solver is tested against. */
export function exhaustive(model: Model): Solution {
  if (model.columns.some(({ whole, low, high }) => !whole || !Number.isFinite(low) || !Number.isFinite(high))) {
    throw new Error('exhaustive() wants whole columns with bounds');
  }
  const best: { values: number[] | null; objective: number } = { values: null, objective: 0 };
  const values: number[] = [];
  const visit = (): void => {
    const column = model.columns[values.length];
    if (!column) return keep(model, values, best);
    for (let value = column.low; value <= column.high; value += 1) {
      values.push(value);
      if (reachable(model, values)) visit();
      values.pop();
    }
  };
  visit();
  if (best.values === null) return { proof: 'infeasible', objective: Number.NaN, bound: Number.NaN, gap: Number.NaN, values: [] };
  return { proof: 'optimal', objective: best.objective, bound: best.objective, gap: 0, values: best.values };
}

function keep(model: Model, values: readonly number[], best: { values: number[] | null; objective: number }): void {
  const objective = objectiveOf(model, values);
  if (best.values !== null && (model.sense === 'min' ? objective >= best.objective : objective <= best.objective)) return;
  best.values = [...values];
  best.objective = objective;
}

/** Whether every row can still be met by the columns that are not set yet. */
function reachable(model: Model, values: readonly number[]): boolean {
  return model.rows.every(({ terms, low, high }) => {
    let [least, most] = [0, 0];
    for (const [at, coefficient] of terms) {
      const column = model.columns[at];
      const ends =
        at < values.length
          ? [coefficient * (values[at] ?? 0)]
          : [coefficient * (column?.low ?? 0), coefficient * (column?.high ?? 0)];
      least += Math.min(...ends);
      most += Math.max(...ends);
    }
    return most >= low - 1e-9 && least <= high + 1e-9;
  });
}
