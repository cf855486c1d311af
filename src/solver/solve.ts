import type { Model, Solution } from '#core/kit/model.ts';
import { broken, objectiveOf, rounded, wholeObjective } from './check-solution.ts';
import type { RawAnswer } from './highs-run.ts';
import { SolveStopped, USUAL_LIMITS, type Limits } from './limits.ts';
import { runInThread } from './solver-thread.ts';

/**
 * The optimum of a model, or the best found within the limits with its gap. Whole columns are whole, and every bound and row has
 * been checked again here. Throws `SolveStopped` where a limit came before any answer, the signal's reason where it was given up,
 * and anything else where the solver fails or its answer breaks the model: a bug, of it or of ours.
 */
export async function solve(model: Model, limits: Limits = USUAL_LIMITS): Promise<Solution> {
  if (model.columns.length === 0) return nothingToDecide(model);
  return trusted(model, await runInThread(model, limits));
}

function nothingToDecide(model: Model): Solution {
  const possible = broken(model, []).length === 0;
  return { proof: possible ? 'optimal' : 'infeasible', objective: 0, bound: 0, gap: 0, values: [] };
}

function trusted(model: Model, answer: RawAnswer): Solution {
  if (answer.status === 'infeasible' || answer.status === 'unbounded') {
    return { proof: answer.status, objective: Number.NaN, bound: Number.NaN, gap: Number.NaN, values: [] };
  }
  if (answer.status === 'stopped') throw new SolveStopped(`no answer within the limits (status ${answer.code})`);
  const values = answer.status === 'failed' ? null : rounded(model, answer.values);
  if (values === null) throw new Error(`the solver came to no answer (status ${answer.code})`);
  const faults = broken(model, values);
  if (faults.length > 0) throw new Error(`the solver's answer breaks ${faults.slice(0, 3).join(', ')}`);
  const objective = objectiveOf(model, values);
  if (answer.status === 'optimal') return { proof: 'optimal', objective, bound: objective, gap: 0, values };
  const bound = boundOf(model, answer.bound);
  const gap = Math.abs(objective - bound) / Math.max(1, Math.abs(objective));
  return { proof: gap === 0 ? 'optimal' : 'gap', objective, bound, gap, values };
}

/** A bound on whole objectives is the next whole number. */
function boundOf(model: Model, bound: number): number {
  if (!wholeObjective(model) || !Number.isFinite(bound)) return bound;
  return model.sense === 'min' ? Math.ceil(bound - 1e-6) : Math.floor(bound + 1e-6);
}
