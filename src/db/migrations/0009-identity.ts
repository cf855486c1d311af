import { randomUUID } from 'node:crypto';
import type { Migration } from '../migration.ts';

/** Which lab this is, so that an act that is meant for another is known by it; and what became of drafts that were kept. */
export const identity: Migration = {
  name: '0009-identity',
  statements: () => [
    `insert into setting (key, value) values ('lab', '${randomUUID()}')`,
    `create table kept_draft (
      draft text primary key,
      act text not null,
      kept_at text not null
    )`,
  ],
};
