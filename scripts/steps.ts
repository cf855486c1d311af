import { spawn } from 'node:child_process';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

export const ROOT = dirname(dirname(fileURLToPath(import.meta.url)));

/** One thing to run: its name, its command and, where it needs them, variables of its own. */
export interface Step {
  readonly name: string;
  readonly command: readonly string[];
  readonly env?: Readonly<Record<string, string>>;
}

const bin = (name: string): string => join(ROOT, 'node_modules', '.bin', name);

/** A step that runs a tool of node_modules. */
export function tool(name: string, command: string, ...args: string[]): Step {
  return { name, command: [bin(command), ...args] };
}

/** Runs a step with its output shown; answers its exit status. */
export function runStep(step: Step): Promise<number> {
  const [command = '', ...args] = step.command;
  return new Promise((done) => {
    const child = spawn(command, args, { cwd: ROOT, stdio: 'inherit', env: { ...process.env, ...step.env } });
    child.on('error', (error) => {
      process.stderr.write(`${step.name}: ${error.message}\n`);
      done(1);
    });
    child.on('close', (code) => done(code ?? 1));
  });
}

/** Runs steps in order to the end, so that one run shows every failure; answers the names of those that failed. */
export async function runSteps(steps: readonly Step[]): Promise<string[]> {
  const failed: string[] = [];
  for (const step of steps) {
    const began = Date.now();
    process.stdout.write(`\n▸ ${step.name}\n`);
    const code = await runStep(step);
    process.stdout.write(`  ${code === 0 ? 'ok' : `FAILED (${code})`}, ${((Date.now() - began) / 1000).toFixed(1)} s\n`);
    if (code !== 0) failed.push(step.name);
  }
  return failed;
}

/** Ends the process with what failed, or quietly. */
export function finish(failed: readonly string[]): void {
  process.stdout.write(failed.length ? `\nFailed: ${failed.join(', ')}\n` : '\nAll passed.\n');
  process.exitCode = failed.length ? 1 : 0;
}
