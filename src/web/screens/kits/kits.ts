import type { BuildView } from '#api/kits.ts';
import type { Fits } from '../../ui/fit.tsx';

export type KitGroup = 'open' | 'leftovers' | 'soldered' | 'closed';

const GROUP: Readonly<Record<BuildView['state'], KitGroup>> = {
  planned: 'open',
  reserved: 'open',
  picking: 'open',
  built: 'soldered',
  cancelled: 'closed',
  undone: 'closed',
};

/** How far a kit is, as the shape of a fit. */
export const STATE_FIT: Readonly<Record<BuildView['state'], Fits>> = {
  planned: 'none',
  reserved: 'serves',
  picking: 'serves',
  built: 'exact',
  cancelled: 'none',
  undone: 'none',
};

/** A soldered kit whose leftovers nobody took back yet; what was spoiled never comes back, so one return is enough. */
export const hasLeftovers = ({ state, left, returned }: BuildView): boolean => state === 'built' && left > 0 && returned === 0;

const groupOf = (build: BuildView): KitGroup => (hasLeftovers(build) ? 'leftovers' : GROUP[build.state]);

/** Kits by what they wait for; the lab gives the open ones by urgency and the others newest first. */
export function kitGroups(builds: readonly BuildView[]): { readonly group: KitGroup; readonly builds: readonly BuildView[] }[] {
  return (['open', 'leftovers', 'soldered', 'closed'] as const)
    .map((group) => ({ group, builds: builds.filter((build) => groupOf(build) === group) }))
    .filter((one) => one.builds.length > 0);
}

/** The kit that stands so many rows from the chosen one in the list; the first is chosen until another is. */
export function kitBeside(kits: readonly BuildView[], chosen: string | null, by: -1 | 0 | 1): BuildView | null {
  const at = Math.max(
    0,
    kits.findIndex(({ id }) => id === chosen),
  );
  return kits[Math.min(kits.length - 1, Math.max(0, at + by))] ?? null;
}

/** The kit that a person goes on with: one that is being picked, else the first that has its bags. */
export function kitToCarryOn(builds: readonly BuildView[]): BuildView | null {
  return builds.find(({ state }) => state === 'picking') ?? builds.find(({ state }) => state === 'reserved') ?? null;
}
