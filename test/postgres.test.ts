import { after, test } from 'node:test';
import { openDatabase } from '#db/database.ts';
import { startCluster } from './postgres-cluster.ts';
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
} else {
  void test('postgres: left out, since there is none here', (context) => {
    context.diagnostic(
      'The tests on PostgreSQL were left out: install it (Debian: apt-get install postgresql), or set TEST_DATABASE_URL.',
    );
  });
}
