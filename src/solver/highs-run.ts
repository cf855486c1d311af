import type { Highs, ModelData, Model as HighsModel } from 'highs';
import type { Model, Row } from '#core/kit/model.ts';
import type { Limits } from './limits.ts';

/** What HiGHS said, before anybody believes it. */
export interface RawAnswer {
  readonly status: 'optimal' | 'limit' | 'stopped' | 'infeasible' | 'unbounded' | 'failed';
  readonly code: number;
  readonly values: readonly number[];
  readonly bound: number;
}

const FEASIBLE = 2; // kSolutionStatusFeasible

/** Builds the model through the interface for arrays (text is read forgivingly, a typing error becomes another variable) and runs it. */
export function runHighs(highs: Highs, model: Model, limits: Omit<Limits, 'signal'>): RawAnswer {
  return highs.withModel(dataOf(highs, model), (handle) => {
    handle.options.set({
      output_flag: false,
      time_limit: limits.seconds,
      mip_max_nodes: limits.nodes,
      random_seed: 0,
      mip_rel_gap: 0,
      mip_abs_gap: 1e-6,
      mip_feasibility_tolerance: 1e-9,
      primal_feasibility_tolerance: 1e-9,
    });
    if (limits.start) handle.setSolution({ colValue: [...limits.start] });
    handle.run();
    return answerOf(highs, model, handle);
  });
}

function answerOf(highs: Highs, model: Model, handle: HighsModel): RawAnswer {
  const code = handle.getModelStatus();
  const statuses = highs.constants.modelStatus;
  const nothing = { code, values: [], bound: Number.NaN };
  if (code === statuses.infeasible) return { status: 'infeasible', ...nothing };
  if (code === statuses.unbounded || code === statuses.unboundedOrInfeasible) return { status: 'unbounded', ...nothing };
  const whole = model.columns.some((column) => column.whole);
  const stopped = (
    [statuses.timeLimit, statuses.iterationLimit, statuses.solutionLimit, statuses.interrupted] as number[]
  ).includes(code); // as: compared as plain numbers
  if (stopped && handle.info.get('primal_solution_status') !== FEASIBLE) return { status: 'stopped', ...nothing };
  if (code !== statuses.optimal && !stopped) return { status: 'failed', ...nothing };
  const bound = whole ? Number(handle.info.get('mip_dual_bound')) : handle.getObjectiveValue();
  return { status: code === statuses.optimal ? 'optimal' : 'limit', code, values: [...handle.getSolution().colValue], bound };
}

function dataOf(highs: Highs, model: Model): ModelData {
  const open = (bound: number): number => (bound === Infinity ? highs.infinity : bound === -Infinity ? -highs.infinity : bound);
  const { variableType, objectiveSense } = highs.constants;
  return {
    numCols: model.columns.length,
    numRows: model.rows.length,
    sense: model.sense === 'min' ? objectiveSense.minimize : objectiveSense.maximize,
    colCost: model.columns.map(({ cost }) => cost),
    colLower: model.columns.map(({ low }) => open(low)),
    colUpper: model.columns.map(({ high }) => open(high)),
    rowLower: model.rows.map(({ low }) => open(low)),
    rowUpper: model.rows.map(({ high }) => open(high)),
    ...(model.columns.some(({ whole }) => whole)
      ? { integrality: model.columns.map(({ whole }) => (whole ? variableType.integer : variableType.continuous)) }
      : {}),
    matrix: { format: 'csr', numRows: model.rows.length, numCols: model.columns.length, ...packed(model.rows) },
  };
}

function packed(rows: readonly Row[]): { starts: Int32Array; indices: Int32Array; values: Float64Array } {
  const starts = new Int32Array(rows.length + 1);
  rows.forEach(({ terms }, at) => {
    starts[at + 1] = (starts[at] ?? 0) + terms.length;
  });
  const terms = rows.flatMap((row) => row.terms);
  return {
    starts,
    indices: Int32Array.from(terms, ([column]) => column),
    values: Float64Array.from(terms, ([, coefficient]) => coefficient),
  };
}
