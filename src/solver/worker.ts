import { parentPort } from 'node:worker_threads';
import type { Highs } from 'highs';
import * as loaded from 'highs';
import type { Model } from '#core/kit/model.ts';
import { runHighs, type RawAnswer } from './highs-run.ts';
import type { Reply } from './job-line.ts';

export interface Job {
  readonly model: Model;
  readonly nodes: number;
  readonly seconds: number;
  readonly start?: readonly number[];
}

// as: under nodenext the package's default import is typed one level too high
const load = loaded.default as unknown as () => Promise<Highs>;
const highs = await load();

parentPort?.on('message', ({ model, ...limits }: Job) => {
  const reply = (answer: Reply<RawAnswer>): void => parentPort?.postMessage(answer, []);
  try {
    reply({ answer: runHighs(highs, model, limits) });
  } catch (error) {
    reply({ fault: String(error) });
  }
});
