import assert from 'node:assert/strict';
import { test } from 'node:test';
import type { BuildView } from '#api/kits.ts';
import { kitBeside, kitGroups, kitToCarryOn } from './kits.ts';

const build = (id: string, state: BuildView['state']): BuildView => ({
  id,
  name: id,
  board: 'Owl',
  revision: '1',
  boards: 2,
  made: null,
  state,
  priority: 5,
  due: null,
  buildable: 2,
  proof: 'optimal',
  reserved: '2026-11-01T10:00:00.000Z',
  takes: 4,
  open: 4,
  short: 0,
  left: 0,
  returned: 0,
});

void test('kits stand by what they wait for, and a group without kits is left out', () => {
  const groups = kitGroups([build('a', 'planned'), build('b', 'built'), build('c', 'picking')]);
  assert.deepEqual(
    groups.map(({ group, builds }) => [group, builds.map(({ id }) => id)]),
    [
      ['open', ['a', 'c']],
      ['soldered', ['b']],
    ],
  );
});

void test('a soldered kit waits for its leftovers until some came back', () => {
  const soldered = build('a', 'built');
  const groups = kitGroups([soldered, { ...soldered, id: 'b', left: 6 }, { ...soldered, id: 'c', left: 2, returned: 4 }]);
  assert.deepEqual(
    groups.map(({ group, builds }) => [group, builds.map(({ id }) => id)]),
    [
      ['leftovers', ['b']],
      ['soldered', ['a', 'c']],
    ],
  );
});

void test('one goes on with the kit that is being picked, else with the first that has its bags', () => {
  assert.equal(kitToCarryOn([build('a', 'reserved'), build('b', 'picking')])?.id, 'b');
  assert.equal(kitToCarryOn([build('a', 'planned'), build('b', 'reserved')])?.id, 'b');
  assert.equal(kitToCarryOn([build('a', 'planned'), build('b', 'built')]), null);
});

void test('the chosen kit stays chosen when the list moves under it', () => {
  const [a, b, c] = [build('a', 'picking'), build('b', 'reserved'), build('c', 'planned')];
  assert.equal(kitBeside([a, b, c], null, 0)?.id, 'a');
  assert.equal(kitBeside([a, b, c], null, 1)?.id, 'b');
  assert.equal(kitBeside([c, a, b], 'b', 0)?.id, 'b');
  assert.equal(kitBeside([c, a, b], 'a', -1)?.id, 'c');
  assert.equal(kitBeside([a, b], 'b', 1)?.id, 'b');
  assert.equal(kitBeside([a, b], 'gone', 0)?.id, 'a');
  assert.equal(kitBeside([], 'a', 1), null);
});
