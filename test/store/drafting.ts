import assert from 'node:assert/strict';
import { randomUUID } from 'node:crypto';
import { test } from 'node:test';
import type { Clock } from '#actions/action.ts';
import { changeDraft } from '#actions/change-draft.ts';
import { keepDraft } from '#actions/keep-draft.ts';
import { makeDraft } from '#actions/make-draft.ts';
import { undo } from '#actions/undo.ts';
import { checkLab } from '#db/check.ts';
import type { Lab } from '#db/database.ts';
import { readDraft, readDrafts, updateDraft } from '#db/drafts.ts';
import { dumpLab, restoreLab } from '#db/dump.ts';
import { readStock } from '#db/read-stock.ts';
import { act, CLOCK, did, fill, heldIn, refusedBy, withLab, WHO, type Store } from './lab.ts';

const LIST = 'Bag,Description,Qty\n12,4k7 1% 0805 resistor,40\n,100n 50V X7R 0805 capacitor,about 50\n';
const bytesOf = (text: string): Uint8Array => new TextEncoder().encode(text);
const on = (day: string): Clock => ({ now: () => `${day}T09:00:00.000Z` });

async function brought(lab: Lab, text = LIST, clock: Clock = CLOCK): Promise<string> {
  return (await did(makeDraft(lab, clock, { id: randomUUID(), name: 'shelf.csv', is: 'list', file: bytesOf(text) }))).draft.id;
}

async function dumped(lab: Lab): Promise<string[]> {
  return lab.read(async (tx) => Array.fromAsync(dumpLab(tx, lab.engine)));
}

/** Rules of files that were brought in and are not kept yet, on any engine the same. */
export function draftingSuite(store: Store): void {
  const rule = (name: string, fn: Parameters<typeof withLab>[1]): void =>
    void test(`${store.engine}: ${name}`, () => withLab(store, fn));

  rule('a draft keeps its bytes and what is said of it, takes no change number and is in no dump', async (lab, again) => {
    const before = await dumped(lab);
    const id = await brought(lab);
    await did(changeDraft(lab, CLOCK, id, { answers: [{ row: 3, field: 'quantity', text: '52' }], box: 'A' }));
    const other = await again();
    const kept = await other.read((tx) => readDraft(tx, id));
    await other.close();
    assert.deepEqual(
      [kept?.file, kept?.told.answers, kept?.told.box, kept?.version],
      [bytesOf(LIST), [{ row: 3, field: 'quantity', text: '52' }], 'A', 2],
    );
    assert.equal(await lab.change(), 0);
    assert.deepEqual(await dumped(lab), before);
    assert.deepEqual(await lab.read(checkLab), []);
    await withLab(store, async (source) => {
      await fill(source, 5);
      const lines = await dumped(source);
      await lab.transact((tx) => restoreLab(tx, lines));
    });
    assert.equal((await lab.read(readDrafts)).length, 1, 'a lab that is restored keeps what was brought');
  });

  rule('what is refused leaves the draft as it was; two who say something at once are both heard', async (lab) => {
    await refusedBy(makeDraft(lab, CLOCK, { id: randomUUID(), name: 'x.csv', is: 'list', file: bytesOf('') }), 'file-empty');
    assert.deepEqual(await lab.read(readDrafts), []);
    const id = await brought(lab);
    const few = { row: 3, field: 'quantity', text: 'few' };
    const why = await refusedBy(changeDraft(lab, CLOCK, id, { answers: [few], box: 'B' }), 'not-valid');
    assert.deepEqual([why['row'], why['field']], [3, 'quantity']);
    await refusedBy(changeDraft(lab, CLOCK, id, { answers: [{ ...few, row: 99 }] }), 'not-valid');
    await refusedBy(changeDraft(lab, CLOCK, id, { columns: { 9: 'value' } }), 'no-such-column');
    await refusedBy(changeDraft(lab, CLOCK, id, { columns: { 1: 'nonsense' } }), 'not-valid');
    const draft = await lab.read((tx) => readDraft(tx, id));
    assert.ok(draft);
    assert.deepEqual([draft.told.answers, draft.told.box, draft.version], [[], null, 1]);
    await Promise.all([changeDraft(lab, CLOCK, id, { box: 'B' }), changeDraft(lab, CLOCK, id, { out: [{ row: 2, out: true }] })]);
    const both = await lab.read((tx) => readDraft(tx, id));
    assert.deepEqual([both?.told.box, both?.told.out], ['B', [2]]);
    const late = await lab.transact((tx) => updateDraft(tx, draft, { told: draft.told, rows: 0, at: CLOCK.now() }));
    assert.equal(late, false, 'what was read before is not written over what came since');
  });

  rule('a draft is kept once, with the draft gone in the same step, and its act is taken back as any import', async (lab) => {
    const id = await brought(lab);
    const input = { id: randomUUID(), draft: id };
    const [kept, repeat] = await Promise.all([keepDraft(lab, CLOCK, WHO, input), keepDraft(lab, CLOCK, WHO, input)]);
    assert.ok(kept.ok && repeat.ok);
    assert.equal(Number(kept.value.repeat) + Number(repeat.value.repeat), 1, 'one of them did it');
    assert.deepEqual(
      [await heldIn(lab, 12), await heldIn(lab, 13)],
      [
        [40, 40, 40],
        [50, 0, 0],
      ],
    );
    assert.deepEqual(await lab.read(readDrafts), []);
    await refusedBy(keepDraft(lab, CLOCK, WHO, { ...input, draft: 'another' }), 'id-reused');
    await refusedBy(keepDraft(lab, CLOCK, WHO, { ...input, id: randomUUID() }), 'draft-kept');
    await did(act(lab, undo, { act: input.id }));
    assert.deepEqual((await lab.read(readStock)).bags, []);
    assert.deepEqual(await lab.read(checkLab), []);
  });

  rule('a draft that is refused when it is kept stays; one that nobody touched for 30 days goes with the next', async (lab) => {
    await fill(lab, 5);
    const clash = await brought(lab, 'Bag,Description,Qty\n1,4k7 1% 0805 resistor,40\n');
    await refusedBy(keepDraft(lab, CLOCK, WHO, { id: randomUUID(), draft: clash }), 'number-taken');
    assert.deepEqual(
      (await lab.read(readDrafts)).map(({ id }) => id),
      [clash],
    );
    const touched = await brought(lab);
    await did(changeDraft(lab, on('2026-03-20'), touched, { box: 'C' }));
    const newest = await brought(lab, LIST, on('2026-04-05'));
    assert.deepEqual(new Set((await lab.read(readDrafts)).map(({ id }) => id)), new Set([touched, newest]));
  });
}
