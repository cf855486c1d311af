import { useSyncExternalStore } from 'react';

/** What the page knows of the lab's changes, and whether the lab can be heard. */
export interface Heard {
  /** number of the last change that this page knows; −1 before the first word */
  readonly change: number;
  readonly connected: boolean;
}

/** A page in the background listens to nothing: a browser has few connections for all its pages together. */
const QUIET_MS = 5000;

/** Follows the lab's changes by server-sent events; one for the page. */
class Changes {
  #heard: Heard = { change: -1, connected: true };
  #told = new Set<() => void>();
  #source: EventSource | null = null;
  #quiet: ReturnType<typeof setTimeout> | null = null;

  known(): number {
    return this.#heard.change;
  }

  /** An act of this page: what is asked from now on must know it. */
  note(change: number): void {
    if (Number.isSafeInteger(change) && change > this.#heard.change) this.#set({ ...this.#heard, change });
  }

  /** Another lab stands where this one stood: begin anew. */
  reset(): void {
    this.#set({ ...this.#heard, change: -1 });
  }

  follow(): void {
    this.#open();
    document.addEventListener('visibilitychange', () => {
      if (this.#quiet) clearTimeout(this.#quiet);
      if (document.hidden) this.#quiet = setTimeout(() => this.#close(), QUIET_MS);
      else this.#open();
    });
  }

  /** Listens anew: this device was let in just now. */
  again(): void {
    this.#close();
    this.#open();
  }

  subscribe = (listener: () => void): (() => void) => {
    this.#told.add(listener);
    return () => this.#told.delete(listener);
  };

  snapshot = (): Heard => this.#heard;

  /** The lab could not be reached, or could be again: whoever sees it says so. */
  connected(connected: boolean): void {
    if (connected !== this.#heard.connected) this.#set({ ...this.#heard, connected });
  }

  #open(): void {
    if (this.#source && this.#source.readyState !== EventSource.CLOSED) return;
    const source = new EventSource('/api/changes');
    source.addEventListener('open', () => this.connected(true));
    source.addEventListener('change', (event: MessageEvent<string>) => this.note(Number(event.lastEventId)));
    source.addEventListener('error', () => {
      // closed: the lab answered, but not to this device, and the browser gave up; the page does not
      if (source.readyState === EventSource.CLOSED) setTimeout(() => !document.hidden && this.#open(), QUIET_MS);
      else this.connected(false);
    });
    this.#source = source;
  }

  #close(): void {
    this.#source?.close();
    this.#source = null;
  }

  #set(heard: Heard): void {
    this.#heard = heard;
    for (const told of this.#told) told();
  }
}

export const changes = new Changes();

export function useHeard(): Heard {
  return useSyncExternalStore(changes.subscribe, changes.snapshot);
}
