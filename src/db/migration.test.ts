import assert from 'node:assert/strict';
import { mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { test } from 'node:test';
import { sql } from 'kysely';
import { migrate, schemaVersion, type Migration } from './migration.ts';
import { MIGRATIONS } from './migration-list.ts';
import { openSqlite } from './sqlite.ts';

const next: Migration = { name: '0099-next', statements: () => ['create table later (id integer primary key)'] };
const broken: Migration = {
  name: '0099-broken',
  statements: () => ['create table half (id integer primary key)', 'no such statement'],
};

async function withHome(fn: (parts: ReturnType<typeof openSqlite>, home: string) => Promise<void>): Promise<void> {
  const home = mkdtempSync(join(tmpdir(), 'bagatelle-migrate-'));
  const parts = openSqlite(home);
  try {
    await fn(parts, home);
  } finally {
    await parts.close();
    rmSync(home, { recursive: true, force: true });
  }
}

void test('migrations are named by their number, in order, without a gap', () => {
  MIGRATIONS.forEach(({ name }, at) => assert.match(name, new RegExp(`^${String(at + 1).padStart(4, '0')}-[a-z-]+$`)));
});

void test('a lab is brought up to date after a backup of what was there; a new one needs none', () =>
  withHome(async (parts, home) => {
    await migrate(parts);
    assert.equal(readdirSync(home).includes('backups'), false);
    await migrate(parts, [...MIGRATIONS, next]);
    assert.equal(await schemaVersion(parts.writer, 'sqlite'), MIGRATIONS.length + 1);
    assert.match(readdirSync(join(home, 'backups')).join(), /^before-0099-next-.*\.sqlite$/);
  }));

void test('a migration that fails leaves nothing of itself', () =>
  withHome(async (parts) => {
    await migrate(parts);
    await assert.rejects(migrate(parts, [...MIGRATIONS, broken]));
    assert.equal(await schemaVersion(parts.writer, 'sqlite'), MIGRATIONS.length);
    const { rows } = await sql`select name from sqlite_master where name = 'half'`.execute(parts.writer);
    assert.deepEqual(rows, []);
  }));
