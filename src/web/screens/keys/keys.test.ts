import assert from 'node:assert/strict';
import { globSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { test } from 'node:test';
import { KEY_GROUPS } from '#say/en/keys-page.ts';

const WEB = join(import.meta.dirname, '..', '..');
const GROUP_OF: Readonly<Record<string, string>> = {
  find: 'A bag',
  board: 'A board',
  kit: 'A kit',
  draft: 'A file as it is read',
  leftovers: 'Leftovers',
};
const EVERYWHERE = 'Everywhere';
const PRINTED: Readonly<Record<string, string>> = {
  ' ': 'Space',
  '-': '−',
  Escape: 'Esc',
  Delete: 'Del',
  ArrowUp: 'Up',
  ArrowDown: 'Down',
};

const printed = (name: string): string => PRINTED[name] ?? name.replaceAll(/\b[a-z]\b/g, (letter) => letter.toUpperCase());

/** Keys that the pages of a folder act on, as their source says it. */
function keysIn(files: string): Set<string> {
  const found = new Set<string>();
  for (const file of globSync(files, { cwd: WEB }))
    for (const [, map = ''] of readFileSync(join(WEB, file), 'utf8').matchAll(/useKeys\(\s*(\{.*?\})(?:,\s*\w+,?\s*)?\s*\);/gs))
      for (const [, quoted, plain] of map.matchAll(/[{,\s](?:'([^']{1,10})'|([a-z]|[A-Z]\w+)): *(?:\(|[a-z])/g))
        found.add(printed(quoted ?? plain ?? ''));
  return found;
}

/** `G F` are two in a row; others beside each other are two keys. */
const listed = (group: string): Set<string> =>
  new Set(
    KEY_GROUPS.find(({ name }) => name === group)?.keys.flatMap(({ press }) => (press[0] === 'G' ? [press.join(' ')] : press)),
  );

void test('each key that a page acts on is on the page of keys', () => {
  const everywhere = listed(EVERYWHERE);
  assert.ok(keysIn('frame.tsx').size > 5);
  assert.deepEqual(
    [...keysIn('frame.tsx')].filter((key) => !everywhere.has(key)),
    [],
  );
  const missing = globSync('screens/*', { cwd: WEB }).flatMap((folder) => {
    const known = listed(GROUP_OF[folder.split(/[\\/]/).at(-1) ?? ''] ?? '');
    return [...keysIn(`${folder}/*.tsx`)]
      .filter((key) => !known.has(key) && !everywhere.has(key))
      .map((key) => `${folder} ${key}`);
  });
  assert.deepEqual(missing, []);
});

void test('each key that the page of keys lists for a page acts there', () => {
  const idle = Object.entries(GROUP_OF).flatMap(([folder, group]) => {
    const there = keysIn(`screens/${folder}/*.tsx`);
    return [...listed(group)].filter((key) => !there.has(key)).map((key) => `${group}: ${key}`);
  });
  assert.deepEqual(idle, []);
});
