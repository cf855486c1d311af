import assert from 'node:assert/strict';
import { test } from 'node:test';
import * as fc from 'fast-check';
import type { PlainTable } from './plain.ts';
import { readTables } from './read-tables.ts';

/** stands for the words that the rooms above know */
const WORDS = new Set(['ref', 'qty', 'value', 'part', 'package', 'parts']);
const count = (cells: readonly string[]): number => cells.filter((cell) => WORDS.has(cell.trim().toLowerCase())).length;
const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);

function tablesOf(content: string | Uint8Array): readonly PlainTable[] {
  const read = readTables(typeof content === 'string' ? bytes(content) : content, count);
  assert.ok(read.ok, read.ok ? '' : JSON.stringify(read.fault));
  return read.value.tables;
}

function faultOf(content: string | Uint8Array): string {
  const read = readTables(typeof content === 'string' ? bytes(content) : content, count);
  assert.equal(read.ok, false);
  return read.ok ? '' : read.fault.code;
}

void test('the delimiter is the one that makes a table: comma, semicolon, tab, bar', () => {
  for (const mark of [',', ';', '\t', '|']) {
    const text = ['Ref', 'Qty', 'Value'].join(mark) + '\n' + ['R1', '1', '4k7'].join(mark) + '\n';
    assert.deepEqual(tablesOf(text)[0]?.rows[1], { row: 2, cells: ['R1', '1', '4k7'] }, JSON.stringify(mark));
  }
});

void test('commas inside cells of a semicolon table do not make it a comma table', () => {
  assert.deepEqual(tablesOf('Ref;Qty;Value\nR1,R2,R3;3;1,5k\nC1,C2;2;4,7u\n')[0]?.rows[1]?.cells, ['R1,R2,R3', '3', '1,5k']);
});

void test('a sep= line names the delimiter and is no row', () => {
  assert.deepEqual(tablesOf('sep=;\na;b,c\n')[0]?.rows, [{ row: 2, cells: ['a', 'b,c'] }]);
});

void test('UTF-8 with and without mark and UTF-16 by mark read the same', () => {
  const text = 'Ref,Value\nR1,10 kΩ\n';
  const wide = new Uint8Array([
    0xff,
    0xfe,
    ...Array.from(text, (char) => char.charCodeAt(0)).flatMap((code) => [code & 255, code >> 8]),
  ]);
  for (const content of [bytes(text), bytes(`\ufeff${text}`), wide])
    assert.deepEqual(tablesOf(content)[0]?.rows[1]?.cells, ['R1', '10 kΩ']);
});

void test('bytes that are no UTF-8 are read as windows-1252, and that is said to be a guess', () => {
  const read = readTables(new Uint8Array([...bytes('Ref,Value\nC1,10'), 0xb5, ...bytes('F\n')]), count);
  assert.ok(read.ok);
  assert.deepEqual([read.value.encoding, read.value.encodingGuessed], ['windows-1252', true]);
  assert.equal(read.value.tables[0]?.rows[1]?.cells[1], '10µF');
});

void test('only line feeds count lines: carriage returns before them do not', () => {
  assert.deepEqual(
    tablesOf('Ref,Qty\r\nR1,1\r\n\r\nR2,1\r\n')[0]?.rows.map((row) => row.row),
    [1, 2, 4],
  );
});

void test('every Markdown table has the headings over it, markup is taken out, escaped bars are text', () => {
  const tables = tablesOf(
    '# Stock\n\n## Resistors\n\n| Value | Qty |\n|---|---:|\n| **10k** | 5 |\n\n# Tools\n## Chips\nValue | Qty\n--- | ---\n[NE\\|555](https://example.org) | 2\n',
  );
  assert.deepEqual(
    tables.map(({ titles, rows }) => [titles, rows.map(({ row, cells }) => [row, ...cells])]),
    [
      [
        ['Stock', 'Resistors'],
        [
          [5, 'Value', 'Qty'],
          [7, '10k', '5'],
        ],
      ],
      [
        ['Tools', 'Chips'],
        [
          [11, 'Value', 'Qty'],
          [13, 'NE|555', '2'],
        ],
      ],
    ],
  );
});

