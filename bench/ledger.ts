import { cpSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { DatabaseSync, type StatementSync } from 'node:sqlite';
import { perform } from '#actions/perform.ts';
import { pick } from '#actions/pick.ts';
import { receive } from '#actions/receive.ts';
import { openDatabase, type Lab } from '#db/database.ts';
import { readStock } from '#db/read-stock.ts';
import { expect, type Bench, type Measured } from './bench.ts';
import { recordStatements, replay, type Recorded } from './recorded.ts';
import { seeded } from './seeded.ts';
import { syntheticStock } from './synthetic-stock.ts';

const BAGS = 500;
const ROUND = 100;
const ROUNDS = 12;
const TARGET = 0.7;
const CLOCK = { now: () => '2026-01-05T08:00:00.000Z' };
const WHO = { name: 'bench', device: null };

const idOf = (at: number): string => `00000000-0000-4000-8000-${String(at).padStart(12, '0')}`;

/** A lab of 500 bags, each with more than the bench will take. */
async function freshLab(folder: string): Promise<Lab> {
  const lab = await openDatabase({ home: folder });
  const items = syntheticStock(BAGS).bags.map((bag) => ({ quantity: 1_000, part: bag.part, box: bag.box ?? 'A' }));
  const received = await perform(lab, receive, CLOCK, WHO, { id: idOf(0), items, happenedAt: CLOCK.now() });
  expect(received.ok, 'the delivery was refused');
  return lab;
}

interface Pick {
  readonly id: string;
  readonly bag: number;
  readonly quantity: number;
}

function rounds(): Pick[][] {
  const chance = seeded(3);
  return Array.from({ length: ROUNDS }, (_, round) =>
    Array.from({ length: ROUND }, (_, at) => ({
      id: idOf(1 + round * ROUND + at),
      bag: chance.whole(1, BAGS),
      quantity: chance.whole(1, 5),
    })),
  );
}

async function pickAll(lab: Lab, picks: readonly Pick[]): Promise<void> {
  for (const one of picks) {
    const outcome = await perform(lab, pick, CLOCK, WHO, one);
    if (!outcome.ok) throw new Error(`bench is wrong: a pick was refused as ${outcome.refusal.code}`);
  }
}

/** What each round of picks asks of SQLite, statement by statement; `copy` gets the lab as it was before the first. */
async function recordAll(folder: string, copy: string, all: readonly (readonly Pick[])[]): Promise<Recorded[][]> {
  await (await freshLab(folder)).close();
  cpSync(folder, copy, { recursive: true });
  return recordStatements(async (next) => {
    const lab = await openDatabase({ home: folder });
    for (const picks of all) {
      next();
      await pickAll(lab, picks);
    }
    await lab.close();
  });
}

async function onHand(folder: string): Promise<string> {
  const lab = await openDatabase({ home: folder });
  const stock = await lab.read(readStock);
  await lab.close();
  return stock.bags.map((bag) => `${bag.number}:${bag.onHand}`).join(' ');
}

async function measure(root: string, tell: (progress: string) => void): Promise<Measured[]> {
  const all = rounds();
  const [recordedIn, ours, raw] = [join(root, 'recorded'), join(root, 'ours'), join(root, 'raw')];
  tell('ledger: noting the statements of each pick');
  const recorded = await recordAll(recordedIn, raw, all);
  const lab = await freshLab(ours);
  const db = new DatabaseSync(join(raw, 'bagatelle.sqlite'), { enableForeignKeyConstraints: true });
  db.exec('pragma journal_mode = wal; pragma synchronous = full');
  const kept = new Map<string, StatementSync>();
  const ratios: number[] = [];
  let [mine, others] = [0, 0];
  for (const [round, picks] of all.entries()) {
    tell(`ledger: round ${round + 1} of ${ROUNDS}`);
    const start = performance.now();
    await pickAll(lab, picks);
    const between = performance.now();
    replay(db, kept, recorded[round] ?? []);
    const end = performance.now();
    if (round < 2) continue; // warming up
    ratios.push((end - between) / (between - start));
    mine += between - start;
    others += end - between;
  }
  await lab.close();
  db.close();
  const [wanted, gotOurs, gotRaw] = [await onHand(recordedIn), await onHand(ours), await onHand(raw)];
  expect(gotOurs === wanted && gotRaw === wanted, 'the three labs do not hold the same');
  const done = (ROUNDS - 2) * ROUND;
  const ratio = ratios.toSorted((a, b) => a - b)[Math.floor(ratios.length / 2)] ?? 0;
  const perSecond = (time: number): string => `${Math.round((done * 1000) / time)} / s`;
  return [
    {
      what: 'picks, one durable transaction each',
      ours: perSecond(mine),
      other: perSecond(others),
      ratio: ratio.toFixed(2),
      target: `≥ ${TARGET}`,
      ok: ratio >= TARGET,
    },
  ];
}

export const bench: Bench = {
  name: 'ledger',
  about:
    'durable picks (WAL, synchronous = FULL) through the actions; other: the same statements with the same parameters on bare node:sqlite, prepared once; rounds by turns, median of the ratios',
  async run(tell) {
    const root = mkdtempSync(join(tmpdir(), 'bagatelle-bench-'));
    try {
      return await measure(root, tell);
    } finally {
      rmSync(root, { recursive: true, force: true });
    }
  },
};
