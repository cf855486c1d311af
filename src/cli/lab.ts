import { hostname, userInfo } from 'node:os';
import type { Clock, Who } from '#actions/action.ts';
import { openDatabase, type Lab } from '#db/database.ts';
import { homeFolder } from '#db/home.ts';

export const clock: Clock = { now: () => new Date().toISOString() };

/** Who works at this terminal: the account's name, unless BAGATELLE_WHO says another. */
export function who(): Who {
  const name = process.env['BAGATELLE_WHO'] ?? accountName();
  return { name, device: hostname() };
}

function accountName(): string {
  try {
    return userInfo().username;
  } catch {
    return 'unknown'; // an account without an entry, as in some containers
  }
}

/** Opens the lab that the surroundings name, works with it, and closes it whatever happens. */
export async function withLab<T>(work: (lab: Lab) => Promise<T>): Promise<T> {
  const url = process.env['DATABASE_URL'];
  const lab = await openDatabase(url ? { url } : { home: homeFolder() });
  try {
    return await work(lab);
  } finally {
    await lab.close();
  }
}
