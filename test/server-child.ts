import { spawn, type ChildProcess } from 'node:child_process';
import { join } from 'node:path';
import { createInterface } from 'node:readline';

const MAIN = join(import.meta.dirname, '..', 'src', 'cli', 'main.ts');

export interface ServerChild {
  readonly url: string;
  readonly process: ChildProcess;
  /** ends it by a signal and waits; answers its exit status, or null where the signal ended it */
  end(signal: NodeJS.Signals): Promise<number | null>;
}

/** The surroundings of a child: a data folder of its own, no database from outside, no colours. */
export function childEnv(home: string, more: Readonly<Record<string, string>> = {}): NodeJS.ProcessEnv {
  const { DATABASE_URL: _url, BAGATELLE_DEBUG: _debug, FORCE_COLOR: _colour, ...env } = process.env;
  return { ...env, BAGATELLE_HOME: home, NO_COLOR: '1', ...more };
}

/** Starts the real server on a free port, on a data folder, and waits for the address that it prints. */
export async function startServer(home: string): Promise<ServerChild> {
  const child = spawn(process.execPath, [MAIN, 'serve', '--port', '0'], {
    env: childEnv(home),
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  let said = '';
  child.stderr.on('data', (data) => (said += String(data)));
  const ended = new Promise<number | null>((done) => child.on('close', (code) => done(code)));
  const url = await new Promise<string>((found, failed) => {
    createInterface({ input: child.stdout }).on('line', (line) => {
      const [address] = /http:\/\/\S+/.exec(line) ?? [];
      if (address) found(address);
    });
    void ended.then(() => failed(new Error(`the server ended: ${said}`)));
  });
  return {
    url: url.replace(/\/$/, ''),
    process: child,
    async end(signal) {
      child.kill(signal);
      return ended;
    },
  };
}
