import assert from 'node:assert/strict';
import { randomUUID } from 'node:crypto';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { test } from 'node:test';
import { clearDemo } from '#actions/clear-demo.ts';
import { pairDevice, tokenHash } from '#actions/devices.ts';
import { fillLab } from '#actions/fill-lab.ts';
import { followStock } from '#actions/follow-stock.ts';
import { pick } from '#actions/pick.ts';
import { backupLab } from '#db/backup.ts';
import { checkLab } from '#db/check.ts';
import { readDeviceOf } from '#db/devices.ts';
import { readLabCounts } from '#db/lab-counts.ts';
import { Refused } from '#db/refused.ts';
import { act, CLOCK, did, fill, withLab, type Store } from './lab.ts';

/** Rules of a lab that is filled at once and emptied at once, while others look on. */
export function clearingSuite(store: Store): void {
  const rule = (name: string, fn: Parameters<typeof withLab>[1]): void =>
    void test(`${store.engine}: ${name}`, () => withLab(store, fn));

  rule('a demo is emptied in one step that others follow; devices stay; the ledger is closed again', async (lab, again) => {
    const folder = mkdtempSync(join(tmpdir(), 'bagatelle-clearing-'));
    const home = process.env['BAGATELLE_HOME'];
    process.env['BAGATELLE_HOME'] = folder; // where a PostgreSQL lab keeps its backups
    try {
      const file = join(folder, 'lab.jsonl');
      await withLab(store, async (source) => {
        await fill(source, 50, 20);
        await did(act(source, pick, { bag: 1, quantity: 5 }));
        await backupLab(source, file);
      });
      const device = await pairDevice(lab, CLOCK, 'phone');
      const other = followStock(await again());
      assert.equal((await other.current()).stock().bags.length, 0);
      const filled = await fillLab(lab, { id: randomUUID(), demo: true }, () => Promise.resolve(file));
      assert.equal((await other.current()).stock().bags.length, 2, 'also what changed before this follower looked first');
      const cleared = await clearDemo(lab, CLOCK, randomUUID());
      assert.equal(cleared.change, filled.change + 1);
      assert.deepEqual((await other.current()).stock(), { change: cleared.change, bags: [], boxes: [] });
      assert.deepEqual(await lab.read(readLabCounts), { empty: true, demo: false, bags: 0, boards: 0, kits: 0 });
      assert.ok(await lab.read((tx) => readDeviceOf(tx, tokenHash(device?.token ?? ''))));
      await assert.rejects(
        clearDemo(lab, CLOCK, randomUUID()),
        (error) => error instanceof Refused && error.refusal.code === 'not-demo',
      );
      await fill(lab, 7);
      assert.deepEqual(await lab.read(checkLab), []);
      for (const table of ['movement', 'bag_change'] as const)
        await assert.rejects(
          lab.transact(async (tx) => {
            if (table === 'bag_change') {
              const one = await tx.selectFrom('movement').select(['act', 'bag']).executeTakeFirstOrThrow();
              const row = { ...one, ord: 1, field: 'live' as const, before: '1', after: '1' };
              await tx.insertInto('bag_change').values(row).execute();
            }
            await tx.deleteFrom(table).execute();
          }),
          /append-only/,
        );
    } finally {
      if (home === undefined) delete process.env['BAGATELLE_HOME'];
      else process.env['BAGATELLE_HOME'] = home;
      rmSync(folder, { recursive: true, force: true });
    }
  });
}
