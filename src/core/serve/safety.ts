import type { Part } from '#core/part/part.ts';
import { RULES } from './rules.data.ts';

/** A part that protects people: it states a safety class, or is of a kind that is never swapped by rule (a fuse, a cell). */
export function guardsPeople({ kind, facts }: Part): boolean {
  return facts.safety !== undefined || RULES[kind].unnamed === 'safety';
}

/** A capacitor of a class for the mains (X2, Y1): it does an ordinary one's work, but is not to be spent on it. */
export function isForMains({ kind, facts }: Part): boolean {
  return kind === 'capacitor' && facts.safety !== undefined;
}
