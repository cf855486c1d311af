import assert from 'node:assert/strict';
import { test } from 'node:test';
import { dateTrouble, labDay, utcInstant } from './checks.ts';

void test('a plain date is a day that exists, as written in the standard (ISO 8601)', () => {
  assert.deepEqual([dateTrouble('due', '2026-02-28'), dateTrouble('due', '2028-02-29')], [null, null]);
  for (const text of ['2026-02-30', '2026-02-29', '2026-13-01', '26-01-01', '2026-1-1', '2026-01-01T00:00', ''])
    assert.equal(dateTrouble('due', text)?.code, 'not-valid', text);
});

void test('an instant has its zone and a day that exists, and is kept in UTC', () => {
  assert.equal(utcInstant('2026-03-01T01:00+02:00'), '2026-02-28T23:00:00.000Z');
  assert.equal(utcInstant('2026-03-01T09:00:00.1234Z'), '2026-03-01T09:00:00.123Z');
  for (const text of [
    '2026-02-30T09:00:00Z',
    '2026-03-01T24:30:00Z',
    '2026-03-01T09:00',
    '2026-03-01',
    'now',
    '2026-03-01T09:00[Europe/Oslo]',
  ])
    assert.equal(utcInstant(text), null, text);
});

void test('today is the day where the lab is, not in Greenwich', () => {
  assert.equal(labDay('2026-03-01T23:30:00Z', 'Europe/Oslo'), '2026-03-02');
  assert.equal(labDay('2026-03-01T23:30:00+02:00', 'America/Lima'), '2026-03-01');
});
