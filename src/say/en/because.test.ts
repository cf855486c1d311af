import assert from 'node:assert/strict';
import { test } from 'node:test';
import { sayBecause } from './because.ts';

void test('facts are called by names that fit an English sentence', () => {
  assert.equal(sayBecause({ code: 'same', args: { fact: 'pins', has: '6' } }), 'the number of pins is the same (6)');
  assert.equal(
    sayBecause({ code: 'differs', args: { fact: 'variant', has: 'pg9', asked: 'pg7' } }),
    'the description differs (bag: pg9, asked: pg7)',
  );
  assert.equal(
    sayBecause({ code: 'nearest', args: { bag: 7, fact: 'polarised', has: 'yes', asked: 'no' } }),
    'the nearest is bag 7 (polarity: polarised, asked: not polarised)',
  );
  assert.equal(
    sayBecause({ code: 'differs', args: { fact: 'voltage-kind', has: 'none', asked: 'ac' } }),
    'the kind of voltage differs (bag: not stated, asked: AC)',
  );
  assert.equal(
    sayBecause({ code: 'not-stated', args: { fact: 'variant', asked: 'shielded' } }),
    'the bag does not say “shielded”',
  );
  assert.equal(sayBecause({ code: 'not-asked', args: { fact: 'variant', has: 'tall' } }), 'the line does not ask for “tall”');
});

void test('a quantity of which nothing is sure is about so many', () => {
  assert.equal(sayBecause({ code: 'estimate', args: { sure: 0, onHand: 90 } }), 'about 90, not counted');
  assert.equal(
    sayBecause({ code: 'estimate', args: { sure: 40, onHand: 90 } }),
    'how many there are is an estimate: 40 sure of 90',
  );
});

void test('the letter of a fuse is its speed; the class of a capacitor is one of safety', () => {
  assert.match(sayBecause({ code: 'differs', args: { fact: 'safety', has: 'F', asked: 'T' } }), /the speed differs/);
  assert.match(sayBecause({ code: 'differs', args: { fact: 'safety', has: 'X1', asked: 'X2' } }), /the safety class differs/);
});
