import { spawn, execFileSync, type ChildProcess } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { createInterface } from 'node:readline';
import { fileURLToPath } from 'node:url';

const MAIN = join(dirname(dirname(fileURLToPath(import.meta.url))), 'src', 'cli', 'main.ts');

export interface OpenLab {
  readonly url: string;
  /** runs a command on the same lab, as another process */
  command(...words: string[]): void;
  close(): Promise<void>;
}

/** A lab of its own in a temporary folder, served as a person would serve it. */
export async function openLab({ demo, lan = false }: { readonly demo: boolean; readonly lan?: boolean }): Promise<OpenLab> {
  const home = mkdtempSync(join(tmpdir(), 'bagatelle-e2e-'));
  const env = { ...process.env, BAGATELLE_HOME: home, DATABASE_URL: '' };
  if (demo) execFileSync(process.execPath, [MAIN, 'demo'], { env, stdio: 'ignore' });
  const server = spawn(process.execPath, [MAIN, 'serve', '--port', '0', ...(lan ? ['--lan'] : [])], {
    env,
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  const url = await addressOf(server);
  return {
    url,
    command(...words) {
      execFileSync(process.execPath, [MAIN, ...words], { env, stdio: 'ignore' });
    },
    async close() {
      const ended = new Promise((done) => server.once('close', done));
      server.kill('SIGTERM');
      await ended;
      rmSync(home, { recursive: true, force: true });
    },
  };
}

async function addressOf(server: ChildProcess): Promise<string> {
  const said: string[] = [];
  for (const stream of [server.stdout, server.stderr]) {
    if (stream) createInterface({ input: stream }).on('line', (line) => said.push(line));
  }
  for (let left = 600; left > 0; left--) {
    const address = /https?:\/\/\S+/.exec(said.join('\n'))?.[0];
    if (address) return address;
    await new Promise((wake) => setTimeout(wake, 100));
  }
  throw new Error(`the server did not say its address: ${said.join('\n')}`);
}
