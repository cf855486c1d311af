import { useEffect, useState } from 'react';
import type { FoundBag } from '#api/bags.ts';

export type Asked<T> =
  | { readonly state: 'waiting' }
  | { readonly state: 'told'; readonly value: T }
  | { readonly state: 'failed'; readonly why: string };

/** An answer that knows at least the change. */
async function get<T>(address: string, change: number, signal: AbortSignal): Promise<T> {
  const answer = await fetch(address, { signal, headers: { 'bagatelle-at-least': String(Math.max(0, change)) } });
  const body: unknown = await answer.json();
  if (!answer.ok) throw new Error(titleOf(body) ?? `the lab answered ${answer.status}`);
  return body as T; // as: the shape is the API's contract, in src/api
}

function titleOf(body: unknown): string | null {
  if (typeof body !== 'object' || body === null) return null;
  const told = 'detail' in body ? body.detail : 'title' in body ? body.title : null;
  return typeof told === 'string' ? told : null;
}

/** The lab's change number as the server tells it; the browser reconnects by itself and loses none. */
export function useChange(): number {
  const [change, setChange] = useState(-1);
  useEffect(() => {
    const changes = new EventSource('/api/changes');
    changes.addEventListener('change', (event: MessageEvent<string>) => setChange(Number(event.lastEventId)));
    return () => changes.close();
  }, []);
  return change;
}

/** Asks an address again after each change; what came last stays on the page until the next answer. `null` asks nothing. */
function useAnswer<T>(address: string | null, wait: number, change: number): Asked<T> {
  const [asked, setAsked] = useState<Asked<T>>({ state: 'waiting' });
  useEffect(() => {
    if (address === null) return undefined;
    const stop = new AbortController();
    const timer = setTimeout(() => {
      get<T>(address, change, stop.signal)
        .then((value) => setAsked({ state: 'told', value }))
        .catch((error: unknown) => {
          if (!stop.signal.aborted) setAsked({ state: 'failed', why: error instanceof Error ? error.message : String(error) });
        });
    }, wait);
    return () => {
      clearTimeout(timer);
      stop.abort();
    };
  }, [address, wait, change]);
  return asked;
}

const TYPING_MS = 60;

export function useFound(words: string, change: number): Asked<{ readonly found: readonly FoundBag[] }> {
  return useAnswer(words.trim() ? `/api/find?words=${encodeURIComponent(words)}&limit=60` : null, TYPING_MS, change);
}

export function useBags(
  change: number,
): Asked<{ readonly bags: readonly { readonly box: string | null; readonly onHand: number }[] }> {
  return useAnswer('/api/bags', 0, change);
}
