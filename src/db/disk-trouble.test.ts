import assert from 'node:assert/strict';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import { test, type TestContext } from 'node:test';
import { sql } from 'kysely';
import { checkLab } from './check.ts';
import { openDatabase, type Lab } from './database.ts';
import { diskTrouble } from './disk-trouble.ts';
import { Refused } from './refused.ts';

async function openLab(t: TestContext): Promise<Lab> {
  const home = mkdtempSync(join(tmpdir(), 'bagatelle-disk-'));
  const lab = await openDatabase({ home });
  t.after(async () => {
    await lab.close();
    rmSync(home, { recursive: true });
  });
  return lab;
}

function writeMuch(lab: Lab): Promise<void> {
  return lab.transact(async (tx) => {
    const long = 'x'.repeat(2_000_000);
    await tx.insertInto('part').values({ id: 'p', key: long, code: 'x', kind: 'other', text: long }).execute();
  });
}

const refusedAs = (code: string) => (error: unknown) => error instanceof Refused && error.refusal.code === code;

void test('a full disk is said as such, and the lab goes on when there is room', async (t) => {
  const lab = await openLab(t);
  await lab.transact(async (tx) => void (await sql`pragma max_page_count = 1`.execute(tx)));
  await assert.rejects(writeMuch(lab), refusedAs('disk-full'));
  await lab.transact(() => Promise.resolve());
});

void test('a disk that only reads is said as such', async (t) => {
  const lab = await openLab(t);
  await lab.transact(async (tx) => void (await sql`pragma query_only = on`.execute(tx)));
  await assert.rejects(writeMuch(lab), refusedAs('disk-read-only'));
});

void test('what files and PostgreSQL say of the disk is known by its code', () => {
  const said = (code: string): unknown => diskTrouble(Object.assign(new Error('x'), { code }));
  for (const code of ['ENOSPC', 'EDQUOT', '53100']) assert.ok(refusedAs('disk-full')(said(code)), code);
  for (const code of ['EROFS', '25006']) assert.ok(refusedAs('disk-read-only')(said(code)), code);
  assert.ok(!(said('23505') instanceof Refused));
});

/** Where the table of acts begins in the file of a lab, and where its first page ends. */
function pageOfActs(file: string): [start: number, end: number] {
  const db = new DatabaseSync(file, { readOnly: true });
  const { rootpage } = db.prepare("select rootpage from sqlite_master where name = 'act'").get() ?? {};
  const { page_size } = db.prepare('pragma page_size').get() ?? {};
  db.close();
  const [page, size] = [Number(rootpage), Number(page_size)];
  return [(page - 1) * size, page * size];
}

void test('a damaged file is reported by check, and said by everything else', async (t) => {
  const home = mkdtempSync(join(tmpdir(), 'bagatelle-damaged-'));
  t.after(() => rmSync(home, { recursive: true }));
  await (await openDatabase({ home })).close();
  const file = join(home, 'bagatelle.sqlite');
  const bytes = readFileSync(file);
  bytes.fill(0xa5, ...pageOfActs(file));
  writeFileSync(file, bytes);
  const lab = await openDatabase({ home });
  t.after(() => lab.close());
  assert.ok((await lab.read(checkLab)).some(({ code }) => code === 'unreadable'));
  await assert.rejects(
    lab.transact((tx) => tx.selectFrom('act').selectAll().execute()),
    refusedAs('lab-damaged'),
  );
});
