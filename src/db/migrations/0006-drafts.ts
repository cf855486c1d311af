import type { Migration } from '../migration.ts';

/** Files that were brought in and are not kept yet, with what was told of them; no stock, and in no dump. */
export const drafts: Migration = {
  name: '0006-drafts',
  statements: (engine) => [
    `create table draft (
      id text primary key,
      name text not null,
      holds text not null check (holds in ('list', 'bom')),
      file ${engine === 'postgres' ? 'bytea' : 'blob'} not null,
      row_count bigint not null check (row_count >= 0),
      told text not null,
      version bigint not null,
      made_at text not null,
      touched_at text not null
    )`,
  ],
};
