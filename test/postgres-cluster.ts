import { execFile, spawn, type ChildProcess } from 'node:child_process';
import { randomUUID } from 'node:crypto';
import { chownSync, existsSync, globSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { Client } from 'pg';

const run = promisify(execFile);
const STARTS_WITHIN_MS = 30_000;
const STOPS_WITHIN_MS = 10_000;

/** A PostgreSQL for tests: `fresh` gives the address of a new database in it, empty or as another of its databases is. */
export interface Cluster {
  fresh(like?: string): Promise<string>;
  stop(): Promise<void>;
}

/**
 * `TEST_DATABASE_URL`, else a throw-away cluster from the system's PostgreSQL: no port, a socket in a folder of its own.
 * Null where there is no PostgreSQL; under CI that is a failure.
 */
export async function startCluster(): Promise<Cluster | null> {
  const url = process.env['TEST_DATABASE_URL'];
  if (url) return { fresh: (like) => freshDatabase(url, like), stop: () => Promise.resolve() };
  const initdb = process.env['PG_BIN']
    ? join(process.env['PG_BIN'], 'initdb')
    : globSync('/usr/lib/postgresql/*/bin/initdb').toSorted().at(-1);
  if (initdb && existsSync(initdb)) return ownCluster(join(initdb, '..'));
  if (process.env['CI']) throw new Error('CI has no PostgreSQL: install it (Debian: postgresql), or set TEST_DATABASE_URL');
  return null;
}

async function ownCluster(bin: string): Promise<Cluster> {
  const folder = mkdtempSync(join(tmpdir(), 'bagatelle-pg-'));
  const as = await serverUser();
  if (as) chownSync(folder, as.uid, as.gid);
  const data = join(folder, 'data');
  // initdb refuses to run as root, so does the server: both run as the user that the system's PostgreSQL has
  await run(join(bin, 'initdb'), ['-D', data, '-U', 'lab', '-A', 'trust', '--no-sync', '-E', 'UTF8', '--locale=C'], {
    ...as,
    cwd: folder,
  });
  const quick = ['fsync=off', 'full_page_writes=off', 'shared_buffers=16MB'].flatMap((setting) => ['-c', setting]);
  const server = spawn(join(bin, 'postgres'), ['-D', data, '-k', folder, '-c', 'listen_addresses=', ...quick], {
    ...as,
    cwd: folder,
    stdio: 'ignore',
  });
  const url = `postgresql://lab@/postgres?host=${encodeURIComponent(folder)}`;
  await answers(url, server);
  return {
    fresh: (like) => freshDatabase(url, like),
    async stop() {
      await stopped(server);
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

/** Asks it to stop, and after a while does not ask any more. */
async function stopped(server: ChildProcess): Promise<void> {
  if (server.exitCode !== null || server.signalCode !== null) return;
  const ended = new Promise((done) => server.once('exit', done));
  server.kill('SIGINT');
  const insist = setTimeout(() => server.kill('SIGQUIT'), STOPS_WITHIN_MS);
  await ended;
  clearTimeout(insist);
}

/** Under root: the ids of the user `postgres`, else of `nobody`. */
async function serverUser(): Promise<{ uid: number; gid: number } | null> {
  if (process.getuid?.() !== 0) return null;
  for (const name of ['postgres', 'nobody']) {
    try {
      const [uid, gid] = await Promise.all(['-u', '-g'].map(async (what) => Number((await run('id', [what, name])).stdout)));
      if (uid !== undefined && gid !== undefined) return { uid, gid };
    } catch {
      // no such user; the next one
    }
  }
  throw new Error('PostgreSQL does not run as root, and there is neither a user postgres nor nobody');
}

async function answers(url: string, server: ChildProcess): Promise<void> {
  const until = performance.now() + STARTS_WITHIN_MS;
  for (;;) {
    const client = new Client({ connectionString: url });
    try {
      await client.connect();
      await client.end();
      return;
    } catch (error) {
      if (server.exitCode !== null || performance.now() > until) throw error;
      await new Promise((again) => setTimeout(again, 50));
    }
  }
}

const DATABASE = /(\/\/[^/]*\/)([^?]*)/;

async function freshDatabase(url: string, like?: string): Promise<string> {
  const name = `lab_${randomUUID().replaceAll('-', '')}`;
  const client = new Client({ connectionString: url });
  await client.connect();
  const template = like === undefined ? '' : ` template ${DATABASE.exec(like)?.[2] ?? ''}`;
  await client.query(`create database ${name}${template}`);
  await client.end();
  return url.replace(DATABASE, `$1${name}`);
}
