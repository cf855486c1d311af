import { globSync } from 'node:fs';
import { CHECKS } from './check-steps.ts';
import { finish, ROOT, runSteps, type Step } from './steps.ts';

const long = process.argv.includes('--long');
const env = long ? { BAGATELLE_LONG: '1' } : {};

const files = (pattern: string): string[] => globSync(pattern, { cwd: ROOT }).toSorted();
const suite = (name: string, patterns: readonly string[], how: readonly string[] = []): Step => ({
  name,
  command: [process.execPath, '--test', '--test-reporter=dot', ...how, ...patterns.flatMap(files)],
  env,
});

finish(
  await runSteps([
    ...CHECKS,
    suite('rules beside the code', ['src/**/*.test.ts', 'demo/**/*.test.ts', 'scripts/**/*.test.ts', 'bench/**/*.test.ts']),
    suite('the house and the whole program', ['test/**/*.test.ts']),
    suite('outside truths', ['outside/**/*.test.ts']),
    // a browser waits more than it works: two files at a time even on two cores
    suite('pages in a browser', ['e2e/**/*.test.ts'], ['--test-concurrency=2']),
  ]),
);
