import assert from 'node:assert/strict';
import { randomUUID } from 'node:crypto';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { test } from 'node:test';
import { perform } from '#actions/perform.ts';
import { receive } from '#actions/receive.ts';
import { checkLab } from '#db/check.ts';
import { openDatabase } from '#db/database.ts';
import { readStock } from '#db/read-stock.ts';
import { crashRound, seeded, settle, type Books } from './crash.ts';
import { startServer } from './server-child.ts';

const LONG = process.env['BAGATELLE_LONG'] === '1';
const ROUNDS = LONG ? 300 : 20;
const SEED = Number(process.env['BAGATELLE_SEED'] ?? 20261125);
const HELD = 1000;
const BAGS = [1, 2, 3, 4, 5, 6];

/** A lab on a new folder with a few full bags. */
async function freshHome(): Promise<string> {
  const home = mkdtempSync(join(tmpdir(), 'bagatelle-crash-'));
  const lab = await openDatabase({ home });
  const items = BAGS.map((bag) => ({ bag, quantity: HELD, part: { kind: 'other' as const, facts: {}, text: `part ${bag}` } }));
  await perform(
    lab,
    receive,
    { now: () => '2026-03-01T09:00:00.000Z' },
    { name: 'test', device: null },
    { id: randomUUID(), items },
  );
  await lab.close();
  return home;
}

/** What each bag must hold by the answers that the clients got: every acknowledged act once, none twice. */
function expected(books: Books): Map<number, number> {
  const held = new Map(BAGS.map((bag) => [bag, HELD]));
  for (const { bag, delta } of books.acts.values()) held.set(bag, (held.get(bag) ?? 0) + delta);
  return held;
}

async function proveLab(home: string, books: Books): Promise<void> {
  const lab = await openDatabase({ home });
  try {
    assert.deepEqual(await lab.read(checkLab), []);
    const stock = await lab.read(readStock);
    assert.deepEqual(new Map(stock.bags.map((bag) => [bag.number, bag.onHand])), expected(books));
    const known = await lab.read((tx) => tx.selectFrom('act').select('id').execute());
    const ids = new Set(known.map((act) => act.id));
    assert.deepEqual(
      [...books.acts.keys()].filter((id) => !ids.has(id)),
      [],
    );
    assert.equal(ids.size, books.acts.size + 1, 'no act that nobody was told of, apart from the delivery');
  } finally {
    await lab.close();
  }
}

void test(`killed at any time, ${ROUNDS} times: every acknowledged act is there once, none twice (seed ${SEED})`, async () => {
  const home = await freshHome();
  const books: Books = { acts: new Map(), open: new Map(), undone: new Set(), refused: 0, kills: 0, resent: 0 };
  const random = seeded(SEED);
  for (let round = 0; round < ROUNDS; round += 1) await crashRound(home, books, BAGS, random, () => proveLab(home, books));
  const server = await startServer(home);
  await settle(server.url, books);
  await proveLab(home, books);
  assert.equal(await server.end('SIGTERM'), 0, 'asked to end, it ends well');
  assert.ok(books.acts.size > ROUNDS, `only ${books.acts.size} acts in ${ROUNDS} rounds`);
  assert.ok(books.resent > ROUNDS / 2, `only ${books.resent} posts were cut off by ${books.kills} kills`);
  rmSync(home, { recursive: true });
});
