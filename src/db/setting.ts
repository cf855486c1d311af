import { randomUUID } from 'node:crypto';
import type { Tx } from './engine.ts';

/** What the lab must know of itself. */
type SettingKey =
  /** a UUID: which lab this is */
  | 'lab'
  /** change number at which the whole stock was emptied, or came from a backup: what is remembered from before it is void */
  | 'begun'
  /** id of the act that filled the lab with the demo; while it is there the lab may be cleared */
  | 'demo'
  /** what the last filling and the last clearing answered, under their ids, so that a repeat gets the same */
  | 'filled'
  | 'cleared';

export async function readSetting(tx: Tx, key: SettingKey): Promise<string | null> {
  const row = await tx.selectFrom('setting').select('value').where('key', '=', key).executeTakeFirst();
  return row?.value ?? null;
}

/** Sets a fact; null takes it away. */
export async function writeSetting(tx: Tx, key: SettingKey, value: string | null): Promise<void> {
  await tx.deleteFrom('setting').where('key', '=', key).execute();
  if (value !== null) await tx.insertInto('setting').values({ key, value }).execute();
}

/** Change number at which the stock began anew; 0 where it never did. */
export async function readBegun(tx: Tx): Promise<number> {
  return Number((await readSetting(tx, 'begun')) ?? 0);
}

/** Which lab this is: another after its stock was emptied or came from a backup. */
export async function readLabId(tx: Tx): Promise<string> {
  const id = await readSetting(tx, 'lab');
  if (id === null) throw new Error('the lab has lost its id');
  return id;
}

/** The stock begins anew with this change, in what is another lab for all who knew the one before. */
export async function writeBegun(tx: Tx, change: number): Promise<void> {
  await writeSetting(tx, 'begun', String(change));
  await writeSetting(tx, 'lab', randomUUID());
}
