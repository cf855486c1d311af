import assert from 'node:assert/strict';
import { test } from 'node:test';
import * as fc from 'fast-check';
import { apply, countTo, opposite, putIn, raiseTo, takeOut, type Balance, type Move } from './moves.ts';

const SEED = 20260301;
const balanceOf = fc
  .tuple(fc.nat(1000), fc.nat(1000))
  .map(([onHand, sure]): Balance => ({ onHand, sure: Math.min(sure, onHand) }));

function sound({ onHand, sure }: Balance): boolean {
  return sure >= 0 && sure <= onHand;
}

void test('what is taken counts against what was sure, since nobody knows the rest', () => {
  assert.deepEqual(takeOut({ onHand: 50, sure: 30 }, 5), { delta: -5, sureDelta: -5 });
  assert.deepEqual(takeOut({ onHand: 50, sure: 3 }, 5), { delta: -5, sureDelta: -3 });
});

void test('a count keeps what moved after it was taken', () => {
  assert.deepEqual(countTo({ onHand: 45, sure: 45 }, 50, 48), { delta: -2, sureDelta: -2, contradicts: false });
  assert.deepEqual(countTo({ onHand: 20, sure: 20 }, 50, 20), { delta: -20, sureDelta: -20, contradicts: true });
  assert.deepEqual(countTo({ onHand: 5000, sure: 0 }, 5000, 4100), { delta: -900, sureDelta: 4100, contradicts: false });
});

void test(`no move leaves less than nothing, nor more sure than there is (seed ${SEED})`, () => {
  const amount = fc.nat(1500);
  fc.assert(
    fc.property(balanceOf, amount, amount, (held, quantity, seen) => {
      const moves: Move[] = [putIn(quantity), putIn(quantity, Math.floor(quantity / 2)), countTo(held, seen, quantity)];
      if (quantity <= held.onHand) moves.push(takeOut(held, quantity));
      else moves.push(raiseTo(held, quantity));
      return moves.every((move) => sound(apply(held, move)));
    }),
    { seed: SEED },
  );
});

void test(`the opposite of a move leads back, or is refused below zero (seed ${SEED})`, () => {
  fc.assert(
    fc.property(balanceOf, fc.nat(1000), (held, quantity) => {
      const taken = takeOut(held, Math.min(quantity, held.onHand));
      const back = opposite(apply(held, taken), taken);
      assert.ok(back);
      assert.deepEqual(apply(apply(held, taken), back), held);
      const refused = opposite({ onHand: Math.max(0, quantity - 1), sure: 0 }, putIn(quantity + 1));
      assert.equal(refused, null);
    }),
    { seed: SEED },
  );
});
