import type { Migration } from '../migration.ts';

/** Builds, what is promised to them, and what was picked into which cell. */
export const builds: Migration = {
  name: '0003-builds',
  statements: () => [
    `create table build (
      id text primary key,
      name text not null,
      board text references board (id),
      revision text references revision (id),
      boards bigint not null check (boards > 0),
      made bigint check (made >= 0),
      state text not null check (state in ('reserved', 'picking', 'built', 'cancelled', 'undone')),
      priority bigint not null,
      due text,
      buildable bigint not null,
      proof text not null,
      act text not null references act (id)
    )`,
    `create table build_line (
      id text primary key,
      build text not null references build (id),
      ord bigint not null,
      key text not null,
      row bigint not null,
      refs text not null,
      need bigint not null,
      spare bigint not null,
      short bigint not null,
      verdict text not null,
      because text not null,
      unique (build, ord)
    )`,
    `create table reservation (
      build_line text not null references build_line (id),
      bag text not null references bag (id),
      quantity bigint not null check (quantity > 0),
      primary key (build_line, bag)
    )`,
    `create index reservation_bag on reservation (bag)`,
    `create table kit_take (
      id text primary key,
      build_line text not null references build_line (id),
      bag text not null references bag (id),
      ord bigint not null,
      tray bigint not null,
      cell bigint not null,
      planned bigint not null check (planned >= 0),
      picked bigint not null check (picked >= 0),
      returned bigint not null check (returned >= 0 and returned <= picked),
      state text not null check (state in ('open', 'done'))
    )`,
    `create unique index kit_take_line on kit_take (build_line, bag)`,
    `create index kit_take_bag on kit_take (bag)`,
  ],
};
