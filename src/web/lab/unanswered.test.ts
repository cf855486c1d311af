import assert from 'node:assert/strict';
import { test } from 'node:test';
import { Unanswereds } from './unanswered.ts';

const ids = (): (() => string) => {
  let next = 0;
  return () => `id-${(next += 1)}`;
};

void test('an act that got no answer is sent again as it was, whatever the page learned meanwhile', () => {
  const all = new Unanswereds();
  const newId = ids();
  const first = all.next('/api/movements', { kind: 'counted', bag: 23, counted: 471, sawSeq: 9 }, newId);
  all.lost('/api/movements', first);
  const again = all.next('/api/movements', { kind: 'counted', bag: 23, counted: 471, sawSeq: 11 }, newId);
  assert.deepEqual(again, first);
  all.answered('/api/movements', again.body);
  assert.equal(all.next('/api/movements', { kind: 'counted', bag: 23, counted: 471, sawSeq: 11 }, newId).id, 'id-2');
});

void test('a changed act goes under the id that was sent before, so that the lab refuses it where the first one had arrived', () => {
  const all = new Unanswereds();
  const newId = ids();
  all.lost('/api/movements', all.next('/api/movements', { kind: 'picked', bag: 23, quantity: 4 }, newId));
  assert.deepEqual(all.next('/api/movements', { kind: 'picked', bag: 23, quantity: 5 }, newId), {
    id: 'id-1',
    body: { kind: 'picked', bag: 23, quantity: 5 },
  });
  assert.equal(
    all.next('/api/movements', { kind: 'picked', bag: 40, quantity: 4 }, newId).id,
    'id-2',
    'another bag is another act',
  );
});

void test('a new bag keeps the number that it was sent with, though the next free one moved on', () => {
  const all = new Unanswereds();
  const newId = ids();
  const first = all.next('/api/bags', { says: '9k76 1% 0805', quantity: 50, bag: 273 }, newId);
  all.lost('/api/bags', first);
  assert.deepEqual(all.next('/api/bags', { says: '9k76 1% 0805', quantity: 50, bag: 274 }, newId), first);
});

void test('pieces in nested picks are compared without what each page saw', () => {
  const all = new Unanswereds();
  const newId = ids();
  const first = all.next('/api/kits/a/picks', { picks: [{ take: 't', quantity: 3, saw: 0 }] }, newId);
  all.lost('/api/kits/a/picks', first);
  assert.deepEqual(all.next('/api/kits/a/picks', { picks: [{ take: 't', quantity: 3, saw: 3 }] }, newId), first);
});
