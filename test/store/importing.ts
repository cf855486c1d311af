import assert from 'node:assert/strict';
import { test } from 'node:test';
import { importList, previewImport } from '#actions/import-list.ts';
import { pick } from '#actions/pick.ts';
import { setAside } from '#actions/set-aside.ts';
import { undo } from '#actions/undo.ts';
import { checkLab } from '#db/check.ts';
import { readStock } from '#db/read-stock.ts';
import { act, bagOf, did, fill, heldIn, refusedBy, resistor, row, withLab, type Store } from './lab.ts';

const LIST = [
  row(2, resistor(100), { location: '12', quantity: 40 }),
  row(3, resistor(100), { location: 'tin on the window sill', quantity: 7, supplier: 'Nordlicht Parts' }),
  row(4, resistor(220), {
    quantity: null,
    doubts: [{ field: 'quantity', code: 'quantity-estimate', args: { text: 'about 50', taken: 50 } }],
  }),
  row(5, resistor(330), { location: ' 007 ', quantity: null }),
  row(6, { kind: 'not-a-part', facts: {}, text: 'page 1 of 3' }, { quantity: null }),
];

/** Rules of taking a list in, on any engine the same. */
export function importingSuite(store: Store): void {
  const rule = (name: string, fn: Parameters<typeof withLab>[1]): void =>
    void test(`${store.engine}: ${name}`, () => withLab(store, fn));

  rule('a list becomes bags: its whole numbers are theirs, the others get the next ones', async (lab) => {
    const preview = await lab.read((tx) => previewImport(tx, { rows: LIST }));
    const done = await did(act(lab, importList, { rows: LIST, source: 'shelf.csv', box: 'A' }));
    assert.deepEqual(
      [done.bags, done.parts, done.pieces, done.first, done.last, done.toCount, done.skipped],
      [4, 3, 97, 7, 14, [7], [6]],
    );
    assert.deepEqual(
      preview.bags.map((bag) => bag.number),
      [12, 13, 14, 7],
      'the dry run says just that',
    );
    assert.deepEqual(preview.duplicates, [{ row: 3, of: 2 }]);
    assert.deepEqual([(await bagOf(lab, 13)).place, (await bagOf(lab, 13)).box], ['tin on the window sill', 'A']);
    assert.deepEqual(await heldIn(lab, 14), [50, 0, 0], 'an estimate is not sure');
    assert.deepEqual([(await bagOf(lab, 7)).toCount, (await bagOf(lab, 7)).onHand], [true, 0], 'no quantity: to be counted');
    assert.equal((await bagOf(lab, 12)).partId, (await bagOf(lab, 13)).partId, 'one part, two bags');
    assert.deepEqual(await lab.read(checkLab), []);
  });

  rule('a number that is taken is refused with its row, and nothing is taken in', async (lab) => {
    await fill(lab, 5);
    const before = await lab.read(readStock);
    const rows = [row(2, resistor(1)), row(3, resistor(2), { location: '1' })];
    assert.deepEqual(await refusedBy(act(lab, importList, { rows, source: 'x.csv' }), 'number-taken'), {
      number: 1,
      row: 3,
      more: 0,
    });
    const twice = [row(2, resistor(1), { location: '9' }), row(3, resistor(2), { location: '9' })];
    assert.deepEqual(await refusedBy(act(lab, importList, { rows: twice, source: 'x.csv' }), 'number-taken'), {
      number: 9,
      row: 3,
      more: 0,
    });
    await refusedBy(act(lab, importList, { rows: [], source: 'x.csv' }), 'nothing-to-do');
    assert.deepEqual(await lab.read(readStock), before);
  });

  rule('an import is taken back whole while nothing else touched it, and its numbers are free again', async (lab) => {
    const done = await did(act(lab, importList, { rows: LIST, source: 'shelf.csv' }));
    const picked = await did(act(lab, pick, { bag: 12, quantity: 1 }));
    const why = await refusedBy(act(lab, undo, { act: done.act }), 'not-undoable');
    assert.deepEqual([why['why'], why['bags'], why['by']], ['touched', '12', 'picked']);
    await did(act(lab, undo, { act: picked.act }));
    const lost = await did(act(lab, setAside, { bag: 13, state: 'astray' }));
    const aside = await refusedBy(act(lab, undo, { act: done.act }), 'not-undoable');
    assert.deepEqual([aside['why'], aside['bags'], aside['by']], ['touched', '13', 'set-aside']);
    await did(act(lab, undo, { act: lost.act }));
    await did(act(lab, undo, { act: done.act }));
    assert.deepEqual((await lab.read(readStock)).bags, []);
    await did(act(lab, importList, { rows: LIST, source: 'shelf.csv' }));
    assert.equal((await bagOf(lab, 12)).onHand, 40);
    assert.deepEqual(await lab.read(checkLab), []);
  });
}
