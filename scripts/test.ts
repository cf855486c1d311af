import { globSync } from 'node:fs';
import { CHECKS } from './check-steps.ts';
import { finish, ROOT, runSteps, type Step } from './steps.ts';

const long = process.argv.includes('--long');
const env = long ? { BAGATELLE_LONG: '1' } : {};

const files = (pattern: string): string[] => globSync(pattern, { cwd: ROOT }).toSorted();
const suite = (name: string, ...patterns: string[]): Step => ({
  name,
  command: [process.execPath, '--test', '--test-reporter=dot', ...patterns.flatMap(files)],
  env,
});

finish(
  await runSteps([
    ...CHECKS,
    suite('rules beside the code', 'src/**/*.test.ts', 'demo/**/*.test.ts', 'scripts/**/*.test.ts', 'bench/**/*.test.ts'),
    suite('the house and the whole program', 'test/**/*.test.ts'),
    suite('outside truths', 'outside/**/*.test.ts'),
    suite('pages in a browser', 'e2e/**/*.test.ts'),
  ]),
);
