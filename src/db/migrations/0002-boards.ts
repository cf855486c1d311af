import type { Migration } from '../migration.ts';

/** Boards, their revisions and lines as read, and what was chosen for a demand. */
export const boards: Migration = {
  name: '0002-boards',
  statements: () => [
    `create table board (id text primary key, name text not null, live smallint not null check (live in (0, 1)))`,
    `create unique index board_name on board (name) where live = 1`,
    `create table revision (
      id text primary key,
      board text not null references board (id),
      name text not null,
      ord bigint not null,
      source text,
      act text not null references act (id),
      live smallint not null check (live in (0, 1)),
      unique (board, ord)
    )`,
    `create unique index revision_name on revision (board, name) where live = 1`,
    `create table line (
      id text primary key,
      revision text not null references revision (id),
      ord bigint not null,
      row bigint not null,
      read text not null,
      unique (revision, ord)
    )`,
    `create table choice (
      board text not null references board (id),
      demand text not null,
      bag text not null references bag (id),
      accept smallint not null check (accept in (0, 1)),
      primary key (board, demand)
    )`,
  ],
};
