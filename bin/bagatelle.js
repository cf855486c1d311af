#!/usr/bin/env node
// Plain JavaScript for any Node: sets up what is missing, then hands over to the pinned Node.
import { spawn } from 'node:child_process';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { bootstrap, pinnedNode } from '../scripts/bootstrap.mjs';

const root = dirname(dirname(fileURLToPath(import.meta.url)));
try {
  await bootstrap({ web: process.argv[2] === 'serve' });
} catch (error) {
  process.stderr.write(`bagatelle: could not set up: ${error.message}\n`);
  process.exit(1);
}
const child = spawn(pinnedNode(), [join(root, 'src', 'cli', 'main.ts'), ...process.argv.slice(2)], { stdio: 'inherit' });
for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP']) process.on(signal, () => child.kill(signal));
child.on('close', (code, signal) => process.exit(signal ? 1 : (code ?? 1)));
