import { createHash, randomBytes, randomUUID } from 'node:crypto';
import type { Refusal } from '#core/stock/refusal.ts';
import { takeChange } from '#db/change.ts';
import type { Lab } from '#db/database.ts';
import { markForgotten, markSeen, readDevices, writeDevice, writeToken, type Device } from '#db/devices.ts';
import { Refused } from '#db/refused.ts';
import type { Clock } from './action.ts';
import { nameTrouble } from './checks.ts';

const TOKEN_BYTES = 32;

export interface PairedDevice {
  readonly id: string;
  readonly name: string;
  /** known to the device alone: it is told once */
  readonly token: string;
}

/** What is kept of a token. It is 256 bits of chance, so that one plain hash is enough. */
export function tokenHash(token: string): string {
  return createHash('sha256').update(token).digest('hex');
}

/** What is wrong with the name of a device, before its code is used up. */
export function deviceNameTrouble(name: string): Refusal | null {
  return nameTrouble('name', name);
}

/** Lets a device in under a name; null where another has that name, in whatever letters. */
export async function pairDevice(lab: Lab, clock: Clock, name: string): Promise<PairedDevice | null> {
  const token = newToken();
  const device = { id: randomUUID(), name: name.normalize('NFC') };
  return lab.transact(async (tx) => {
    const taken = (await readDevices(tx)).some((other) => plain(other.name) === plain(device.name));
    if (taken) return null;
    await writeDevice(tx, { ...device, paired: clock.now(), tokenHash: tokenHash(token) });
    await takeChange(tx);
    return { ...device, token };
  });
}

/** A new token for a device that did not hear its first one, which opens nothing any more; null where it was forgotten. */
export async function pairAgain(lab: Lab, id: string): Promise<PairedDevice | null> {
  const token = newToken();
  const device = await lab.transact((tx) => writeToken(tx, id, tokenHash(token)));
  return device && { id: device.id, name: device.name, token };
}

function newToken(): string {
  return randomBytes(TOKEN_BYTES).toString('base64url');
}

function plain(name: string): string {
  return name.normalize('NFKC').toLowerCase().replaceAll(/\s+/g, ' ');
}

/** Its token opens nothing any more; false where there is no such device. */
export async function forgetDevice(lab: Lab, id: string): Promise<boolean> {
  return lab.transact(async (tx) => {
    const forgotten = await markForgotten(tx, id);
    if (forgotten) await takeChange(tx);
    return forgotten;
  });
}

/** Not worth a refusal of what the device asks: the next time is near. */
const LEFT_OUT: ReadonlySet<string> = new Set(['busy', 'disk-read-only', 'disk-full']);
const SEEN_EVERY_MS = 60_000;

/** Notes that a device was here, once a minute at most; it takes no change number, since nobody has to follow it. */
export async function noteSeen(lab: Lab, clock: Clock, { id, seen }: Device): Promise<void> {
  const now = clock.now();
  if (seen !== null && Math.abs(Date.parse(now) - Date.parse(seen)) < SEEN_EVERY_MS) return;
  try {
    await lab.transact((tx) => markSeen(tx, id, now));
  } catch (error) {
    if (!(error instanceof Refused && LEFT_OUT.has(error.refusal.code))) throw error;
  }
}
