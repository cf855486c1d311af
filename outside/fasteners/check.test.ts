import assert from 'node:assert/strict';
import { test } from 'node:test';
import { partCode } from '#core/part/part-code.ts';
import { readPart } from '#core/part/read-part.ts';
import { decimal, multiply } from '#core/quantity/decimal.ts';
import { rowsOf } from '../rows-of.ts';

const rows = (name: string): string[][] => rowsOf(import.meta.url, name);

const fact = (text: string, key: 'thread' | 'length' | 'head' | 'drive' | 'variant'): string | undefined =>
  readPart(text).part.facts[key]?.value;
const metres = (millimetres: string): string => multiply(decimal(millimetres), decimal('1e-3'));

// ISO 261, ISO 262
void test('a coarse pitch goes without saying, a fine one names another thread, and neither is a length', () => {
  for (const [size = '', coarse = '', fine = ''] of rows('threads')) {
    assert.equal(fact(`nut M${size}x${coarse}`, 'thread'), `M${size}`);
    assert.equal(fact(`nut M${size}x${fine}`, 'thread'), `M${size}x${fine}`);
    assert.equal(fact(`screw M${size}x${coarse}x12`, 'thread'), `M${size}`);
    assert.equal(fact(`screw M${size}x${coarse}x12`, 'length'), metres('12'));
    assert.equal(fact(`screw M${size}x${fine}`, 'length'), undefined);
    assert.equal(fact(`screw M${size} x 12`, 'length'), metres('12'));
  }
  assert.equal(fact('screw M4x4', 'length'), metres('4'));
});

// the product standards, by their numbers
void test('a standard says kind, head and drive, by either number', () => {
  for (const [iso = '', din = '', kind, head = '', drive = ''] of rows('standards'))
    for (const name of [iso, din].filter(Boolean)) {
      const { part } = readPart(`M3x10 ${name}`);
      assert.equal(part.kind, kind, name);
      assert.equal(part.facts.head?.value ?? '', head, name);
      assert.equal(part.facts.drive?.value ?? '', drive, name);
    }
});

void test('two numbers are one part below the size from which they differ, and two from there on', () => {
  const code = (size: string, name: string): string => partCode(readPart(`${size}x20 ${name}`).part);
  for (const [iso = '', din = '', , , , differs = ''] of rows('standards')) {
    if (!iso || !din) continue;
    if (differs) assert.notEqual(code(differs, iso), code(differs, din), `${iso} ${differs}`);
    if (differs !== 'M3') assert.equal(code('M3', iso), code('M3', din), `${iso} M3`);
  }
});

// ISO 7089
void test('a plain washer is known by its measures', () => {
  for (const [thread, measures = ''] of rows('washers')) assert.equal(fact(`washer ${measures}`, 'thread'), thread, measures);
});

// ASME B1.1; 1 in = 25.4 mm
void test('lengths in inches are exact, and a unified thread is no metric one', () => {
  for (const [written = '', thread, millimetres = ''] of rows('unified')) {
    assert.equal(fact(`screw ${written}`, 'thread'), thread, written);
    assert.equal(fact(`screw ${written}`, 'length'), metres(millimetres), written);
  }
});

// ISO 898-1, and the names that classes had before
void test('a property class is kept, under its old name too', () => {
  for (const [old, now] of [
    ['6D', '6.6'],
    ['6S', '6.8'],
    ['8G', '8.8'],
    ['10K', '10.9'],
    ['12K', '12.9'],
  ])
    assert.equal(fact(`screw M5x20 ${old}`, 'variant'), now);
  for (const one of ['4.6', '4.8', '5.6', '5.8', '6.8', '8.8', '9.8', '10.9', '12.9'])
    assert.equal(fact(`screw M5x20 ${one}`, 'variant'), one);
});

// common practice, no source
void test('words that go against the standard are a doubt', () => {
  assert.deepEqual(
    readPart('Senkkopfschraube ISO 4762 M3x8').doubts.map(({ code }) => code),
    ['conflict'],
  );
  assert.deepEqual(readPart('Zylinderkopfschraube ISO 4762 M3x8').doubts, []);
});