void test('columns of characters are cut where header words start, over a blank line, and end at a new heading', () => {
  const text = [
    'Parts of the lamp',
    '',
    'Part  Value      Package',
    '',
    'R1    10k        0805',
    'C12   100n 50V   0603',
    '',
    'That was all of them.',
    '',
  ].join('\n');
  assert.deepEqual(
    tablesOf(text).map(({ form, rows }) => [form, rows.map(({ row, cells }) => [row, ...cells])]),
    [
      [
        'fixed',
        [
          [3, 'Part', 'Value', 'Package'],
          [5, 'R1', '10k', '0805'],
          [6, 'C12', '100n 50V', '0603'],
        ],
      ],
    ],
  );
});

void test('lists in text are rows of one cell, the bullet left out, under the heading before them', () => {
  const tables = tablesOf('We need:\n\n- 3 buttons\n- battery holder\n\nThanks for reading.\n');
  assert.deepEqual(tables, [
    {
      form: 'items',
      titles: ['We need'],
      headed: false,
      rows: [
        { row: 3, cells: ['3 buttons'] },
        { row: 4, cells: ['battery holder'] },
      ],
    },
  ]);
});

const SHEET = `<?xml version="1.0"?>
<Workbook xmlns="urn:schemas-microsoft-com:office:spreadsheet" xmlns:ss="urn:schemas-microsoft-com:office:spreadsheet">
 <Worksheet ss:Name="Chips"><Table>
  <Row><Cell><Data ss:Type="String">Ref</Data></Cell><Cell><Data ss:Type="String">Qty</Data></Cell></Row>
  <Row
   ss:Height="15"><Cell ss:Index="2"><Data ss:Type="Number">4</Data></Cell></Row>
 </Table></Worksheet>
</Workbook>`;

void test('rows of an XML sheet have the line of their element, and cells that are left out are empty', () => {
  const [table] = tablesOf(SHEET);
  assert.deepEqual(
    [table?.titles, table?.rows],
    [
      ['Chips'],
      [
        { row: 4, cells: ['Ref', 'Qty'] },
        { row: 5, cells: ['', '4'] },
      ],
    ],
  );
});

void test('an XML sheet with a document type is refused', () => {
  assert.equal(faultOf(SHEET.replace('<Workbook', '<!DOCTYPE Workbook [<!ENTITY a "b">]><Workbook')), 'file-no-table');
});

void test('refused: nothing, blanks, a picture, NUL bytes, JSON, a page, broken XML', () => {
  assert.equal(faultOf(''), 'file-empty');
  assert.equal(faultOf(' \n\n'), 'file-empty');
  assert.equal(faultOf(new Uint8Array([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 1, 2])), 'file-binary');
  assert.equal(faultOf(new Uint8Array([...bytes('Ref,Value\nR1,'), 0, ...bytes('10k\n')])), 'file-binary');
  assert.equal(faultOf('[{"ref": "R1"}]'), 'file-no-table');
  assert.equal(faultOf('<!DOCTYPE html><table><tr><td>R1</td></tr></table>'), 'file-no-table');
  assert.equal(faultOf('<?xml version="1.0"?><Workbook><Worksheet>'), 'file-no-table');
});

void test('refused with row and column: too many columns, a cell too long', () => {
  const wide = readTables(bytes(`Ref,Qty\nR1${',1'.repeat(2999)}\n`), count);
  assert.deepEqual(wide.ok ? null : wide.fault, { code: 'too-many-columns', args: { row: 2, column: 3000, most: 1000 } });
  const long = readTables(bytes(`Ref,Value\nR1,${'x'.repeat(3_000_000)}\n`), count);
  assert.deepEqual(long.ok ? null : long.fault, {
    code: 'cell-too-long',
    args: { row: 2, column: 2, length: 3_000_000, most: 100_000 },
  });
});

void test('law: any bytes give tables or a fault, never an exception', () => {
  fc.assert(
    fc.property(fc.uint8Array({ maxLength: 400 }), (any) => {
      readTables(any, count);
    }),
    { seed: 20_250_103 },
  );
  const piece = fc.constantFrom(
    '|',
    '---',
    '\n',
    ',',
    ';',
    '\t',
    '"',
    'Ref',
    'Qty',
    ' ',
    '  ',
    '# ',
    '- ',
    '<Row>',
    '<?xml ',
    '<Workbook',
    '>',
    'R1',
    '10k',
    'sep=',
    '\r',
    '\ufeff',
    '\0',
  );
  fc.assert(
    fc.property(fc.array(piece, { maxLength: 60 }), (pieces) => {
      readTables(bytes(pieces.join('')), count);
    }),
    { seed: 20_250_104, numRuns: 500 },
  );
});
