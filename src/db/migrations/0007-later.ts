import type { Migration } from '../migration.ts';

/** Demands of a board that are left off for now: its lines with them are fitted later. */
export const later: Migration = {
  name: '0007-later',
  statements: () => [
    `create table later (
      board text not null references board (id),
      demand text not null,
      primary key (board, demand)
    )`,
  ],
};
