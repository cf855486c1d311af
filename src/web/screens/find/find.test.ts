import assert from 'node:assert/strict';
import { test } from 'node:test';
import type { FoundBag, Gloss } from '#api/bags.ts';
import { answerOf, groupsOf, rowsOf, standsAs, stepFrom, whyOf, type GroupName } from './find.ts';

const bag = (number: number, onHand: number, group: GroupName, more: Partial<FoundBag> = {}): FoundBag => ({
  bag: number,
  box: 'A',
  place: null,
  code: 'R-0805-4K7-F',
  text: '4k7',
  said: { name: '4.7 kΩ ±1 %', rest: 'Resistor 0805' },
  unit: 'piece',
  state: 'sound',
  onHand,
  free: onHand,
  group,
  full: group === 'typed',
  why: ['value 4.7 kΩ'],
  ...more,
});
const READ: readonly Gloss[] = [
  { typed: '4k7', means: '4.7 kΩ resistor', how: 'read' },
  { typed: 'zyx', means: 'in no bag', how: 'unread' },
  { typed: 'not given', means: 'any tolerance', how: 'filled' },
];
const read = [...READ];

void test('the answer counts the bags that hold it and adds up what is in them', () => {
  const found = [bag(114, 240, 'typed'), bag(233, 358, 'typed'), bag(9, 118, 'package')];
  assert.deepEqual(answerOf({ read, found }), { title: '2 bags hold it: 598 on hand.', why: null });
  assert.equal(answerOf({ read, found: [bag(1, 1500, 'typed', { unit: 'mm' })] }).title, '1 bag holds it: 1500\u202fmm on hand.');
});

void test('pieces and millimetres are not added up, and a list that was cut says so', () => {
  const mixed = [bag(1, 10, 'typed'), bag(2, 20, 'typed', { unit: 'mm' })];
  assert.equal(answerOf({ read, found: mixed }).title, '2 bags hold it.');
  const many = Array.from({ length: 61 }, (_, at) => bag(at + 1, 1, 'typed'));
  assert.equal(answerOf({ read, found: many }).title, 'More than 60 bags hold it.');
});

void test('where nothing holds it, the answer says what was asked and what is near', () => {
  const found = [bag(9, 118, 'package'), bag(3, 4, 'near'), bag(4, 4, 'near'), bag(17, 0, 'exhausted')];
  assert.deepEqual(answerOf({ read, found }), {
    title: 'No bag holds 4.7 kΩ resistor, “zyx”.',
    why: '1 bag has it in another package; 2 bags are near it; 1 bag of it is exhausted.',
  });
  assert.equal(answerOf({ read, found: [] }).why, 'Nothing is near it either.');
});

void test('groups stand in their order and walk as one list', () => {
  const groups = groupsOf([bag(1, 0, 'exhausted'), bag(4, 2, 'near'), bag(2, 3, 'typed'), bag(5, 3, 'typed')]);
  assert.deepEqual(rowsOf(groups), [2, 5, 4, 1]);
  assert.equal(stepFrom([2, 5, 4], null, 1), 2);
  assert.equal(stepFrom([2, 5, 4], null, -1), 4);
  assert.equal(stepFrom([2, 5, 4], 5, 1), 4);
  assert.equal(stepFrom([2, 5, 4], 4, 1), null);
  assert.equal(stepFrom([2, 5, 4], 99, 1), 2, 'a bag that is not in the list: from its head');
  assert.equal(stepFrom([], null, 1), null);
});

void test('why stands only where it is not just what was typed; what can not be taken says so', () => {
  assert.equal(whyOf(bag(1, 1, 'typed')), '');
  assert.equal(whyOf(bag(1, 1, 'typed', { full: false })), 'value 4.7 kΩ');
  assert.equal(
    whyOf(bag(1, 1, 'near', { why: ['value 3.9 kΩ, near 4.7 kΩ', 'package 0805'] })),
    'value 3.9 kΩ, near 4.7 kΩ, package 0805',
  );
  assert.equal(standsAs(bag(1, 0, 'exhausted')), 'exhausted');
  assert.equal(standsAs(bag(1, 9, 'typed', { state: 'astray' })), 'astray');
  assert.equal(standsAs(bag(1, 9, 'typed')), null);
});
