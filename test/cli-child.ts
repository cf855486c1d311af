import { spawn } from 'node:child_process';
import { join } from 'node:path';
import { childEnv } from './server-child.ts';

const MAIN = join(import.meta.dirname, '..', 'src', 'cli', 'main.ts');

export interface Ran {
  readonly status: number | null;
  readonly out: string;
  readonly said: string;
}

/** Runs the real command in a child process on a data folder. */
export function runCli(home: string, args: readonly string[], input = ''): Promise<Ran> {
  const child = spawn(process.execPath, [MAIN, ...args], { env: childEnv(home), stdio: ['pipe', 'pipe', 'pipe'] });
  let out = '';
  let said = '';
  child.stdout.on('data', (data) => (out += String(data)));
  child.stderr.on('data', (data) => (said += String(data)));
  child.stdin.on('error', () => undefined); // a command that reads no input may end before it was written
  child.stdin.end(input);
  return new Promise((done) => child.on('close', (status) => done({ status, out, said })));
}

/** The objects of JSON Lines. */
export function jsonLines(out: string): unknown[] {
  return out
    .split('\n')
    .filter(Boolean)
    .map((line): unknown => JSON.parse(line));
}
