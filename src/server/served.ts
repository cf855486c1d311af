import type { Clock, Who } from '#actions/action.ts';
import type { Lab } from '#db/database.ts';
import type { FollowedStock } from '#actions/follow-stock.ts';
import type { Context } from 'hono';

/** What every route works with. */
export interface Served {
  readonly lab: Lab;
  readonly stock: FollowedStock;
  readonly clock: Clock;
  /** aborts when the server is told to stop, so that streams end */
  readonly stopping: AbortSignal;
}

/** Header that carries the number of the last change an answer knows of. */
export const CHANGE_HEADER = 'bagatelle-change';
/** Header by which a read asks for an answer that knows at least this change. */
export const AT_LEAST_HEADER = 'bagatelle-at-least';

const MOST_NAME = 100;

/** Who acts: a name that the page sends, until there is sign-in. */
export function whoOf(c: Context): Who {
  const name = c.req.header('bagatelle-who')?.slice(0, MOST_NAME).trim();
  return { name: name || 'somebody', device: c.req.header('bagatelle-device')?.slice(0, MOST_NAME) ?? null };
}
