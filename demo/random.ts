import { createHash } from 'node:crypto';

/** Chance that can be repeated, asked for by name: what one name gives does not depend on what was asked before it. */
export interface Chance {
  /** whole number from low to high, both included */
  whole(name: string, low: number, high: number): number;
  pick<T>(name: string, from: readonly T[]): T;
  /** an id in the form of a UUID (version 8: made by a rule of our own, RFC 9562 section 5.8) */
  uuid(name: string): string;
}

/** The same seed and name give the same answer on every machine; another seed gives another lab. */
export function chance(seed: number): Chance {
  const hash = (name: string): Buffer => createHash('sha256').update(`${seed} ${name}`).digest();
  const whole = (name: string, low: number, high: number): number => low + (hash(name).readUIntBE(0, 6) % (high - low + 1));
  return {
    whole,
    pick(name, from) {
      const one = from[whole(name, 0, from.length - 1)];
      if (one === undefined) throw new Error(`nothing to pick from for ${name}`);
      return one;
    },
    uuid(name) {
      const hex = hash(name).toString('hex');
      const variant = ((Number.parseInt(hex.slice(16, 17), 16) & 3) | 8).toString(16);
      return `${hex.slice(0, 8)}-${hex.slice(8, 12)}-8${hex.slice(13, 16)}-${variant}${hex.slice(17, 20)}-${hex.slice(20, 32)}`;
    },
  };
}
