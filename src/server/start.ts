import { join } from 'node:path';
import type { Clock } from '#actions/action.ts';
import { followStock } from '#actions/follow-stock.ts';
import type { Lab } from '#db/database.ts';
import { createApp } from './app.ts';
import { listen, type ListenFault, type Listening } from './serve.ts';

const PAGES = join(import.meta.dirname, '..', '..', 'dist', 'web');
const LOOPBACK = /^(?:127\.\d+\.\d+\.\d+|::1|localhost)$/;

export interface ServeOptions {
  readonly host: string;
  readonly port: number;
}

export function isLoopback(host: string): boolean {
  return LOOPBACK.test(host);
}

/** Serves a lab until it is stopped; the lab stays the caller's to close. */
export async function serveLab(lab: Lab, clock: Clock, where: ServeOptions): Promise<Listening | ListenFault> {
  const stopping = new AbortController();
  const served = { lab, clock, stock: followStock(lab), stopping: stopping.signal };
  const app = createApp(served, { pagesFolder: PAGES, alsoKnownAs: isLoopback(where.host) ? [] : [where.host] });
  const listening = await listen((request) => app.fetch(request), where);
  if ('fault' in listening) return listening;
  return {
    ...listening,
    stop() {
      stopping.abort();
      return listening.stop();
    },
  };
}
