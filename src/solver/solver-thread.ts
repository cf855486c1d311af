import { Worker } from 'node:worker_threads';
import type { Model } from '#core/kit/model.ts';
import type { RawAnswer } from './highs-run.ts';
import type { Limits } from './limits.ts';
import type { Job, Reply } from './worker.ts';

interface Waiting {
  readonly done: (answer: RawAnswer) => void;
  readonly failed: (error: Error) => void;
}

/** One thread with one HiGHS in it: the event loop stays free, and a thread that failed or was given up is thrown away. */
class SolverThread {
  readonly #worker = new Worker(new URL('./worker.ts', import.meta.url));
  readonly #waiting = new Map<number, Waiting>();
  #last = 0;
  dead = false;

  constructor() {
    this.#worker.unref();
    this.#worker.on('message', (reply: Reply) => this.#take(reply));
    this.#worker.on('error', (error) => this.end(error instanceof Error ? error : new Error(String(error))));
    this.#worker.on('exit', () => this.end(new Error('the solver thread ended')));
  }

  run(model: Model, limits: Limits): Promise<RawAnswer> {
    const id = (this.#last += 1);
    return new Promise((done, failed) => {
      this.#waiting.set(id, { done, failed });
      this.#worker.ref();
      const { signal: _signal, ...told } = limits;
      this.#worker.postMessage({ id, model, ...told } satisfies Job, []);
    });
  }

  /** Ends the thread, also in the middle of a solve. */
  end(why: Error): void {
    if (this.dead) return;
    this.dead = true;
    for (const { failed } of this.#waiting.values()) failed(why);
    this.#waiting.clear();
    void this.#worker.terminate();
  }

  #take(reply: Reply): void {
    const waiting = this.#waiting.get(reply.id);
    this.#waiting.delete(reply.id);
    if (this.#waiting.size === 0) this.#worker.unref();
    if ('answer' in reply) waiting?.done(reply.answer);
    else {
      waiting?.failed(new Error(reply.fault));
      this.end(new Error(reply.fault));
    }
  }
}

let current: SolverThread | null = null;

/** Runs a model in the thread of this process; the thread is started at first use. */
export async function runInThread(model: Model, limits: Limits): Promise<RawAnswer> {
  limits.signal?.throwIfAborted();
  const thread = current && !current.dead ? current : (current = new SolverThread());
  const stop = (): void => thread.end(new Error('given up'));
  limits.signal?.addEventListener('abort', stop, { once: true });
  try {
    return await thread.run(model, limits);
  } finally {
    limits.signal?.removeEventListener('abort', stop);
  }
}
