import assert from 'node:assert/strict';
import { test } from 'node:test';
import { buildIndex } from '#core/find/find-index.ts';
import { find } from '#core/find/find.ts';
import { syntheticStock } from '../../../bench/synthetic-stock.ts';
import { sayFound } from './find.ts';

void test('a reason is said with its numbers', () => {
  assert.equal(
    sayFound({ code: 'betters', args: { fact: 'voltage', has: '100 V', asked: '50 V' } }),
    'voltage 100 V, better than 50 V',
  );
  assert.equal(sayFound({ code: 'meant', args: { typed: 'resitsor', word: 'resistor' } }), "'resitsor' was read as 'resistor'");
  assert.equal(sayFound({ code: 'exhausted', args: {} }), 'it is exhausted');
});

void test('no reason that find gives has a hole in its sentence', () => {
  const stock = syntheticStock(300, 5);
  const index = buildIndex(stock);
  const typed = stock.bags.flatMap(({ part, code, number }) => [
    part.text,
    code,
    String(number),
    `${part.text.slice(0, -2)}x zzz`,
    'resitsor',
    'box A',
    'capacitor at least 25 V',
  ]);
  const said = typed.flatMap((words) => find(index, words, { limit: 10 }).flatMap(({ why }) => why.map(sayFound)));
  assert.ok(said.length > 1_000);
  assert.deepEqual(
    said.filter((sentence) => /undefined|null|NaN|  |\s$/.test(sentence)),
    [],
  );
});
