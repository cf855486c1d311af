import assert from 'node:assert/strict';
import { mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { after, test } from 'node:test';
import { sql } from 'kysely';
import { restoreFile } from '#db/backup.ts';
import { openDatabase } from '#db/database.ts';
import { migrate } from '#db/migration.ts';
import { MIGRATIONS } from '#db/migration-list.ts';
import { openPostgres } from '#db/postgres.ts';
import { readBuilds } from '#db/read-builds.ts';
import { readStock } from '#db/read-stock.ts';
import { startCluster, type Cluster } from './postgres-cluster.ts';
import { storeSuite } from './store-suite.ts';

const cluster = await startCluster();
if (cluster) {
  after(() => cluster.stop());
  // migrated once; every test gets a copy of it
  const migrated = await cluster.fresh();
  await (await openDatabase({ url: migrated })).close();
  storeSuite({
    engine: 'postgres',
    async fresh() {
      const url = await cluster.fresh(migrated);
      const lab = await openDatabase({ url });
      return { lab, again: () => openDatabase({ url }), end: () => lab.close() };
    },
  });
  void test('postgres: the backup before a migration is one that restore reads', () => backupBeforeMigration(cluster));
} else {
  void test('postgres: left out, since there is none here', (context) => {
    context.diagnostic(
      'The tests on PostgreSQL were left out: install it (Debian: apt-get install postgresql), or set TEST_DATABASE_URL.',
    );
  });
}

/** A lab of an older program with builds in it, migrated by this one, and restored from what was kept before. */
async function backupBeforeMigration(cluster: Cluster): Promise<void> {
  const home = mkdtempSync(join(tmpdir(), 'bagatelle-before-'));
  const old = openPostgres(await cluster.fresh(), home);
  const lab = await openDatabase({ url: await cluster.fresh() });
  try {
    await migrate(old, MIGRATIONS.slice(0, 3));
    for (const row of [
      `insert into act values ('a', 'reserved', 'Ada', null, '2026', '2026', null, null, 1, 'h', '{}', 'null')`,
      `insert into part values ('p', '["resistor",[]]', 'c', 'resistor', 't')`,
      `insert into bag (id, number, part, text, holder, unit, state, on_hand, sure, to_count, live, made_by, changed)
        values ('g', 1, 'p', 't', 'zip-bag', 'piece', 'sound', 6, 6, 0, 1, 'a', 1)`,
      `insert into build values ('b', 'Owl', null, null, 2, null, 'picking', 0, null, 2, 'optimal', 'a')`,
      `insert into build_line values ('l', 'b', 1, 'b/1', 2, '[]', 4, 0, 0, 'exact', '[]')`,
      `insert into movement values (1, 'a', 'g', null, 10, 10, null, null), (2, 'a', 'g', null, -4, -4, null, 'l')`,
      `update change set number = 1`,
    ])
      await sql.raw(row).execute(old.writer);
    await migrate(old);
    const [file] = readdirSync(home);
    assert.match(file ?? '', /^before-0004-planned-.*\.jsonl$/);
    await restoreFile(lab, join(home, file ?? ''));
    assert.deepEqual(
      (await lab.read(readBuilds)).map(({ name }) => name),
      ['Owl'],
    );
    assert.equal((await lab.read(readStock)).bags[0]?.onHand, 6);
  } finally {
    await old.close();
    await lab.close();
    rmSync(home, { recursive: true, force: true });
  }
}
