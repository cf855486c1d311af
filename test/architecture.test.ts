import assert from 'node:assert/strict';
import { globSync, readFileSync } from 'node:fs';
import { basename, dirname, join, normalize, relative, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { test } from 'node:test';

const ROOT = dirname(dirname(fileURLToPath(import.meta.url)));
const CORE_ORDER = ['quantity', 'part', 'serve', 'stock', 'find', 'bom', 'kit', 'stocktake', 'replenish', 'range', 'label'];
const LONGEST = 500;
const LONGEST_MEDIAN = 100;

/** What a room may import from; `:types` only as types. */
const ARROWS: Readonly<Record<string, readonly string[]>> = {
  core: ['core'],
  say: ['core:types'],
  files: [],
  solver: ['core:types'],
  db: ['core:types'],
  api: ['core:types'],
  actions: ['core', 'db', 'solver', 'files', 'say'],
  server: ['api', 'actions', 'db', 'files', 'say', 'core:types', 'demo'],
  cli: ['api', 'actions', 'db', 'say', 'core:types', 'server', 'demo'],
  web: ['api', 'core', 'say'],
};

/** Writers of numbers, which whoever says a number uses: one spelling everywhere. */
const WRITERS: ReadonlySet<string> = new Set(['src/core/quantity/write-quantity.ts']);

interface Import {
  readonly from: string;
  readonly to: string;
  readonly typeOnly: boolean;
}

const sources = globSync('src/**/*.{ts,tsx}', { cwd: ROOT }).map((file) => file.split(sep).join('/'));
const isTest = (file: string): boolean => /\.test\.tsx?$/.test(file);
const code = sources.filter((file) => !isTest(file));
const roomOf = (file: string): string => (file.startsWith('src/') ? file.split('/')[1] : file.split('/')[0]) ?? '';
const textOf = (file: string): string => readFileSync(join(ROOT, file), 'utf8');

function resolve(file: string, specifier: string): string | null {
  if (/^#(?:demo|test)\//.test(specifier)) return specifier.slice(1);
  if (specifier.startsWith('#')) return `src/${specifier.slice(1)}`;
  if (specifier.startsWith('.'))
    return normalize(join(dirname(file), specifier))
      .split(sep)
      .join('/');
  return null;
}

function importsOf(file: string): Import[] {
  const found: Import[] = [];
  const statement = /^(?:import|export)\s+(type\s+)?(?:([^;'"]*?)\s+from\s+)?['"]([^'"]+)['"]/gm;
  for (const [, typeWord, names = '', specifier = ''] of textOf(file).matchAll(statement)) {
    const to = resolve(file, specifier);
    if (!to) continue;
    const listed = /^\{([^}]*)\}$/
      .exec(names.trim())?.[1]
      ?.split(',')
      .map((name) => name.trim())
      .filter(Boolean);
    const typeOnly = Boolean(typeWord) || Boolean(listed?.length && listed.every((name) => name.startsWith('type ')));
    found.push({ from: file, to, typeOnly });
  }
  for (const [, specifier = ''] of textOf(file).matchAll(/\bimport\(\s*['"]([^'"]+)['"]\s*\)/g)) {
    const to = resolve(file, specifier);
    if (to) found.push({ from: file, to, typeOnly: false });
  }
  return found;
}

/** The code without its strings and prose, but with suppressions, which are comments. */
function withoutTexts(text: string): string {
  return text
    .replaceAll(/'(?:[^'\\\n]|\\.)*'|`[^`]*`|"(?:[^"\\\n]|\\.)*"/g, "''")
    .replaceAll(/\/\*(?!.*@ts-)[\s\S]*?\*\/|\/\/(?!.*@ts-).*$/gm, '');
}

const imports = code.flatMap(importsOf);

void test('imports follow the arrows between rooms', () => {
  const wrong = imports.filter(({ from, to, typeOnly }) => {
    const [room, target] = [roomOf(from), roomOf(to)];
    if (room === target && room !== 'core') return false;
    if (room === 'say' && WRITERS.has(to)) return false;
    const allowed = ARROWS[room] ?? [];
    return !(allowed.includes(target) || (typeOnly && allowed.includes(`${target}:types`)));
  });
  assert.deepEqual(
    wrong.map(({ from, to }) => `${from} -> ${to}`),
    [],
  );
});

void test('inside core a room imports only rooms listed before it', () => {
  const place = (file: string): number => CORE_ORDER.indexOf(file.split('/')[2] ?? '');
  const wrong = imports.filter(({ from, to }) => roomOf(from) === 'core' && roomOf(to) === 'core' && place(to) > place(from));
  assert.deepEqual(
    wrong.map(({ from, to }) => `${from} -> ${to}`),
    [],
  );
  assert.deepEqual(
    code.filter((file) => roomOf(file) === 'core' && place(file) < 0),
    [],
    'every folder of core has its place in the order',
  );
});

void test('no import goes in a circle', () => {
  const edges = new Map<string, string[]>();
  for (const { from, to, typeOnly } of imports) if (!typeOnly) edges.set(from, [...(edges.get(from) ?? []), to]);
  const state = new Map<string, 'open' | 'done'>();
  const circles: string[] = [];
  const visit = (file: string, path: readonly string[]): void => {
    if (state.get(file) === 'done') return;
    if (state.get(file) === 'open') {
      circles.push([...path.slice(path.indexOf(file)), file].join(' -> '));
      return;
    }
    state.set(file, 'open');
    for (const next of edges.get(file) ?? []) visit(next, [...path, file]);
    state.set(file, 'done');
  };
  for (const file of edges.keys()) visit(file, []);
  assert.deepEqual(circles, []);
});

void test('every import names a file that exists', () => {
  const known = new Set(sources);
  const missing = imports.filter(({ to }) => /\.tsx?$/.test(to) && to.startsWith('src/') && !known.has(to));
  assert.deepEqual(
    missing.map(({ from, to }) => `${from} -> ${to}`),
    [],
  );
});

void test('core is pure: no clock, no chance, no waiting, no world', () => {
  const banned =
    /\b(?:Date\.now|new Date\b|Math\.random|performance\.|process\.|globalThis\.|setTimeout|setInterval|fetch\(|await\s|Temporal\.Now|crypto\.)|from ['"]node:/;
  const wrong = code.filter(
    (file) => roomOf(file) === 'core' && banned.test(textOf(file).replace(/\/\*[\s\S]*?\*\/|\/\/.*$/gm, '')),
  );
  assert.deepEqual(wrong, []);
});

void test('SQL is written in db/ only, and movements only by its ledger', () => {
  const kysely = code.filter((file) => /from ['"](?:kysely|pg|node:sqlite)['"]/.test(textOf(file)) && roomOf(file) !== 'db');
  assert.deepEqual(kysely, []);
  const ledger = code.filter((file) => /insertInto\(['"]movement['"]\)/.test(textOf(file)) && file !== 'src/db/ledger.ts');
  assert.deepEqual(ledger, []);
});

void test('what crosses the wire is written by actions alone', () => {
  const wrong = code.filter((file) => roomOf(file) === 'server' && /\btransact\b/.test(withoutTexts(textOf(file))));
  assert.deepEqual(wrong, []);
});

void test('files stay small: median at most 100 lines, none over 500', () => {
  const measured = code.filter((file) => !/\.data\.tsx?$/.test(file));
  const lines = measured.map((file) => ({ file, lines: textOf(file).split('\n').length })).toSorted((a, b) => a.lines - b.lines);
  assert.deepEqual(
    lines.filter((entry) => entry.lines > LONGEST),
    [],
  );
  assert.ok((lines[Math.floor(lines.length / 2)]?.lines ?? 0) <= LONGEST_MEDIAN);
});

void test('no barrels, no default exports, no grab-bag folders, no suppressions', () => {
  const all = globSync('{src,test,outside,bench,demo,scripts,e2e}/**/*.{ts,tsx,mjs}', {
    cwd: ROOT,
    exclude: ['**/node_modules/**'],
  });
  assert.deepEqual(
    all.filter((file) => /^index\.tsx?$/.test(basename(file))),
    [],
  );
  assert.deepEqual(
    all.filter((file) => /(^|[\\/])(utils?|shared|common|helpers?|lib)[\\/]/.test(relative('.', file))),
    [],
  );
  const banned = /^export default|@ts-ignore|@ts-nocheck|@ts-expect-error|:\s*any\b|\bas any\b|<any>/m;
  const self = 'test/architecture.test.ts';
  assert.deepEqual(
    all.filter((file) => file.split(sep).join('/') !== self && banned.test(withoutTexts(textOf(file)))),
    [],
  );
});
