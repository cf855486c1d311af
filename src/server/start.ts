import { join } from 'node:path';
import type { Clock } from '#actions/action.ts';
import { findBags } from '#actions/find-bags.ts';
import { followStock, type FollowedStock } from '#actions/follow-stock.ts';
import type { Invite } from '#api/devices.ts';
import type { Lab } from '#db/database.ts';
import { createApp } from './app.ts';
import { makeInvite } from './invite.ts';
import { openInvites } from './invites.ts';
import { openNetwork } from './network.ts';
import { listen, type ListenFault, type Listening, type Where } from './serve.ts';

const WARMING = ['4', '4k7 0805', '100n 50V', 'red'];
const PAGES = join(import.meta.dirname, '..', '..', 'dist', 'web');

export interface LabServed extends Listening {
  /** an invitation for one device; null where the lab answers this machine alone, or this machine is in no network */
  readonly invite: () => Promise<Invite | null>;
}

/** The first question reads the whole stock and runs code that never ran: nobody at a field should wait for that. */
async function warmUp(stock: FollowedStock): Promise<void> {
  const { index } = await stock.current();
  for (const words of WARMING) findBags(index, words, 50);
}

/** Serves a lab until it is stopped; the lab stays the caller's to close. */
export async function serveLab(lab: Lab, clock: Clock, where: Where): Promise<LabServed | ListenFault> {
  const stopping = new AbortController();
  let { port } = where;
  const network = where.lan ? openNetwork(() => port) : null;
  const invites = openInvites(() => Date.parse(clock.now()));
  const served = { lab, clock, stock: followStock(lab), stopping: stopping.signal, network, invites };
  const app = createApp(served, PAGES);
  await warmUp(served.stock);
  const listening = await listen((request, env) => app.fetch(request, env), where);
  if ('fault' in listening) return listening;
  ({ port } = listening);
  return {
    ...listening,
    invite: () => makeInvite(served),
    stop() {
      stopping.abort();
      return listening.stop();
    },
  };
}
