import assert from 'node:assert/strict';
import { mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { test } from 'node:test';
import { sql } from 'kysely';
import { migrate, schemaVersion, type Migration } from './migration.ts';
import { MIGRATIONS } from './migration-list.ts';
import { openSqlite } from './sqlite.ts';

const next: Migration = { name: '0099-next', statements: () => ['create table next_one (id integer primary key)'] };
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

void test('builds that were reserved before builds could be planned keep their lines and promises', () =>
  withHome(async (parts) => {
    await migrate(parts, MIGRATIONS.slice(0, 3));
    for (const row of [
      `insert into act values ('a', 'reserved', 'Ada', null, '2026', '2026', null, null, 1, 'h', 'r', 'm')`,
      `insert into part values ('p', 'k', 'c', 'resistor', 't')`,
      `insert into bag (id, number, part, text, holder, unit, state, on_hand, sure, to_count, live, made_by, changed)
        values ('g', 1, 'p', 't', 'zip-bag', 'piece', 'sound', 0, 0, 0, 1, 'a', 1)`,
      `insert into build values ('b', 'Owl', null, null, 2, null, 'reserved', 0, null, 2, 'optimal', 'a')`,
      `insert into build_line values ('l', 'b', 1, 'b/1', 2, '[]', 4, 0, 0, 'exact', '[]')`,
      `insert into reservation values ('l', 'g', 4)`,
    ])
      await sql.raw(row).execute(parts.writer);
    await migrate(parts);
    const { rows } = await sql<{ name: string; quantity: number }>`select build.name, quantity from build
      join build_line on build_line.build = build.id join reservation on build_line = build_line.id`.execute(parts.writer);
    assert.deepEqual(
      rows.map(({ name, quantity }) => [name, quantity]),
      [['Owl', 4]],
    );
    assert.deepEqual((await sql`pragma foreign_key_check`.execute(parts.writer)).rows, []);
    await sql.raw(`update build set state = 'planned'`).execute(parts.writer);
    await assert.rejects(sql.raw(`update build set state = 'dreamt of'`).execute(parts.writer));
    await assert.rejects(sql.raw(`delete from build`).execute(parts.writer), 'its lines still point at it');
  }));

void test('a migration that fails leaves nothing of itself', () =>
  withHome(async (parts) => {
    await migrate(parts);
    await assert.rejects(migrate(parts, [...MIGRATIONS, broken]));
    assert.equal(await schemaVersion(parts.writer, 'sqlite'), MIGRATIONS.length);
    const { rows } = await sql`select name from sqlite_master where name = 'half'`.execute(parts.writer);
    assert.deepEqual(rows, []);
  }));
