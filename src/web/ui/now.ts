import { useSyncExternalStore } from 'react';

const STEP_MS = 30_000;
let now = new Date();

function follow(listener: () => void): () => void {
  const timer = setInterval(() => {
    now = new Date();
    listener();
  }, STEP_MS);
  return () => clearInterval(timer);
}

/** The time of day, to half a minute: what is said as "today" becomes "yesterday" on an open page too. */
export function useNow(): Date {
  return useSyncExternalStore(follow, () => now);
}
