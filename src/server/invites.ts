import { randomBytes } from 'node:crypto';
import { isIPv6 } from 'node:net';

/** Without 0 and O, 1 and I: nobody has to guess what was written. 32 of them, so that a byte gives each as often. */
const LETTERS = '23456789ABCDEFGHJKLMNPQRSTUVWXYZ';
const LENGTH = 10;
const LASTS_MS = 10 * 60_000;
const MINUTE_MS = 60_000;
const WRONG_A_MINUTE = 5;
const MOST_WAITING = 20;

export type Tried =
  | {
      readonly ok: true;
      /** the device that this very asker was let in as before; null where the code is fresh */
      readonly before: string | null;
      readonly giveBack: () => void;
      /** the code let this device in */
      readonly used: (device: string) => void;
    }
  | { readonly ok: false; readonly wait: number | null };

interface Used {
  readonly until: number;
  readonly by: string;
  readonly device: string;
}

/** Codes that let one device in, each once and for ten minutes; they are nowhere but in memory. */
export interface Invites {
  make(): { readonly code: string; readonly until: number };
  /**
   * `by`: id and name of the asker, who may ask again with them while the code lives, since an answer may get lost; null where
   * it has no id. `wait`: seconds, where too many wrong codes came from an address; null where the code is not known.
   */
  take(code: string, address: string, by: string | null): Tried;
}

export function openInvites(now: () => number): Invites {
  const waiting = new Map<string, number>();
  const wrong = new Map<string, number[]>();
  const past = new Map<string, Used>();
  return {
    make() {
      for (const [code, until] of waiting) if (until <= now() || waiting.size >= MOST_WAITING) waiting.delete(code);
      for (const [code, { until }] of past) if (until <= now()) past.delete(code);
      const code = Array.from(randomBytes(LENGTH), (byte) => LETTERS[byte % LETTERS.length]).join('');
      const until = now() + LASTS_MS;
      waiting.set(code, until);
      return { code, until };
    },
    take(typed, address, by) {
      const from = neighbourhood(address);
      forgetOld(wrong, now());
      const times = wrong.get(from) ?? [];
      const [first] = times;
      if (first !== undefined && times.length >= WRONG_A_MINUTE)
        return { ok: false, wait: Math.max(1, Math.ceil((first + MINUTE_MS - now()) / 1000)) };
      const code = typed.toUpperCase().replaceAll(/[\s-]/g, '');
      const before = past.get(code);
      if (before && before.by === by && before.until > now())
        return { ok: true, before: before.device, giveBack: () => undefined, used: () => undefined };
      const until = waiting.get(code);
      waiting.delete(code);
      if (until === undefined || until <= now()) {
        wrong.set(from, [...times, now()]);
        return { ok: false, wait: null };
      }
      const used = (device: string): void => void (by !== null && past.set(code, { until, by, device }));
      return { ok: true, before: null, giveBack: () => void waiting.set(code, until), used };
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
