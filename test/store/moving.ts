import assert from 'node:assert/strict';
import { randomUUID } from 'node:crypto';
import { test } from 'node:test';
import { count } from '#actions/count.ts';
import { pick } from '#actions/pick.ts';
import { receive } from '#actions/receive.ts';
import { returnToBag } from '#actions/return-to-bag.ts';
import { setAside } from '#actions/set-aside.ts';
import { undo } from '#actions/undo.ts';
import { lastSeq } from '#db/ledger.ts';
import { readStock, readStockSince } from '#db/read-stock.ts';
import { act, bagOf, did, fill, heldIn, refusedBy, resistor, withLab, type Store } from './lab.ts';

/** Rules of what moves: on any engine the same. */
export function movingSuite(store: Store): void {
  const rule = (name: string, fn: Parameters<typeof withLab>[1]): void =>
    void test(`${store.engine}: ${name}`, () => withLab(store, fn));

  rule('a delivery makes bags, and adds to a bag that holds the same part', async (lab) => {
    await fill(lab, 50, 20);
    const more = await did(
      act(lab, receive, {
        items: [
          { quantity: 5, bag: 1 },
          { quantity: 7, part: resistor('4.7e3') },
        ],
      }),
    );
    assert.deepEqual(
      more.bags.map((bag) => [bag.bag, bag.onHand]),
      [
        [1, 55],
        [3, 7],
      ],
    );
    const bag = await bagOf(lab, 3);
    assert.equal(bag.part.facts.value?.value, '47e2');
    assert.equal(bag.oldest, '2026-03-01');
    assert.deepEqual(
      await refusedBy(act(lab, receive, { items: [{ quantity: 5, bag: 1, part: resistor(330) }] }), 'number-taken'),
      { number: 1 },
    );
    await refusedBy(act(lab, receive, { items: [{ quantity: 5, bag: 77 }] }), 'no-such-bag');
  });

  rule('an estimate is on hand but not sure, and nothing of it is free', async (lab) => {
    await did(act(lab, receive, { items: [{ quantity: 5000, sure: 0, part: resistor(100), holder: 'reel' }] }));
    assert.deepEqual(await heldIn(lab, 1), [5000, 0, 0]);
    await did(act(lab, pick, { bag: 1, quantity: 10 }));
    assert.deepEqual(await heldIn(lab, 1), [4990, 0, 0]);
    await did(act(lab, count, { bag: 1, total: 4100 }));
    assert.deepEqual(await heldIn(lab, 1), [4100, 4100, 4100]);
  });

  rule('the same id and body again is the same act; another body or verb under it is refused', async (lab) => {
    await fill(lab, 50);
    const id = randomUUID();
    const first = await did(act(lab, pick, { id, bag: 1, quantity: 3 }));
    const again = await did(act(lab, pick, { id, bag: 1, quantity: 3 }));
    assert.deepEqual(again, { ...first, repeat: true });
    await refusedBy(act(lab, pick, { id, bag: 1, quantity: 4 }), 'id-reused');
    await refusedBy(act(lab, returnToBag, { id, bag: 1, quantity: 3 }), 'id-reused');
    assert.equal((await bagOf(lab, 1)).onHand, 47);
  });

  rule('a refused act leaves nothing behind, not even a change number', async (lab) => {
    await fill(lab, 12);
    const before = await lab.read(readStock);
    assert.deepEqual(await refusedBy(act(lab, pick, { bag: 1, quantity: 15 }), 'not-enough'), { bag: 1, onHand: 12, asked: 15 });
    await refusedBy(act(lab, pick, { bag: 1, quantity: 1.5 }), 'not-whole');
    await refusedBy(act(lab, pick, { bag: 1, quantity: 0 }), 'not-positive');
    await refusedBy(act(lab, pick, { id: 'no uuid', bag: 1, quantity: 1 }), 'not-valid');
    await refusedBy(
      act(lab, receive, {
        items: [
          { quantity: 3, part: resistor(1), bag: 9 },
          { quantity: 3, part: resistor(2), bag: 9 },
        ],
      }),
      'number-taken',
    );
    assert.deepEqual(await lab.read(readStock), before);
  });

  rule(
    'what is in the hand is in the hand: the pick and its correction are one act, and the bag is to be counted',
    async (lab) => {
      await fill(lab, 12);
      const picked = await did(act(lab, pick, { bag: 1, quantity: 15, inHand: true }));
      assert.deepEqual([picked.corrected, picked.onHand, picked.warnings.map((one) => one.code)], [3, 0, ['on-count-list']]);
      assert.equal((await bagOf(lab, 1)).toCount, true);
      await did(act(lab, undo, { act: picked.act }));
      assert.deepEqual(await heldIn(lab, 1), [12, 12, 12]);
      assert.equal((await bagOf(lab, 1)).toCount, false);
    },
  );

  rule('a count keeps what moved after the screen was read', async (lab) => {
    await fill(lab, 50);
    const sawSeq = await lab.read(lastSeq);
    await did(act(lab, pick, { bag: 1, quantity: 5 }));
    const counted = await did(act(lab, count, { bag: 1, total: 48, sawSeq }));
    assert.deepEqual([counted.difference, counted.onHand, counted.sure], [-2, 43, 43]);
    await refusedBy(act(lab, count, { bag: 1, total: 48, sawSeq: 99 }), 'out-of-range');
  });

  rule('a count that later picks contradict leaves the bag empty and to be counted', async (lab) => {
    await fill(lab, 50);
    const sawSeq = await lab.read(lastSeq);
    await did(act(lab, pick, { bag: 1, quantity: 30 }));
    const counted = await did(act(lab, count, { bag: 1, total: 20, sawSeq }));
    assert.deepEqual([counted.onHand, counted.warnings.map((one) => one.code)], [0, ['on-count-list']]);
  });

  rule('an undo is one act of the same kind, once, and no undo of an undo', async (lab) => {
    await fill(lab, 50);
    const picked = await did(act(lab, pick, { bag: 1, quantity: 20 }));
    const undone = await did(act(lab, undo, { act: picked.act }));
    assert.deepEqual([undone.kind, undone.bags], ['picked', [{ bag: 1, onHand: 50, sure: 50, free: 50 }]]);
    await refusedBy(act(lab, undo, { act: picked.act }), 'undone-already');
    await refusedBy(act(lab, undo, { act: undone.act }), 'not-undoable');
    await refusedBy(act(lab, undo, { act: randomUUID() }), 'no-such-act');
  });

  rule('an undo that would leave a bag below zero is refused, with the later movements named', async (lab) => {
    const received = await fill(lab, 50);
    const picked = await did(act(lab, pick, { bag: 1, quantity: 20 }));
    assert.deepEqual(await refusedBy(act(lab, undo, { act: received }), 'below-zero'), {
      bag: 1,
      later: 'picked:-20',
      acts: picked.act,
    });
    await did(act(lab, undo, { act: picked.act }));
    await did(act(lab, undo, { act: received }));
    assert.deepEqual((await lab.read(readStock)).bags, []);
    assert.deepEqual((await lab.read(readStock)).boxes, [], 'the box that it made is gone as well');
    await fill(lab, 8);
    assert.equal((await bagOf(lab, 1)).onHand, 8, 'the number was free again');
  });

  rule('taking back what a later count confirmed puts the bag on the count list', async (lab) => {
    await fill(lab, 50);
    const picked = await did(act(lab, pick, { bag: 1, quantity: 5 }));
    await did(act(lab, count, { bag: 1, total: 45 }));
    const undone = await did(act(lab, undo, { act: picked.act }));
    assert.deepEqual(
      undone.warnings.map((one) => one.code),
      ['on-count-list'],
    );
  });

  rule('an undo that warns of the count list leaves the bag on it, though the act had put it there', async (lab) => {
    await fill(lab, 12);
    const sawSeq = await lab.read(lastSeq);
    const picked = await did(act(lab, pick, { bag: 1, quantity: 15, inHand: true }));
    await did(act(lab, count, { bag: 1, total: 3, sawSeq }));
    const undone = await did(act(lab, undo, { act: picked.act }));
    assert.deepEqual([undone.warnings.map((one) => one.code), (await bagOf(lab, 1)).toCount], [['on-count-list'], true]);
  });

  rule('what happened on a day that does not exist is refused', async (lab) => {
    await fill(lab, 12);
    const why = await refusedBy(act(lab, pick, { bag: 1, quantity: 1, happenedAt: '2026-02-30T09:00:00Z' }), 'not-valid');
    assert.equal(why['field'], 'happenedAt');
  });

  rule('a bag that is astray is found by hand or by a count', async (lab) => {
    await fill(lab, 5);
    const lost = await did(act(lab, setAside, { bag: 1, state: 'astray' }));
    assert.equal((await bagOf(lab, 1)).state, 'astray');
    await refusedBy(act(lab, setAside, { bag: 1, state: 'astray' }), 'nothing-to-do');
    await did(act(lab, undo, { act: lost.act }));
    assert.equal((await bagOf(lab, 1)).state, 'sound');
    await did(act(lab, setAside, { bag: 1, state: 'astray' }));
    await did(act(lab, count, { bag: 1, total: 4 }));
    assert.deepEqual([(await bagOf(lab, 1)).state, (await bagOf(lab, 1)).onHand], ['sound', 4]);
  });

  rule('followers read only what changed after the number that they know', async (lab) => {
    const received = await fill(lab, 5, 6, 7);
    const first = await lab.read(readStock);
    const picked = await did(act(lab, pick, { bag: 2, quantity: 1 }));
    const then = await lab.read((tx) => readStockSince(tx, first.change));
    assert.deepEqual([then.change, then.bags.map((bag) => bag.number), then.gone], [picked.change, [2], []]);
    await did(act(lab, undo, { act: picked.act }));
    await did(act(lab, undo, { act: received }));
    const last = await lab.read((tx) => readStockSince(tx, then.change));
    assert.deepEqual([last.bags, last.gone.toSorted()], [[], first.bags.map((bag) => bag.id).toSorted()]);
  });
}
