// Makes a fresh clone ready: packages (with the pinned Node 26 among them) and, with --web, the built pages.
// Plain JavaScript, since an older Node may be the one that runs it. Costs well under 100 ms once all is in place.
import { spawn } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readFileSync, readdirSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';

const root = dirname(dirname(fileURLToPath(import.meta.url)));
const modules = join(root, 'node_modules');
const packageStamp = join(modules, '.bagatelle-stamp');
const webStamp = join(root, 'dist', 'web.stamp');
const LOCK = join(root, '.bootstrap.lock');
const LOCK_STALE_MS = 10 * 60 * 1000;

/** The pinned Node, or the running one where it is new enough and no pinned one exists for this platform. */
export function pinnedNode() {
  const local = process.platform === 'win32' ? join(modules, '.bin', 'node.exe') : join(modules, '.bin', 'node');
  if (existsSync(local)) return local;
  if (Number(process.versions.node.split('.')[0]) >= 26) return process.execPath;
  return null;
}

const stampOf = (...files) => {
  const hash = createHash('sha256');
  for (const file of files) hash.update(readFileSync(file));
  return hash.digest('hex');
};

const readStamp = (file) => (existsSync(file) ? readFileSync(file, 'utf8') : '');

const packagesWanted = () => stampOf(join(root, 'package.json'), join(root, 'package-lock.json'));

function webWanted() {
  const files = [join(root, 'vite.config.ts')];
  const walk = (folder) => {
    for (const entry of readdirSync(folder, { withFileTypes: true })) {
      const path = join(folder, entry.name);
      if (entry.isDirectory()) walk(path);
      else if (!entry.name.endsWith('.test.ts')) files.push(path);
    }
  };
  for (const room of ['web', 'api', 'core', 'say']) if (existsSync(join(root, 'src', room))) walk(join(root, 'src', room));
  const seen = files.map((file) => {
    const { size, mtimeMs } = statSync(file);
    return `${file.slice(root.length)} ${size} ${mtimeMs}`;
  });
  return createHash('sha256').update(seen.join('\n')).update(readStamp(packageStamp)).digest('hex');
}

/** Runs a command quietly, with a dot of progress every two seconds; its output is shown when it fails. */
function run(what, command, args) {
  return new Promise((done, failed) => {
    process.stderr.write(`bagatelle: ${what} `);
    const began = Date.now();
    const dots = setInterval(() => process.stderr.write('.'), 2000);
    const child = spawn(command, args, { cwd: root, stdio: ['ignore', 'pipe', 'pipe'], shell: process.platform === 'win32' });
    let output = '';
    child.stdout.on('data', (data) => (output += data));
    child.stderr.on('data', (data) => (output += data));
    const end = (error) => {
      clearInterval(dots);
      process.stderr.write(error ? ' failed\n' : ` done in ${Math.round((Date.now() - began) / 1000)} s\n`);
      if (error) failed(new Error(`${what}: ${error}\n${output.trim().slice(-2000)}`));
      else done();
    };
    child.on('error', (error) => end(error.message));
    child.on('close', (code) => end(code ? `exit status ${code}` : null));
  });
}

/** Two starts at once: the second waits for the first, a lock left by a killed one goes stale. */
async function locked(work) {
  for (;;) {
    try {
      mkdirSync(LOCK);
      break;
    } catch (error) {
      if (error.code !== 'EEXIST') throw error;
      const age = existsSync(LOCK) ? Date.now() - statSync(LOCK).mtimeMs : 0;
      if (age > LOCK_STALE_MS) rmSync(LOCK, { recursive: true, force: true });
      else await new Promise((wake) => setTimeout(wake, 200));
    }
  }
  const release = () => rmSync(LOCK, { recursive: true, force: true });
  const stop = () => (release(), process.exit(130));
  process.once('SIGINT', stop);
  process.once('SIGTERM', stop);
  try {
    await work();
  } finally {
    release();
    process.off('SIGINT', stop);
    process.off('SIGTERM', stop);
  }
}

async function installPackages() {
  const npm = process.env.npm_execpath;
  const [command, first] = npm && /\.[cm]?js$/.test(npm) ? [process.execPath, [npm]] : ['npm', []];
  await run('installing packages (once; about a minute)', command, [...first, 'ci', '--ignore-scripts', '--loglevel=error']);
  if (!pinnedNode())
    throw new Error('there is no Node 26 package for this platform: install Node 26 or newer yourself, then start again');
  writeFileSync(packageStamp, packagesWanted());
}

async function buildWeb() {
  await run('building the pages', pinnedNode(), [join(modules, 'vite', 'bin', 'vite.js'), 'build', '--logLevel', 'warn']);
  writeFileSync(webStamp, webWanted());
}

/** Does what is missing or stale and nothing else. */
export async function bootstrap({ web }) {
  const packagesStale = () => readStamp(packageStamp) !== packagesWanted() || !pinnedNode();
  const webStale = () => web && (readStamp(webStamp) !== webWanted() || !existsSync(join(root, 'dist', 'web', 'index.html')));
  if (!packagesStale() && !webStale()) return;
  await locked(async () => {
    if (packagesStale()) await installPackages();
    if (webStale()) await buildWeb();
  });
}

if (process.argv[1] && import.meta.url === pathToFileURL(process.argv[1]).href) {
  bootstrap({ web: process.argv.includes('--web') }).catch((error) => {
    process.stderr.write(`bagatelle: could not set up: ${error.message}\n`);
    process.exit(1);
  });
}
