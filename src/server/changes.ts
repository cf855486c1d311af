import type { Context } from 'hono';
import { streamSSE } from 'hono/streaming';
import type { Lab } from '#db/database.ts';

const HEARTBEAT_MS = 15_000;

interface Listener {
  readonly stopping: AbortSignal;
  /** whether who listens may still be told: a device that was forgotten hears nothing more */
  readonly allowed: () => Promise<boolean>;
}

/** Streams change numbers as server-sent events: each number that a page has not seen yet, then each new one. */
export function streamChanges(c: Context, lab: Lab, { stopping, allowed }: Listener): Response {
  const last = c.req.header('last-event-id') ?? c.req.query('since') ?? '';
  const told = /^\d{1,15}$/.test(last) ? Number(last) : Number.NaN;
  return streamSSE(c, async (stream) => {
    let sent = Number.isInteger(told) ? told : -1;
    let newest: number | null = null;
    let wake = (): void => undefined;
    const stop = (): void => wake();
    const unwatch = lab.watch((change) => {
      newest = change;
      wake();
    });
    stream.onAbort(stop);
    stopping.addEventListener('abort', stop, { once: true });
    try {
      while (!stream.aborted && !stopping.aborted) {
        const woken = sleep(HEARTBEAT_MS, (now) => (wake = now));
        const change: number | null = newest; // told meanwhile, or in the sleep
        if (change !== null && change !== sent) {
          if (!(await allowed())) break;
          await stream.writeSSE({ event: 'change', id: String(change), data: JSON.stringify({ change }) });
          sent = change;
        }
        if ((await woken) === 'time') {
          if (!(await allowed())) break;
          await stream.write(': still here\n\n');
        }
      }
    } finally {
      unwatch();
      stopping.removeEventListener('abort', stop);
    }
  });
}

/** Resolves when woken or after a time; the timer keeps no process alive. */
function sleep(most: number, give: (wake: () => void) => void): Promise<'woken' | 'time'> {
  return new Promise((done) => {
    const timer = setTimeout(() => done('time'), most);
    timer.unref();
    give(() => {
      clearTimeout(timer);
      done('woken');
    });
  });
}
