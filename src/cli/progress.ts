import type { Terminal } from './terminal.ts';

const QUIET_MS = 1000;
const STEP_MS = 250;

/** Runs `work` with a line of progress once it takes over a second, and a last line that says how long it took. */
export async function withProgress<T>(terminal: Terminal, what: string, work: () => Promise<T>): Promise<T> {
  const began = performance.now();
  const seconds = (): string => ((performance.now() - began) / 1000).toFixed(1);
  const ticking = setInterval(() => {
    if (performance.now() - began >= QUIET_MS) terminal.status(`${what} … ${seconds()} s`);
  }, STEP_MS);
  try {
    return await work();
  } finally {
    clearInterval(ticking);
    terminal.status(null);
    if (performance.now() - began >= QUIET_MS) terminal.say(`${what}: ${seconds()} s`);
  }
}
