import type { Model } from '#core/kit/model.ts';
import type { RawAnswer } from './highs-run.ts';
import { JobLine } from './job-line.ts';
import type { Limits } from './limits.ts';
import type { Job } from './worker.ts';

const thread = new JobLine<Job, RawAnswer>(new URL('./worker.ts', import.meta.url));

/** Runs a model in the solver's thread of this process, which is started at first use; models wait for each other. */
export function runInThread(model: Model, { signal, ...limits }: Limits): Promise<RawAnswer> {
  return thread.run({ model, ...limits }, signal ? { signal } : {});
}
