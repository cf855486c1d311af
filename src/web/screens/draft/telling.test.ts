import assert from 'node:assert/strict';
import { test } from 'node:test';
import type { DraftChange } from '#api/drafts.ts';
import { Unanswered } from '../../lab/ask.ts';
import { mergeChanges, Telling } from './telling.ts';

const answer = (row: number, text: string | null): DraftChange => ({ answers: [{ row, field: 'value', text }] });

void test('of two words about the same thing the later one holds, and words about other things stay', () => {
  const both = mergeChanges(
    { ...answer(2, '4.7 nF'), columns: { '1': 'refs' } },
    { ...answer(2, '4.7 µF'), columns: { '2': 'value' } },
  );
  assert.deepEqual(both.answers, [{ row: 2, field: 'value', text: '4.7 µF' }]);
  assert.deepEqual(both.columns, { '1': 'refs', '2': 'value' });
  assert.equal(mergeChanges(answer(3, null), answer(2, 'x')).answers?.length, 2);
});

void test('a word that is taken back is not told beside its answer, and an answer after it is told alone', () => {
  const back: DraftChange = { forget: [{ row: 2, field: 'value' }] };
  assert.deepEqual(JSON.parse(JSON.stringify(mergeChanges(answer(2, 'x'), back))), back);
  assert.deepEqual(JSON.parse(JSON.stringify(mergeChanges(back, answer(2, 'x')))), answer(2, 'x'));
});

void test('what could not be told goes with the next word, and nothing is told twice', async () => {
  const got: DraftChange[] = [];
  let away = true;
  const telling = new Telling(async (change) => {
    if (away) throw new Unanswered({ kind: 'away' });
    got.push(change);
  });
  assert.equal(await telling.tell(answer(2, 'a')), false);
  assert.deepEqual(telling.snapshot().held, answer(2, 'a'));
  away = false;
  assert.equal(await telling.tell(answer(3, 'b')), true);
  assert.deepEqual(
    got.map(({ answers }) => answers?.map(({ row }) => row)),
    [[2, 3]],
  );
  assert.deepEqual(telling.snapshot(), { sending: false, held: null, trouble: null });
});

void test('what the lab refuses is said and not told again', async () => {
  const problem = { type: 't', title: 't', status: 422, detail: 'No such column.', code: 'no-such-column' };
  const got: DraftChange[] = [];
  const telling = new Telling(async (change) => {
    if (change.columns) throw new Unanswered({ kind: 'refused', problem });
    got.push(change);
  });
  assert.equal(await telling.tell({ columns: { '9': 'refs' } }), false);
  assert.deepEqual(telling.snapshot().trouble, { kind: 'refused', problem });
  assert.equal(await telling.tell(answer(2, 'a')), true);
  assert.deepEqual(got, [answer(2, 'a')]);
});

void test('what the lab refuses keeps no later word from the draft, and the refusal stays said', async () => {
  const problem = { type: 't', title: 't', status: 422, detail: 'No such column.', code: 'no-such-column' };
  const got: DraftChange[] = [];
  const telling = new Telling(async (change) => {
    await new Promise((wake) => setTimeout(wake, 5));
    if (change.columns) throw new Unanswered({ kind: 'refused', problem });
    got.push(change);
  });
  const first = telling.tell({ columns: { '9': 'refs' } });
  const second = telling.tell(answer(2, 'a'));
  assert.equal(await first, false);
  assert.equal(await second, true);
  assert.deepEqual(got, [answer(2, 'a')]);
  assert.deepEqual(telling.snapshot(), { sending: false, held: null, trouble: { kind: 'refused', problem } });
});

void test('words that come while one is on its way wait for it and keep their order', async () => {
  const got: DraftChange[] = [];
  const telling = new Telling(async (change) => {
    await new Promise((wake) => setTimeout(wake, 5));
    got.push(change);
  });
  await Promise.all([telling.tell({ box: 'A' }), telling.tell({ box: 'B' }), telling.tell({ box: 'C' })]);
  assert.deepEqual(
    got.map(({ box }) => box),
    ['A', 'C'],
  );
});
