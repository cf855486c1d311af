import assert from 'node:assert/strict';
import { execFileSync, spawn, type ChildProcess } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { delimiter, dirname, join } from 'node:path';
import { after, test } from 'node:test';
import { fileURLToPath } from 'node:url';

/** A newcomer's two minutes, with whatever Node the machine has: slow, so it belongs to `npm run test:long`. */
const ROOT = dirname(dirname(fileURLToPath(import.meta.url)));
const PORT = '42871';

if (process.env['BAGATELLE_LONG']) {
  const folder = mkdtempSync(join(tmpdir(), 'bagatelle-clone-'));
  const clone = join(folder, 'clone');
  const path = (process.env['PATH'] ?? '')
    .split(delimiter)
    .filter((part) => !part.includes('node_modules'))
    .join(delimiter);
  const env = { PATH: path, HOME: folder, BAGATELLE_HOME: join(folder, 'lab') };
  let lab: ChildProcess | null = null;
  after(() => {
    if (lab?.pid) process.kill(-lab.pid, 'SIGKILL');
    rmSync(folder, { recursive: true, force: true });
  });

  void test('a fresh clone with no packages starts by `npm start` and answers', async () => {
    execFileSync('git', ['clone', '--quiet', ROOT, clone]);
    lab = spawn('npm', ['start', '--', '--port', PORT], { cwd: clone, env, detached: true, stdio: 'ignore' });
    const page = await answerOf(`http://127.0.0.1:${PORT}/`);
    assert.match(page, /Bagatelle/);
    const bags = await fetch(`http://127.0.0.1:${PORT}/api/bags`);
    assert.equal(bags.status, 200);
  });

  void test('the bin of a clone runs on the Node of the machine', () => {
    const run = (...words: string[]): string =>
      execFileSync(join(clone, 'bin', 'bagatelle.js'), words, {
        cwd: folder,
        env,
        encoding: 'utf8',
        stdio: ['ignore', 'pipe', 'pipe'],
      });
    run('check');
    assert.match(run('--version'), /\d+\.\d+\.\d+/);
  });
}

async function answerOf(address: string): Promise<string> {
  for (let left = 240; left > 0; left--) {
    const answer = await fetch(address).catch(() => null);
    if (answer?.ok) return answer.text();
    await new Promise((wake) => setTimeout(wake, 1000));
  }
  throw new Error(`${address} did not answer within four minutes`);
}
