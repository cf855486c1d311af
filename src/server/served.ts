import type { Context } from 'hono';
import type { Clock, Who } from '#actions/action.ts';
import type { FollowedStock } from '#actions/follow-stock.ts';
import type { Lab } from '#db/database.ts';
import type { Device } from '#db/devices.ts';
import type { Invites } from './invites.ts';
import type { Network } from './network.ts';

/** What every route works with. */
export interface Served {
  readonly lab: Lab;
  readonly stock: FollowedStock;
  readonly clock: Clock;
  /** aborts when the server is told to stop, so that streams end */
  readonly stopping: AbortSignal;
  /** what the lab was opened to; null where it answers this machine alone */
  readonly network: Network | null;
  readonly invites: Invites;
}

/** Who asks: somebody at the machine that serves the lab, a paired device, or neither (who may load the page and pair). */
export interface Caller {
  readonly here: boolean;
  readonly device: Device | null;
  /** of the other end of the socket */
  readonly address: string;
}

declare module 'hono' {
  interface ContextVariableMap {
    /** set by the guard before any route */
    caller: Caller;
  }
}

/** Header that carries the number of the last change an answer knows of. */
export const CHANGE_HEADER = 'bagatelle-change';
/** Header by which a read asks for an answer that knows at least this change. */
export const AT_LEAST_HEADER = 'bagatelle-at-least';

/** Header that says which lab gave an answer, and by which an act says what lab it is meant for. */
export const LAB_HEADER = 'bagatelle-lab';

const MOST_NAME = 100;

export function callerOf(c: Context): Caller {
  return c.get('caller');
}

/** Who acts: a device by the name that it was paired under, whatever it says; at this machine the name that the page sends. */
export function whoOf(c: Context): Who {
  const { device } = callerOf(c);
  if (device) return { name: device.name, device: device.id };
  const name = plainText(c.req.header('bagatelle-who') ?? '')
    .slice(0, MOST_NAME)
    .trim();
  return { name: name || 'somebody', device: c.req.header('bagatelle-device')?.slice(0, MOST_NAME) ?? null };
}

/** Pages send names in percent signs, since a header is ASCII; programs may send them as they are. */
function plainText(name: string): string {
  try {
    return decodeURIComponent(name).replaceAll(/\p{Cc}+/gu, ' ');
  } catch {
    return name;
  }
}
