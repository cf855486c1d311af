import type { Tx } from './engine.ts';

/** A device that may reach the lab over the network. */
export interface Device {
  readonly id: string;
  readonly name: string;
  readonly paired: string;
  readonly seen: string | null;
}

export interface NewDevice extends Omit<Device, 'seen'> {
  /** SHA-256 of the token; the token itself is kept nowhere */
  readonly tokenHash: string;
}

const devices = (tx: Tx) =>
  tx.selectFrom('device').select(['id', 'name', 'paired_at as paired', 'seen_at as seen']).where('forgotten', '=', 0);

/** Those that are paired now, in the order in which they were. */
export async function readDevices(tx: Tx): Promise<Device[]> {
  return devices(tx).orderBy('paired_at').orderBy('id').execute();
}

/** The device that holds a token, by the token's hash; null where there is none, or it was forgotten. */
export async function readDeviceOf(tx: Tx, tokenHash: string): Promise<Device | null> {
  return (await devices(tx).where('token_hash', '=', tokenHash).executeTakeFirst()) ?? null;
}

export async function isPaired(tx: Tx, id: string): Promise<boolean> {
  return (await devices(tx).where('id', '=', id).executeTakeFirst()) !== undefined;
}

export async function writeDevice(tx: Tx, { id, name, paired, tokenHash }: NewDevice): Promise<void> {
  await tx
    .insertInto('device')
    .values({ id, name, token_hash: tokenHash, paired_at: paired, seen_at: null, forgotten: 0 })
    .execute();
}

/** Puts another token in place of the one that a device had; null where there is no such device, or it was forgotten. */
export async function writeToken(tx: Tx, id: string, tokenHash: string): Promise<Device | null> {
  await tx.updateTable('device').set({ token_hash: tokenHash }).where('id', '=', id).where('forgotten', '=', 0).execute();
  return (await devices(tx).where('id', '=', id).executeTakeFirst()) ?? null;
}

/** False where there is no such device. Its row stays, since the ledger names it. */
export async function markForgotten(tx: Tx, id: string): Promise<boolean> {
  const { numUpdatedRows } = await tx
    .updateTable('device')
    .set({ forgotten: 1 })
    .where('id', '=', id)
    .where('forgotten', '=', 0)
    .executeTakeFirst();
  return numUpdatedRows > 0n;
}

export async function markSeen(tx: Tx, id: string, at: string): Promise<void> {
  await tx.updateTable('device').set({ seen_at: at }).where('id', '=', id).execute();
}
