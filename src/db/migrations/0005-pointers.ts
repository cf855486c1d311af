import type { Migration } from '../migration.ts';
import { appendOnly } from './0001-ledger.ts';

/**
 * A movement's line of a build must be there (looked at when the transaction ends, since older dumps name movements first), and
 * what is looked up has an index. SQLite can't add a foreign key, so the table is made anew around its rows.
 */
export const pointers: Migration = {
  name: '0005-pointers',
  statements: (engine) => [
    ...(engine === 'postgres'
      ? [
          `alter table movement add constraint movement_build_line_fkey
            foreign key (build_line) references build_line (id) deferrable initially deferred`,
        ]
      : [
          `create table movement_after (
            seq bigint primary key,
            act text not null references act (id),
            bag text not null references bag (id),
            lot text references lot (id),
            delta bigint not null,
            sure_delta bigint not null,
            saw bigint,
            build_line text references build_line (id) deferrable initially deferred
          )`,
          `insert into movement_after (seq, act, bag, lot, delta, sure_delta, saw, build_line)
            select seq, act, bag, lot, delta, sure_delta, saw, build_line from movement order by seq`,
          `drop table movement`,
          `alter table movement_after rename to movement`,
          `create index movement_bag on movement (bag, seq)`,
          `create index movement_act on movement (act)`,
          ...appendOnly('sqlite', 'movement'),
        ]),
    `create index movement_lot on movement (lot)`,
    `create index movement_build_line on movement (build_line)`,
    `create index bag_made_by on bag (made_by)`,
    `create index revision_act on revision (act)`,
    `create index build_act on build (act)`,
    `create index build_revision on build (revision)`,
    `create index choice_bag on choice (bag)`,
  ],
};
