import { tool, type Step } from './steps.ts';

/** Types of core (no Node, no DOM), of all that Node runs, and of the pages; lint, format, unused code. Arrows are a test. */
export const CHECKS: readonly Step[] = [
  tool('types: core, which knows neither Node nor a page', 'tsc', '-p', 'tsconfig.core.json'),
  tool('types: everything that Node runs', 'tsc', '-p', 'tsconfig.json'),
  tool('types: the pages', 'tsc', '-p', 'tsconfig.web.json'),
  tool('lint, with types', 'oxlint', '--type-aware', '--deny-warnings'),
  tool('format', 'oxfmt', '--check'),
  tool('unused code', 'knip'),
];
