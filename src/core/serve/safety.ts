import { wordFact, type Kind, type Part } from '#core/part/part.ts';
import { NEVER_SWAPPED_WORDS } from './never-swapped.data.ts';
import { RULES } from './rules.data.ts';

/** A part that protects people: it states a safety class, or is of a kind that is never swapped by rule (a fuse, a cell). */
export function guardsPeople({ kind, facts }: Part): boolean {
  return facts.safety !== undefined || RULES[kind].unnamed === 'safety';
}

/** A capacitor of a class for the mains (X2, Y1): it does an ordinary one's work, but is not to be spent on it. */
export function isForMains({ kind, facts }: Part): boolean {
  return kind === 'capacitor' && facts.safety !== undefined;
}

/** Kinds whose rating for alternating voltage is one for the mains: what they switch, carry and insulate. */
const AT_MAINS: ReadonlySet<Kind> = new Set(['switch', 'relay', 'connector', 'wire', 'module', 'other']);

/**
 * Is it exact, or else for a person, because it protects, insulates, switches the mains, or differs in what no fact holds? By its kind,
 * its safety class, the kind of its voltage, or a word of the trade that says so. `asLine`: what a line says more than a plain one.
 */
export function isNeverSwapped(part: Part, asLine: boolean): boolean {
  if (guardsPeople(part) || part.kind === 'tvs') return true;
  const current = wordFact(part, 'voltage-kind');
  if (current === 'mains' || (current === 'ac' && AT_MAINS.has(part.kind))) return true;
  return NEVER_SWAPPED_WORDS.some(
    ({ words, kinds, ofLine }) => (asLine || !ofLine) && (kinds === null || kinds.includes(part.kind)) && words.test(part.text),
  );
}

/** Holds it a program, which no number of its type tells? */
export function isProgrammed(part: Part): boolean {
  return PROGRAMMED.test(part.text);
}

const PROGRAMMED =
  /\bpre-?programm(?:ed|iert)|\bprogrammed\b|\bprogrammiert|\bprogramm[ée]\b|\bprogrammato|\bprogramado|\bfirmware\b|\bbootloader\b/iu;
