import assert from 'node:assert/strict';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { after, test } from 'node:test';
import { linePoints } from '#core/bom/line-points.ts';
import { judgeLine } from '#core/bom/judge.ts';
import { worstOf } from '#core/serve/points.ts';
import { readStock } from '#db/read-stock.ts';
import { readBoard, readBoards } from '#db/boards.ts';
import { openDatabase } from '#db/database.ts';
import { fillDemo } from './fill.ts';

const folder = mkdtempSync(join(tmpdir(), 'bagatelle-demo-points-'));
const lab = await openDatabase({ home: folder });
after(async () => {
  await lab.close();
  rmSync(folder, { recursive: true, force: true });
});
await fillDemo(lab);

void test('for every line of every board and every bag the worst point is the verdict', async () => {
  const { bags } = await lab.read(readStock);
  const boards = await lab.read(readBoards);
  let compared = 0;
  for (const { name } of boards) {
    const found = await lab.read((tx) => readBoard(tx, name));
    for (const line of found?.lines ?? []) {
      if (line.part.kind === 'not-a-part') continue;
      for (const bag of bags) {
        const { verdict, points } = linePoints(line, bag);
        const judged = judgeLine(line, () => [bag])[0]?.verdict ?? 'missing';
        const told = `${name} row ${line.row}, bag ${bag.number}: ${JSON.stringify(points)}`;
        assert.equal(verdict, judged, told);
        assert.equal(worstOf(points), judged, told);
        compared += 1;
      }
    }
  }
  assert.ok(compared > 20_000, String(compared));
});
