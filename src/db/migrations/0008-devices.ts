import type { Migration } from '../migration.ts';

/** Devices that are paired with the lab, and what the lab must know of itself; neither is stock, and neither is in a dump. */
export const devices: Migration = {
  name: '0008-devices',
  statements: () => [
    `create table device (
      id text primary key,
      name text not null,
      token_hash text not null unique,
      paired_at text not null,
      seen_at text,
      forgotten smallint not null check (forgotten in (0, 1))
    )`,
    `create unique index device_name on device (name) where forgotten = 0`,
    `create table setting (key text primary key, value text not null)`,
  ],
};
