import { enableCompileCache } from 'node:module';

// before anything else is loaded, so that all of it is compiled once and not at every call
enableCompileCache();
const { run } = await import('./run.ts');
process.exitCode = await run(process.argv.slice(2));
