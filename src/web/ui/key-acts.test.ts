import assert from 'node:assert/strict';
import { test } from 'node:test';
import { answerKey, type Begun, type KeyMap, type Press } from './key-acts.ts';

const press = (key: string, more: Partial<Press> = {}): Press => ({
  key,
  ctrlKey: false,
  metaKey: false,
  repeat: false,
  at: 0,
  field: 'none',
  presses: false,
  ...more,
});

/** Presses one after the other, and which keys acted. */
function acted(names: readonly string[], presses: readonly Press[], on = true): string[] {
  const found: string[] = [];
  const map: KeyMap = Object.fromEntries(names.map((name) => [name, () => void found.push(name)]));
  let begun: Begun | null = null;
  for (const one of presses) {
    const answer = answerKey(one, [map], begun, on);
    begun = answer.begun;
    answer.act?.();
  }
  return found;
}

void test('a held key acts once; only arrows go on', () => {
  for (const key of [' ', 'Enter', 'p', 'Escape', 'Delete', '5'])
    assert.deepEqual(acted([key], [press(key), press(key, { repeat: true }), press(key, { repeat: true })]), [key], key);
  const held = [press('Enter', { ctrlKey: true }), press('Enter', { ctrlKey: true, repeat: true })];
  assert.deepEqual(acted(['Ctrl+Enter'], held), ['Ctrl+Enter']);
  assert.deepEqual(acted(['ArrowDown'], [press('ArrowDown'), press('ArrowDown', { repeat: true })]), ['ArrowDown', 'ArrowDown']);
});

void test('what a held key would do by itself is held back too: the space bar does not scroll, Enter does not press again', () => {
  const held = press(' ', { repeat: true });
  assert.equal(answerKey(held, [{ ' ': () => assert.fail('acts once') }], null, true).prevent, true);
  assert.equal(answerKey(held, [{}], null, true).prevent, false);
  assert.equal(answerKey(press('Enter', { presses: true }), [{}], null, true).prevent, false);
  assert.equal(answerKey(press('Enter', { presses: true, repeat: true }), [{}], null, true).prevent, true);
  assert.equal(answerKey(press('Enter', { field: 'line', repeat: true }), [{}], null, true).prevent, true);
  assert.equal(answerKey(press('Enter', { field: 'text', repeat: true }), [{}], null, true).prevent, false);
});

void test('two keys in a row are one name, within their time; a held first key does not break it', () => {
  const two = [press('g'), press('g', { repeat: true, at: 500 }), press('b', { at: 900 })];
  assert.deepEqual(acted(['g b', 'b'], two), ['g b']);
  assert.deepEqual(acted(['g b', 'b'], [press('g'), press('b', { at: 5000 })]), ['b']);
});

void test('single keys are silent in a field and where they are switched off; keys with Ctrl are not', () => {
  assert.deepEqual(
    acted(['p', 'Ctrl+Enter'], [press('p', { field: 'line' }), press('Enter', { field: 'line', ctrlKey: true })]),
    ['Ctrl+Enter'],
  );
  assert.deepEqual(acted(['p', 'Enter'], [press('p'), press('Enter')], false), ['Enter']);
  assert.deepEqual(acted(['Enter', ' '], [press('Enter', { presses: true }), press(' ', { presses: true })]), []);
});

void test('of two pages or panels the newest has the key', () => {
  const found: string[] = [];
  const maps: KeyMap[] = [{ k: () => void found.push('old') }, { k: () => void found.push('new') }];
  answerKey(press('K'), maps, null, true).act?.();
  assert.deepEqual(found, ['new']);
});
