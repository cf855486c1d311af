import assert from 'node:assert/strict';
import { test } from 'node:test';
import { unlessMoved } from './address.ts';
import { afterAct, type BoardWords } from './screens/board/place.ts';
import { afterPick } from './screens/kit/walk.ts';
import { afterBooking } from './screens/kit-phone/phone.ts';

void test('an answer changes an address only where nothing else was chosen while it was awaited', () => {
  const gone = (): { a?: string; b?: string } => ({});
  assert.deepEqual(unlessMoved({ a: '1', b: '2' }, { a: '1' }, ['a'], gone), {});
  assert.deepEqual(unlessMoved({ a: '9', b: '2' }, { a: '1' }, ['a'], gone), { a: '9', b: '2' });
  assert.deepEqual(unlessMoved({ a: '1' }, {}, ['a'], gone), { a: '1' });
});

void test('after an act on a line the bag beside it goes, unless another line or bag was chosen meanwhile; the boards stay as they are now', () => {
  const before: BoardWords = { row: '3', bag: '12', show: 'others', boards: '4' };
  assert.deepEqual(afterAct({ ...before, boards: '7' }, before), { row: '3', boards: '7' });
  assert.deepEqual(afterAct({ row: '5', boards: '4' }, before), { row: '5', boards: '4' });
  assert.deepEqual(afterAct({ ...before, bag: '14' }, before), { ...before, bag: '14' });
});

void test('after a pick the next stop is meant, unless another was chosen meanwhile', () => {
  const next = { id: '0000000a-0000-4000-8000-000000000000' };
  assert.deepEqual(afterPick({ take: 'one', show: 'fewer' }, { take: 'one', show: 'fewer' }, next), { take: '0000000a' });
  assert.deepEqual(afterPick({}, {}, null), {});
  assert.deepEqual(afterPick({ take: 'other' }, { take: 'one' }, next), { take: 'other' });
  assert.deepEqual(afterPick({ take: 'one', show: 'phone' }, { take: 'one' }, next), { take: 'one', show: 'phone' });
});

void test('at the boxes, what was skipped while a pick was booked stays skipped', () => {
  assert.deepEqual(afterBooking({ take: 'one', skipped: 'two' }, { take: 'one' }), { skipped: 'two' });
  assert.deepEqual(afterBooking({ take: 'one', hand: '' }, { take: 'one' }), { take: 'one', hand: '' });
});
