import assert from 'node:assert/strict';
import { test } from 'node:test';
import { glossPart } from '#core/part/gloss.ts';
import { readPart } from '#core/part/read-part.ts';
import { syntheticStock } from '../../../bench/synthetic-stock.ts';
import { sayGloss } from './gloss.ts';

function gloss(text: string): string[] {
  const { part, doubts } = readPart(text);
  return sayGloss(glossPart(text, part, doubts), part.kind).map(({ typed, means, how }) =>
    `${typed} > ${means}${how === 'read' ? '' : ` (${how})`}`.replaceAll('\u202f', ' '),
  );
}

void test('each piece of a text stands over what it was read as', () => {
  assert.deepEqual(gloss('4k7 1% 0805'), ['4k7 > 4.7 kΩ resistor', '1% > ±1 %', '0805 > package 0805']);
  assert.deepEqual(gloss('4K7F 0603'), ['4K7F > 4.7 kΩ, ±1 % resistor', '0603 > package 0603']);
  assert.deepEqual(gloss('47uF 25V low ESR elko'), [
    '47uF > 47 µF',
    '25V > 25 V',
    'low ESR > low ESR',
    'elko > electrolytic capacitor',
  ]);
  assert.deepEqual(gloss('screw M3x8 pan head'), ['screw > screw', 'M3x8 > M3 × 8', 'pan head > pan head']);
  assert.deepEqual(gloss('pin header 2x3 2.54mm'), ['pin header > header', '2x3 > 2 × 3 pins', '2.54mm > pitch 2.54 mm']);
  assert.deepEqual(gloss('10n 63V film pitch 5mm'), ['10n > 10 nF capacitor', '63V > 63 V', 'film > film', '5mm > pitch 5 mm']);
  assert.deepEqual(gloss('fuse holder 5x20'), ['fuse holder > fuse holder', '5x20 > package 5 × 20']);
});

void test('a doubt is a question, what was not understood says so, what only the number says is filled in', () => {
  assert.deepEqual(gloss('47K 50V X7R'), ['47K > 47 pF or 47000 F? (doubt)', '50V > 50 V', 'X7R > X7R']);
  assert.deepEqual(gloss('100n 0603 xyzzy plugh'), [
    '100n > 100 nF capacitor',
    '0603 > package 0603',
    'xyzzy plugh > not understood (unread)',
  ]);
  assert.deepEqual(gloss('blabla'), ['blabla > not understood (unread)', 'not given > what kind of part? (doubt)']);
  assert.deepEqual(gloss('RC0805FR-074K7L').at(-1), 'by its number > 4.7 kΩ, ±1 %, thick film, package 0805 (filled)');
});

void test('pieces stand in the order of the text, none says nothing, and every fact that was read stands on one', () => {
  for (const { part: shown } of syntheticStock(1_500, 3).bags) {
    const { part, doubts } = readPart(shown.text);
    const pieces = glossPart(shown.text, part, doubts);
    let from = 0;
    for (const { typed } of pieces) {
      if (typed === '') continue;
      const at = shown.text.indexOf(typed, from);
      assert.ok(at >= from, `'${typed}' in '${shown.text}'`);
      from = at + typed.length;
    }
    const held = new Set(
      pieces.flatMap(({ facts, words }) => [...facts.map(({ key }) => key), ...(words.length ? ['variant'] : [])]),
    );
    const lost = Object.keys(part.facts).filter((key) => !held.has(key) && key !== 'voltage-kind');
    assert.deepEqual(lost, [], shown.text);
    for (const { means } of sayGloss(pieces, part.kind)) assert.match(means, /^(?!.*(?:undefined|null)).*\S$/, shown.text);
  }
});
