import { Worker } from 'node:worker_threads';

/** What a thread answers to a job. */
export type Reply<Answer> = { readonly answer: Answer } | { readonly fault: string };

interface Waiting<Job, Answer> {
  readonly job: Job;
  readonly seconds: number | null;
  readonly done: (answer: Answer) => void;
  readonly failed: (why: unknown) => void;
}

/**
 * A thread that does one job after another and leaves the event loop free. A job that fails, takes too long or is given up takes
 * the thread with it, also in the middle of its work; the jobs that wait go on in a new one.
 */
export class JobLine<Job, Answer> {
  readonly #file: URL;
  #worker: Worker | null = null;
  #running: Waiting<Job, Answer> | null = null;
  #waiting: Waiting<Job, Answer>[] = [];
  #clock: NodeJS.Timeout | null = null;

  /** `file`: a module that answers each message with a `Reply`. */
  constructor(file: URL) {
    this.#file = file;
  }

  /** `seconds`: of the work itself, without the wait; over them it fails with `TookTooLong`. */
  async run(job: Job, limits: { readonly signal?: AbortSignal; readonly seconds?: number } = {}): Promise<Answer> {
    const { signal, seconds = null } = limits;
    signal?.throwIfAborted();
    let stop = (): void => undefined;
    try {
      return await new Promise<Answer>((done, failed) => {
        const mine = { job, seconds, done, failed };
        stop = () => this.#giveUp(mine, signal?.reason);
        signal?.addEventListener('abort', stop, { once: true });
        this.#waiting.push(mine);
        this.#next();
      });
    } finally {
      signal?.removeEventListener('abort', stop);
    }
  }

  #next(): void {
    if (this.#running) return;
    this.#running = this.#waiting.shift() ?? null;
    if (!this.#running) return this.#worker?.unref();
    const { job, seconds } = this.#running;
    this.#worker ??= this.#start();
    this.#worker.ref();
    this.#worker.postMessage(job, []);
    if (seconds !== null) this.#clock = setTimeout(() => this.#fail(new TookTooLong(seconds)), seconds * 1000);
  }

  #start(): Worker {
    const worker = new Worker(this.#file);
    const ended = (why: unknown): void => {
      if (worker === this.#worker) this.#fail(why);
    };
    worker.on('message', (reply: Reply<Answer>) => {
      if (worker === this.#worker) this.#take(reply);
    });
    worker.on('error', ended);
    worker.on('exit', () => ended(new Error(`the thread of ${this.#file.pathname} ended`)));
    return worker;
  }

  #take(reply: Reply<Answer>): void {
    if ('fault' in reply) return this.#fail(new Error(reply.fault));
    const ended = this.#settled();
    ended?.done(reply.answer);
    this.#next();
  }

  /** Ends the thread, and with it the job that it works on. */
  #fail(why: unknown): void {
    const [ended, worker] = [this.#settled(), this.#worker];
    this.#worker = null;
    void worker?.terminate();
    ended?.failed(why);
    this.#next();
  }

  #giveUp(mine: Waiting<Job, Answer>, why: unknown): void {
    if (mine === this.#running) return this.#fail(why);
    this.#waiting = this.#waiting.filter((one) => one !== mine);
    mine.failed(why);
  }

  #settled(): Waiting<Job, Answer> | null {
    if (this.#clock) clearTimeout(this.#clock);
    this.#clock = null;
    const ended = this.#running;
    this.#running = null;
    return ended;
  }
}

/** A job was given up because it took longer than it may. */
export class TookTooLong extends Error {
  readonly seconds: number;

  constructor(seconds: number) {
    super(`given up after ${seconds} s`);
    this.seconds = seconds;
  }
}
