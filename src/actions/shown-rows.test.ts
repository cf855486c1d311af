import assert from 'node:assert/strict';
import { test } from 'node:test';
import type { ReadRow } from '#core/bom/bom.ts';
import { shownRows } from './shown-rows.ts';

const row = (number: number, doubted = false): ReadRow => ({
  row: number,
  refs: [],
  quantity: 1,
  fitted: true,
  part: { kind: 'other', facts: {}, text: '' },
  location: null,
  supplier: null,
  doubts: doubted ? [{ field: 'kind', code: 'kind-unknown', args: { text: '' } }] : [],
});
const numbers = (rows: readonly ReadRow[]): number[] => rows.map((one) => one.row);
const NOTHING = { answers: [], out: [] };

void test('a short list is shown whole, in the order of the file', () => {
  const rows = [row(2), row(3, true), row(4)];
  assert.deepEqual(shownRows(rows, NOTHING, new Set([4]), 2), { rows, more: 0, moreDoubted: 0 });
});

void test('of a long list doubts, what was said and the first clear rows are shown, and the rest is counted', () => {
  const rows = [row(2), row(3), row(4), row(5, true), row(6, true), row(7, true), row(8), row(9, true)];
  const told = { answers: [{ row: 8, field: 'value', text: null }], out: [9] };
  const shown = shownRows(rows, told, new Set(), 2);
  assert.deepEqual([numbers(shown.rows), shown.more, shown.moreDoubted], [[2, 3, 5, 6, 8, 9], 1, 1]);
});

void test('a number that is taken is shown before any doubt, since it stops the list', () => {
  const shown = shownRows([row(2, true), row(3, true), row(4)], NOTHING, new Set([4]), 1);
  assert.deepEqual([numbers(shown.rows), shown.more, shown.moreDoubted], [[4], 0, 2]);
});
