import assert from 'node:assert/strict';
import { test } from 'node:test';
import { refusalText } from './refusals.ts';

void test('a refusal says what is, and the way on', () => {
  const text = refusalText({ code: 'not-enough', args: { bag: 12, onHand: 12, asked: 15 } });
  assert.match(text, /^Bag 12 has 12 on hand, 15 were asked\. Take 12 or fewer; or, if you hold 15 in your hand, say so/);
});

void test('later movements and stale bags are named with their figures', () => {
  assert.match(
    refusalText({ code: 'below-zero', args: { bag: 3, later: 'picked:-5, returned:2' } }),
    /later it was picked −5, returned \+2\./,
  );
  assert.match(
    refusalText({ code: 'plan-stale', args: { bags: '3, 4', planned: '9, 2', free: '5, 0' } }),
    /bag 3 has 5 free, 9 planned; bag 4 has 0 free, 2 planned\./,
  );
  assert.match(
    refusalText({ code: 'not-undoable', args: { act: 'a', why: 'touched', bags: '3, 4', by: 'picked, build' } }),
    /used since \(picked, promised to a build; bags 3, 4\)/,
  );
});
