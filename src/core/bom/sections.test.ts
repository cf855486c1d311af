import assert from 'node:assert/strict';
import { test } from 'node:test';
import type { PlainTable } from './plain-table.ts';
import { cutSections } from './sections.ts';

function cut(...lines: string[]): unknown[] {
  const table: PlainTable = {
    form: 'delimited',
    titles: [],
    headed: false,
    rows: lines.map((line, at) => ({ row: at + 1, cells: line.split('|') })),
  };
  return cutSections(table).map(({ header, rows }) => [
    header?.join('|') ?? null,
    ...rows.map(({ plain, heading }) => `${plain.row} ${heading ?? '-'}`),
  ]);
}

void test('title lines above the header and rules below it are no rows', () => {
  assert.deepEqual(cut('Lamp rev C||', 'Date|2024-05-01|', 'Ref|Qty|Value', '-----|-----|-----', 'R1|1|10k'), [
    ['Ref|Qty|Value', '5 -'],
  ]);
});

void test('a header that comes again starts anew, with the heading before it', () => {
  assert.deepEqual(cut('Resistors||', 'Ref|Qty|Value', 'R1|1|10k', 'Capacitors||', 'Value|Ref|Qty', '1u|C1|1'), [
    ['Ref|Qty|Value', '3 Resistors'],
    ['Value|Ref|Qty', '6 Capacitors'],
  ]);
});

void test('a lone word in the first column is a heading for what follows', () => {
  assert.deepEqual(cut('Ref|Qty|Value', 'Power supply||', 'R1|1|10k', 'R2|1|22k'), [
    ['Ref|Qty|Value', '3 Power supply', '4 Power supply'],
  ]);
});

void test('where the first column names parts, a lone name is a part unless it stands out', () => {
  assert.deepEqual(cut('Description|Qty|Place', 'RESISTORS||', '10k|50|drawer 1', 'Hookup wire||', 'Tools:||', 'tweezers|1|'), [
    ['Description|Qty|Place', '3 RESISTORS', '4 RESISTORS', '6 Tools'],
  ]);
});

void test('without a known word there is no header', () => {
  assert.deepEqual(cut('R1|10k|0805', 'R2|22k|0805'), [[null, '1 -', '2 -']]);
});
