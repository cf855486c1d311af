import assert from 'node:assert/strict';
import { test } from 'node:test';
import { sayDay, sayMoment } from './when.ts';

void test('a day is said as people say it, beside the day of who reads', () => {
  const now = new Date(2026, 5, 11, 9, 30);
  const at = (...when: [number, number, number, number, number]): string => new Date(...when).toISOString();
  assert.equal(sayDay(at(2026, 5, 11, 0, 1), now), 'today');
  assert.equal(sayDay(at(2026, 5, 10, 23, 59), now), 'yesterday');
  assert.equal(sayDay(at(2026, 0, 5, 12, 0), now), '5 Jan');
  assert.equal(sayDay(at(2025, 11, 31, 12, 0), now), '31 Dec 2025');
  assert.equal(sayMoment(at(2026, 5, 11, 8, 5), now), 'today 08:05');
});
