import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { glob } from 'node:fs/promises';
import { basename, join } from 'node:path';
import { test } from 'node:test';

const root = join(import.meta.dirname, '..');

async function texts(pattern: string): Promise<string[]> {
  const found: string[] = [];
  for await (const file of glob(pattern, { cwd: root }))
    if (!file.endsWith('.test.ts')) found.push(readFileSync(join(root, file), 'utf8'));
  return found;
}

/** Names of the sentences in an object of sentences, as one that reads the source sees them. */
type Sentences = readonly (readonly [object: string, names: readonly string[]])[];

async function sentencesOfPages(): Promise<Sentences> {
  const found: [string, readonly string[]][] = [];
  for await (const file of glob('src/say/en/*.ts', { cwd: root })) {
    if (basename(file).endsWith('.test.ts')) continue;
    const module = (await import(join(root, file))) as Record<string, unknown>; // as: a module is an object of its exports
    for (const [name, value] of Object.entries(module))
      if (/^[A-Z_]+$/.test(name) && typeof value === 'object' && value !== null && !Array.isArray(value))
        found.push([name, Object.keys(value)]);
  }
  return found;
}

/** A sentence is said where it is named, taken out of its object by name, or its object is used by a key or as a whole. */
function isSaid(source: string, object: string, name: string): boolean {
  if (new RegExp(`\\b${object}\\.${name}\\b`).test(source)) return true;
  if (new RegExp(`\\{[^{}]*\\b${name}\\b[^{}]*\\} = ${object}\\b`).test(source)) return true;
  const imports = /^import .*$|^import \{[^}]*\} from .*$/gm;
  const declared = new RegExp(`(?:const|keyof typeof|typeof) ${object}\\b`, 'g');
  const rest = source
    .replaceAll(imports, '')
    .replaceAll(declared, '')
    .replaceAll(new RegExp(`\\} = ${object}\\b`, 'g'), '');
  return new RegExp(`\\b${object}\\b(?!\\.|\\w)`).test(rest);
}

void test('no sentence stands in the project that nobody is told', async () => {
  const source = (await texts('src/**/*.{ts,tsx}')).join('\n');
  const dead = (await sentencesOfPages()).flatMap(([object, names]) =>
    names.filter((name) => !isSaid(source, object, name)).map((name) => `${object}.${name}`),
  );
  assert.deepEqual(dead, []);
});
