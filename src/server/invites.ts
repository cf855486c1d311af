import { randomBytes } from 'node:crypto';
import { isIPv6 } from 'node:net';

/** Without 0 and O, 1 and I: nobody has to guess what was written. 32 of them, so that a byte gives each as often. */
const LETTERS = '23456789ABCDEFGHJKLMNPQRSTUVWXYZ';
const LENGTH = 10;
const LASTS_MS = 10 * 60_000;
const MINUTE_MS = 60_000;
const WRONG_A_MINUTE = 5;
const MOST_WAITING = 20;

export type Tried = { readonly ok: true; readonly giveBack: () => void } | { readonly ok: false; readonly wait: number | null };

/** Codes that let one device in, each once and for ten minutes; they are nowhere but in memory. */
export interface Invites {
  make(): { readonly code: string; readonly until: number };
  /** `wait`: seconds, where too many wrong codes came from an address; null where the code is not known */
  take(code: string, address: string): Tried;
}

export function openInvites(now: () => number): Invites {
  const waiting = new Map<string, number>();
  const wrong = new Map<string, number[]>();
  return {
    make() {
      for (const [code, until] of waiting) if (until <= now() || waiting.size >= MOST_WAITING) waiting.delete(code);
      const code = Array.from(randomBytes(LENGTH), (byte) => LETTERS[byte % LETTERS.length]).join('');
      const until = now() + LASTS_MS;
      waiting.set(code, until);
      return { code, until };
    },
    take(typed, address) {
      const from = neighbourhood(address);
      forgetOld(wrong, now());
      const times = wrong.get(from) ?? [];
      const [first] = times;
      if (first !== undefined && times.length >= WRONG_A_MINUTE)
        return { ok: false, wait: Math.max(1, Math.ceil((first + MINUTE_MS - now()) / 1000)) };
      const code = typed.toUpperCase().replaceAll(/[\s-]/g, '');
      const until = waiting.get(code);
      waiting.delete(code);
      if (until === undefined || until <= now()) {
        wrong.set(from, [...times, now()]);
        return { ok: false, wait: null };
      }
      return { ok: true, giveBack: () => void waiting.set(code, until) };
    },
  };
}

/** Who has one IPv6 address has the 2^64 beside it. */
function neighbourhood(address: string): string {
  if (!isIPv6(address) || address.startsWith('::ffff:')) return address;
  const [head = '', tail] = address.split('::');
  const [before, after] = [head.split(':').filter(Boolean), tail?.split(':').filter(Boolean) ?? []];
  const zeros = Array.from({ length: Math.max(0, 8 - before.length - after.length) }, () => '0');
  return [...before, ...zeros, ...after].slice(0, 4).join(':');
}

function forgetOld(wrong: Map<string, number[]>, now: number): void {
  for (const [from, times] of wrong) {
    const left = times.filter((time) => now - time < MINUTE_MS);
    if (left.length === 0) wrong.delete(from);
    else wrong.set(from, left);
  }
}
