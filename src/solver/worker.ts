import { parentPort } from 'node:worker_threads';
import type { Highs } from 'highs';
import * as loaded from 'highs';
import type { Model } from '#core/kit/model.ts';
import { runHighs, type RawAnswer } from './highs-run.ts';

export interface Job {
  readonly id: number;
  readonly model: Model;
  readonly nodes: number;
  readonly seconds: number;
  readonly start?: readonly number[];
}

export type Reply = { readonly id: number; readonly answer: RawAnswer } | { readonly id: number; readonly fault: string };

// as: under nodenext the package's default import is typed one level too high
const load = loaded.default as unknown as () => Promise<Highs>;
const highs = await load();

parentPort?.on('message', ({ id, model, ...limits }: Job) => {
  const reply = (answer: Reply): void => parentPort?.postMessage(answer, []);
  try {
    reply({ id, answer: runHighs(highs, model, limits) });
  } catch (error) {
    reply({ id, fault: String(error) });
  }
});
