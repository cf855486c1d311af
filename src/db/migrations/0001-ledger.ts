import type { Migration } from '../migration.ts';

/** Acts, movements, bags and what they hold. On hand is never below zero, sure never more than on hand. */
export const ledger: Migration = {
  name: '0001-ledger',
  statements: (engine) => [
    `create table change (id integer primary key check (id = 1), number bigint not null check (number >= 0))`,
    `insert into change (id, number) values (1, 0)`,
    `create table act (
      id text primary key,
      kind text not null,
      who text not null,
      device text,
      happened_at text not null,
      recorded_at text not null,
      undoes text unique references act (id),
      note text,
      change bigint not null unique,
      body_hash text not null,
      result text not null,
      memo text not null
    )`,
    `create table part (
      id text primary key,
      key text not null unique,
      code text not null,
      kind text not null,
      text text not null
    )`,
    `create index part_code on part (code)`,
    `create table part_fact (
      part text not null references part (id),
      key text not null,
      value text not null,
      unit text,
      origin text not null check (origin in ('stated', 'decoded', 'assumed', 'measured')),
      primary key (part, key)
    )`,
    `create table box (
      name text primary key,
      places bigint not null check (places > 0),
      lifts bigint not null check (lifts >= 0),
      ord bigint not null,
      live smallint not null check (live in (0, 1)),
      made_by text references act (id)
    )`,
    `create table lot (
      id text primary key,
      act text not null references act (id),
      part text not null references part (id),
      supplier text,
      received text,
      date_code text,
      label text,
      price_micros bigint,
      currency text,
      price_pieces bigint
    )`,
    `create table bag (
      id text primary key,
      number bigint not null check (number > 0),
      part text not null references part (id),
      text text not null,
      holder text not null,
      unit text not null check (unit in ('piece', 'mm', 'mg')),
      box text references box (name),
      place text,
      state text not null check (state in ('sound', 'astray', 'salvaged', 'mixed', 'expired')),
      on_hand bigint not null check (on_hand >= 0),
      sure bigint not null check (sure >= 0 and sure <= on_hand),
      oldest text,
      to_count smallint not null check (to_count in (0, 1)),
      live smallint not null check (live in (0, 1)),
      made_by text not null references act (id),
      changed bigint not null
    )`,
    `create unique index bag_number on bag (number) where live = 1`,
    `create index bag_part on bag (part)`,
    `create index bag_changed on bag (changed)`,
    `create table movement (
      seq bigint primary key,
      act text not null references act (id),
      bag text not null references bag (id),
      lot text references lot (id),
      delta bigint not null,
      sure_delta bigint not null,
      saw bigint,
      build_line text
    )`,
    `create index movement_bag on movement (bag, seq)`,
    `create index movement_act on movement (act)`,
    `create table bag_change (
      act text not null references act (id),
      ord bigint not null,
      bag text not null references bag (id),
      field text not null check (field in ('state', 'to_count', 'live')),
      before text not null,
      after text not null,
      primary key (act, ord)
    )`,
    `create index bag_change_bag on bag_change (bag)`,
    ...appendOnly(engine, 'movement'),
    ...appendOnly(engine, 'bag_change'),
  ],
};

/** Rows of the table are added, never changed nor removed: a mistake is undone by its opposite. */
export function appendOnly(engine: 'sqlite' | 'postgres', table: string): string[] {
  const why = `${table} is append-only: a mistake is undone by its opposite`;
  if (engine === 'sqlite') {
    return ['update', 'delete'].map(
      (verb) => `create trigger ${table}_no_${verb} before ${verb} on ${table} begin select raise(abort, '${why}'); end`,
    );
  }
  return [
    `create function ${table}_append_only() returns trigger language plpgsql as $$ begin raise exception '${why}'; end $$`,
    `create trigger ${table}_append_only before update or delete or truncate on ${table} for each statement execute function ${table}_append_only()`,
  ];
}
