import { spawn, type ChildProcess } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { SHOWN } from './show-steps.ts';

/** The main job in a terminal: the commands that a person types, run one after the other on a lab that is thrown away. */
const ROOT = dirname(import.meta.dirname);
const MAIN = join(ROOT, 'src', 'cli', 'main.ts');

function surroundings(folder: string): NodeJS.ProcessEnv {
  const { DATABASE_URL: _never, ...env } = process.env; // the demo stays in its own folder, whatever lab this terminal works on
  return {
    ...env,
    BAGATELLE_HOME: join(folder, 'lab'),
    BAGATELLE_WHO: 'Maren Oduya',
    NODE_COMPILE_CACHE: join(folder, 'compiled'),
  };
}

let running: ChildProcess | null = null;

/** Runs one command as it would be typed; its output goes to the terminal, or to whoever asked. */
function run(
  folder: string,
  args: readonly string[],
  shown: boolean,
): Promise<{ readonly status: number; readonly out: string }> {
  const child = spawn(process.execPath, [MAIN, ...args], {
    cwd: ROOT,
    env: surroundings(folder),
    stdio: ['ignore', shown ? 'inherit' : 'pipe', shown ? 'inherit' : 'ignore'],
  });
  running = child;
  let out = '';
  child.stdout?.on('data', (data) => (out += String(data)));
  return new Promise((done, failed) => {
    child.on('error', failed);
    child.on('close', (status) => done({ status: status ?? 1, out }));
  });
}

async function show(folder: string): Promise<boolean> {
  for (const [at, { say, command, ends = 0 }] of SHOWN.entries()) {
    const args =
      typeof command === 'function'
        ? await command(async (question) => JSON.parse((await run(folder, question, false)).out))
        : command;
    process.stdout.write(`\n${at + 1}. ${say}\n\n$ bagatelle ${args.map(quoted).join(' ')}\n`);
    const { status } = await run(folder, args, true);
    if (status === ends) continue;
    process.stdout.write(`\nThat should have ended with ${ends}, not with ${status}: a fault of Bagatelle. Please report it.\n`);
    return false;
  }
  return true;
}

function quoted(word: string): string {
  return /^[\w./=,%-]+$/.test(word) ? word : `'${word}'`;
}

const began = Date.now();
const folder = mkdtempSync(join(tmpdir(), 'bagatelle-demo-'));
// however it ends: a command under way would write into the folder again
process.on('exit', () => {
  running?.kill('SIGKILL');
  rmSync(folder, { recursive: true, force: true });
});
for (const signal of ['SIGINT', 'SIGTERM'] as const) process.once(signal, () => process.exit(130));

const whole = await show(folder);
const seconds = Math.round((Date.now() - began) / 1000);
process.stdout.write(
  `\n${whole ? 'That is the job' : 'Stopped'}, in ${seconds} s. The demo's data is removed again; your own lab was not touched.\n`,
);
process.exitCode = whole ? 0 : 1;
