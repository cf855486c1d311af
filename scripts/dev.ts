import { spawn } from 'node:child_process';
import { join } from 'node:path';
import { ROOT } from './steps.ts';

/** The lab with restart on change, and the pages with hot reload beside it. */
const server = spawn(process.execPath, ['--watch', 'src/cli/main.ts', 'serve', '--port', '4242'], {
  cwd: ROOT,
  stdio: 'inherit',
});
const pages = spawn(join(ROOT, 'node_modules', '.bin', 'vite'), [], { cwd: ROOT, stdio: 'inherit' });
const stop = (): void => {
  server.kill();
  pages.kill();
};
server.on('close', stop);
pages.on('close', stop);
process.on('SIGINT', stop);
