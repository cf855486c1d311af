import type { Migration } from '../migration.ts';

const STATES = `'planned', 'reserved', 'picking', 'built', 'cancelled', 'undone'`;

/** A build may stand without a promise: `planned`. SQLite can't change a check, so the table is made anew around its rows. */
export const planned: Migration = {
  name: '0004-planned',
  statements: (engine) =>
    engine === 'postgres'
      ? [
          `alter table build drop constraint build_state_check`,
          `alter table build add constraint build_state_check check (state in (${STATES}))`,
        ]
      : [
          `pragma defer_foreign_keys = on`,
          `create table build_before as select * from build`,
          `drop table build`,
          `create table build (
            id text primary key,
            name text not null,
            board text references board (id),
            revision text references revision (id),
            boards bigint not null check (boards > 0),
            made bigint check (made >= 0),
            state text not null check (state in (${STATES})),
            priority bigint not null,
            due text,
            buildable bigint not null,
            proof text not null,
            act text not null references act (id)
          )`,
          `insert into build (id, name, board, revision, boards, made, state, priority, due, buildable, proof, act)
            select id, name, board, revision, boards, made, state, priority, due, buildable, proof, act from build_before`,
          `drop table build_before`,
        ],
};
