import assert from 'node:assert/strict';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { after, test } from 'node:test';
import { followStock } from '#actions/follow-stock.ts';
import { planBom } from '#actions/plan-bom.ts';
import type { PlannedBom } from '#actions/plan-builds.ts';
import type { PlannedLine } from '#core/kit/kit.ts';
import { readBoard } from '#db/boards.ts';
import { openDatabase } from '#db/database.ts';
import { fillDemo } from './fill.ts';
import { BENCH, GREENHOUSE, TIDE } from './scenario/boards.data.ts';

const folder = mkdtempSync(join(tmpdir(), 'bagatelle-demo-boards-'));
const lab = await openDatabase({ home: folder });
after(async () => {
  await lab.close();
  rmSync(folder, { recursive: true, force: true });
});
await fillDemo(lab);
const now = await followStock(lab).current();

async function plan(board: string, boards: number): Promise<PlannedBom> {
  const saved = await lab.read((tx) => readBoard(tx, board));
  assert.ok(saved, board);
  return planBom(now, { rows: saved.lines, choices: saved.choices }, boards, { spares: false });
}

function lineOf({ lines }: PlannedBom, ref: string): PlannedLine {
  const found = lines.find(({ refs }) => refs.includes(ref));
  assert.ok(found, ref);
  return found;
}

const BOARDS = [
  { board: TIDE, missing: 'D2', open: 'F1', left: 'R13', why: 'safety' },
  { board: GREENHOUSE, missing: 'U3', open: 'C13', left: 'R14', why: 'not-stated' },
  { board: BENCH, missing: 'BP1', open: 'C13', left: 'C11', why: 'second-hand' },
] as const;

for (const { board, missing, open, left, why } of BOARDS) {
  void test(`${board}: one line is missing, one is left to be checked, one is not fitted, and all others are served`, async () => {
    const planned = await plan(board, 1);
    assert.deepEqual([lineOf(planned, missing).verdict, lineOf(planned, missing).takes], ['missing', []]);
    assert.deepEqual([lineOf(planned, open).verdict, lineOf(planned, open).takes], ['check', []]);
    assert.ok(
      lineOf(planned, open).because.some(({ code }) => code === why),
      JSON.stringify(lineOf(planned, open).because),
    );
    assert.equal(lineOf(planned, left).need, 0);
    const short = planned.lines.filter((line) => line.short > 0).map(({ refs }) => refs[0]);
    assert.deepEqual(new Set(short), new Set([missing, open]));
    assert.ok(
      planned.lines.some(({ refs, takes }) => refs.length === 0 && takes.length > 0),
      'screws have no refs and are taken all the same',
    );
  });
}

void test('the loggers and the nodes compete for one bag of controllers', async () => {
  const [tide, greenhouse] = [lineOf(await plan(TIDE, 3), 'U1'), lineOf(await plan(GREENHOUSE, 3), 'U2')];
  const bags = [...tide.takes, ...greenhouse.takes].map(({ bag }) => bag);
  assert.deepEqual(new Set(bags), new Set([173]));
  assert.equal(tide.short + greenhouse.short, 0, 'each alone is served');
  const bag = now.bag(173);
  assert.ok(bag && bag.sure - bag.reserved < 6, 'both together are not');
});
