import assert from 'node:assert/strict';
import { randomUUID } from 'node:crypto';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { test } from 'node:test';
import { matchBom } from '#core/bom/match.ts';
import { buildIndex } from '#core/find/find-index.ts';
import { openDatabase } from '#db/database.ts';
import { readStock } from '#db/read-stock.ts';
import { importList } from './import-list.ts';
import { perform } from './perform.ts';
import { readFile } from './read-file.ts';
import { receive } from './receive.ts';
import { readTypedLine } from './typed-line.ts';

const CLOCK = { now: () => '2026-03-01T09:00:00.000Z' };
const WHO = { name: 'test', device: null };

function rowsOf(text: string) {
  const read = readFile(new TextEncoder().encode(text), 'list.csv');
  assert.ok(read.ok);
  return read.value.rows;
}

void test('what was read with a doubt stays doubtful in its bag: at most a check, with the doubt said', async () => {
  const home = mkdtempSync(join(tmpdir(), 'bagatelle-doubt-'));
  const lab = await openDatabase({ home });
  try {
    const rows = rowsOf('Bag,Qty,Value,Package\n1,100,47K 50V X7R,0805\n2,100,47pF 50V X7R,0805\n');
    const imported = await perform(lab, importList, CLOCK, WHO, { id: randomUUID(), rows, source: 'list.csv' });
    assert.ok(imported.ok);
    const typed = readTypedLine('20 47K 50V X7R 0805');
    assert.ok(typed.ok);
    assert.deepEqual(
      typed.value.doubts.map(({ field }) => field),
      ['value'],
    );
    assert.ok((await perform(lab, receive, CLOCK, WHO, { id: randomUUID(), items: [{ ...typed.value.item, bag: 3 }] })).ok);
    const [line] = matchBom(rowsOf('Ref,Value,Package\nC1,47pF 50V X7R,0805\n'), buildIndex(await lab.read(readStock)), []);
    const verdicts = line?.candidates.map(({ bag, verdict, because }) => {
      const doubtSaid = because.some(({ code }) => code === 'doubt');
      return `bag ${bag}: ${verdict}${doubtSaid ? ', doubt said' : ''}`;
    });
    assert.deepEqual(
      verdicts?.toSorted((one, other) => one.localeCompare(other)),
      ['bag 1: check, doubt said', 'bag 2: exact', 'bag 3: check, doubt said'],
    );
  } finally {
    await lab.close();
    rmSync(home, { recursive: true, force: true });
  }
});
