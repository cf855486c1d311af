import assert from 'node:assert/strict';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { test } from 'node:test';
import { sql } from 'kysely';
import { fitLater } from '#actions/fit-later.ts';
import { pick } from '#actions/pick.ts';
import { planBuild } from '#actions/plan-build.ts';
import { saveBoard } from '#actions/save-board.ts';
import { undo } from '#actions/undo.ts';
import { demandKey } from '#core/part/demand-key.ts';
import { backupLab, restoreFile } from '#db/backup.ts';
import { takeChange } from '#db/change.ts';
import { checkLab } from '#db/check.ts';
import { dumpLab } from '#db/dump.ts';
import { readActs } from '#db/history.ts';
import { postMovements } from '#db/ledger.ts';
import { readBuilds } from '#db/read-builds.ts';
import { readStock } from '#db/read-stock.ts';
import { Refused } from '#db/refused.ts';
import type { Lab, Tx } from '#db/database.ts';
import { act, bagOf, did, fill, refusedBy, resistor, row, withLab, type Store } from './lab.ts';

async function linesOf(lab: Lab): Promise<string[]> {
  return lab.read((tx) => Array.fromAsync(dumpLab(tx, lab.engine)));
}

async function withFolder(fn: (folder: string) => Promise<void>): Promise<void> {
  const folder = mkdtempSync(join(tmpdir(), 'bagatelle-keep-'));
  try {
    await fn(folder);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

function until(done: () => boolean): Promise<void> {
  return new Promise((yes, no) => {
    const end = performance.now() + 5000;
    const look = (): void =>
      done() ? yes() : performance.now() > end ? no(new Error('waited in vain')) : void setTimeout(look, 20);
    look();
  });
}

/** Rules of what is kept: backups, checks, followers, and what the tables themselves forbid. */
export function keepingSuite(store: Store): void {
  const rule = (name: string, fn: Parameters<typeof withLab>[1]): void =>
    void test(`${store.engine}: ${name}`, () => withLab(store, fn));

  rule('a backup restored into an empty lab gives the same backup again', async (lab) => {
    await fill(lab, 50, 20);
    const picked = await did(act(lab, pick, { bag: 1, quantity: 20, note: 'Ω “quoted”\nnext line' }));
    await did(act(lab, undo, { act: picked.act }));
    await did(act(lab, saveBoard, { board: 'Owl', lines: [row(2, resistor(100))] }));
    await did(act(lab, fitLater, { board: 'Owl', demand: demandKey(resistor(100)), later: true }));
    await did(act(lab, planBuild, { board: 'Owl', boards: 2, due: '2026-12-01' }));
    await withFolder(async (folder) => {
      const file = join(folder, 'lab.jsonl');
      await backupLab(lab, file);
      await withLab(store, async (other) => {
        await restoreFile(other, file);
        assert.deepEqual(await linesOf(other), await linesOf(lab));
        assert.deepEqual(await other.read(readStock), await lab.read(readStock));
        assert.deepEqual(
          (await other.read(readBuilds)).map(({ name, state }) => [name, state]),
          [['Owl', 'planned']],
        );
        await assert.rejects(restoreFile(other, file), (error) => error instanceof Refused && error.refusal.code === 'not-empty');
        await did(act(other, pick, { bag: 1, quantity: 1 }));
      });
    });
  });

  rule('what is no backup, or does not prove itself, is refused and leaves the lab empty', async (lab) => {
    await withLab(store, async (source) => {
      await fill(source, 50);
      const good = await linesOf(source);
      const cooked = good.map((line) => line.replace('"delta":50', '"delta":49').replace('"sure_delta":50', '"sure_delta":49'));
      await withFolder(async (folder) => {
        const file = join(folder, 'lab.jsonl');
        for (const lines of [
          cooked,
          ['no backup'],
          [],
          good.slice(0, -1),
          good.slice(0, -2),
          good.filter((line) => !line.startsWith('["part_fact"')),
          good.filter((line) => !line.startsWith('["lot"')),
          good.map((line) => line.replace('"who":"', '"who":"not ')),
          good.map((line) => line.replace(/"change":\d+\}$/, `"change":${Number.MAX_SAFE_INTEGER}}`)),
          good.map((line) => line.replace(/"schema":\d+/, '"schema":-5')),
          [`\ufeff${good[0]}`, ...good.slice(1)],
          good.map((line) => line.replace('"seq":1,', '"seq":9007199254740993,')),
          ['{"bagatelle":"dump","schema":99,"change":0}'],
          [...good, '["movement",{"seq":1}]'],
        ]) {
          writeFileSync(file, lines.join('\n'));
          await assert.rejects(
            restoreFile(lab, file),
            (error) => error instanceof Refused && /^(?:backup-bad|newer-schema)$/.test(error.refusal.code),
          );
        }
      });
    });
    assert.deepEqual(await lab.read(readStock), { change: 0, bags: [], boxes: [] });
  });

  rule('check finds nothing in a lab that was only acted on, and finds what was meddled with', async (lab) => {
    await fill(lab, 50, 20);
    assert.deepEqual(await lab.read(checkLab), []);
    await lab.transact((tx) => tx.updateTable('bag').set({ on_hand: 49, sure: 49 }).where('number', '=', 1).execute());
    assert.deepEqual(
      (await lab.read(checkLab)).map((fault) => fault.code),
      ['sum', 'sure-sum'],
    );
  });

  rule('check reports what can not be read, whatever it is', async (lab) => {
    await fill(lab, 50, 20);
    const codes = async (): Promise<string[]> => (await lab.read(checkLab)).map((fault) => fault.code);
    await lab.transact((tx) => sql`update part set key = 'no key ' || id`.execute(tx));
    assert.deepEqual(await codes(), ['part-facts', 'part-facts']);
    await lab.transact((tx) => sql`alter table kit_take rename to lost`.execute(tx));
    assert.ok((await codes()).includes('unreadable'));
  });

  rule('movements are added, never changed nor removed', async (lab) => {
    await fill(lab, 50);
    await assert.rejects(
      lab.transact((tx) => tx.deleteFrom('movement').execute()),
      /append-only/,
    );
    // as: the types forbid it too, which is what is tried here
    await assert.rejects(
      lab.transact((tx) =>
        tx
          .updateTable('movement')
          .set({ delta: 1 } as never)
          .execute(),
      ),
      /append-only/,
    );
  });

  rule('a movement for a build names a line that is there', async (lab) => {
    const received = await fill(lab, 50);
    const { id } = await bagOf(lab, 1);
    const astray = { bag: id, delta: -1, sureDelta: -1, buildLine: 'no line' };
    await assert.rejects(lab.transact((tx) => postMovements(tx, received, 2, [astray])));
    assert.equal((await bagOf(lab, 1)).onHand, 50);
  });

  rule('the acts of a page come with the first few bags of each', async (lab) => {
    await fill(lab, ...Array.from({ length: 12 }, (_, at) => at + 1));
    await did(act(lab, pick, { bag: 12, quantity: 1 }));
    const acts = await lab.read((tx) => readActs(tx, { limit: 10 }));
    assert.deepEqual(
      acts.map(({ kind, movements, bags }) => [kind, movements, bags]),
      [
        ['picked', 1, [12]],
        ['received', 12, [1, 2, 3, 4, 5, 6, 7, 8]],
      ],
    );
  });

  rule('no bag goes below zero, whatever code asks for it', async (lab) => {
    const received = await fill(lab, 50);
    const { id } = await bagOf(lab, 1);
    const drain = (delta: number, sureDelta: number) =>
      lab.transact((tx: Tx) => postMovements(tx, received, 2, [{ bag: id, delta, sureDelta }]));
    await assert.rejects(drain(-51, -50));
    await assert.rejects(drain(0, 1), 'sure is never more than on hand');
    assert.equal((await bagOf(lab, 1)).onHand, 50);
  });

  rule('another process sees the change, and is told of it', async (lab, again) => {
    const other = await again();
    const seen: number[] = [];
    const stop = other.watch((change) => seen.push(change));
    try {
      await fill(lab, 50);
      await until(() => seen.at(-1) === 1);
      await did(act(lab, pick, { bag: 1, quantity: 1 }));
      await until(() => seen.at(-1) === 2);
      await did(act(other, pick, { bag: 1, quantity: 1 }));
      await until(() => seen.at(-1) === 3);
      assert.equal((await bagOf(other, 1)).onHand, 48);
      assert.deepEqual(
        seen,
        [...new Set(seen)].toSorted((a, b) => a - b),
        'numbers only rise',
      );
    } finally {
      stop();
      await other.close();
    }
  });

  rule('many at once: every pick counts once, and none takes what is not there', async (lab, again) => {
    await fill(lab, 10);
    const other = await again();
    try {
      const outcomes = await Promise.all(
        Array.from({ length: 16 }, (_, at) => act(at % 2 ? lab : other, pick, { bag: 1, quantity: 1 })),
      );
      assert.deepEqual([outcomes.filter((one) => one.ok).length, (await bagOf(lab, 1)).onHand], [10, 0]);
      assert.equal(await lab.change(), 11);
      assert.deepEqual(await lab.read(checkLab), []);
    } finally {
      await other.close();
    }
  });

  rule('a read sees one moment, whatever is written meanwhile', async (lab, again) => {
    await fill(lab, 10);
    const other = await again();
    try {
      await lab.read(async (tx) => {
        const before = await readStock(tx);
        await did(act(other, pick, { bag: 1, quantity: 4 }));
        assert.deepEqual(await readStock(tx), before);
      });
    } finally {
      await other.close();
    }
  });

  rule('a schema newer than the program is not written to', async (lab, again) => {
    await lab.transact(async (tx) => {
      await sql`insert into schema_version (version, name) values (99, '0099-from-the-future')`.execute(tx);
      await takeChange(tx);
    });
    await assert.rejects(again(), (error) => error instanceof Refused && error.refusal.code === 'newer-schema');
    const before = await lab.change();
    await refusedBy(act(lab, pick, { bag: 1, quantity: 1 }), 'newer-schema');
    assert.equal(await lab.change(), before, 'nor by a process that had opened it before');
  });
}
