import assert from 'node:assert/strict';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { test, type TestContext } from 'node:test';
import { sql } from 'kysely';
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
    await tx.insertInto('part').values({ id: 'p', key: long, code: 'x', kind: 'other', text: long } as never).execute(); // as: only its size matters
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
