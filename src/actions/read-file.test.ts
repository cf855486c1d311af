import assert from 'node:assert/strict';
import { test } from 'node:test';
import * as fc from 'fast-check';
import type { ReadRow } from '#core/bom/bom.ts';
import { parseColumnChoice } from '#core/bom/columns.ts';
import { perBoardOf } from '#core/bom/per-board.ts';
import { numberFact, wordFact } from '#core/part/part.ts';
import { toNumber } from '#core/quantity/decimal.ts';
import { refusalText } from '#say/en/refusals.ts';
import { readFile, type FileReading } from './read-file.ts';

const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);

function read(text: string | Uint8Array, columns = ''): FileReading {
  const told = parseColumnChoice(columns);
  const reading = readFile(typeof text === 'string' ? bytes(text) : text, 'lamp.csv', told ?? undefined);
  assert.ok(reading.ok, reading.ok ? '' : refusalText(reading.refusal));
  return reading.value;
}

const rowsOf = (text: string, columns = ''): readonly ReadRow[] => read(text, columns).rows;

function refusal(text: string | Uint8Array): string {
  const reading = readFile(typeof text === 'string' ? bytes(text) : text, 'lamp.csv');
  assert.equal(reading.ok, false);
  return reading.ok ? '' : refusalText(reading.refusal);
}

/** row, refs, quantity and doubts of each row, short enough to compare */
const brief = (rows: readonly ReadRow[]): unknown[] =>
  rows.map(({ row, refs, quantity, doubts }) => [
    row,
    refs.join(' '),
    quantity,
    ...doubts.map(({ field, code }) => `${field} ${code}`),
  ]);

const value = (row: ReadRow | undefined): number | null => {
  const number = row ? numberFact(row.part, 'value') : null;
  return number === null ? null : toNumber(number);
};

void test('a plain BOM: refs, quantity, value and size of each line', () => {
  const rows = rowsOf('Reference,Qty,Value,Footprint\n"R1,R2",2,4k7,R_0805\nC1-C3,3,100n 50V X7R,C_0603\n');
  assert.deepEqual(brief(rows), [
    [2, 'R1 R2', 2],
    [3, 'C1 C2 C3', 3],
  ]);
  assert.deepEqual(
    rows.map((row) => [row.part.kind, value(row), wordFact(row.part, 'package')]),
    [
      ['resistor', 4700, '0805'],
      ['capacitor', 1e-7, '0603'],
    ],
  );
});

void test('headers are known in many languages, columns in any order', () => {
  for (const header of [
    'Menge;Wert;Bauteilbezeichnung',
    'Cantidad;Valor;Referencia',
    'Quantité;Valeur;Repère',
    'Ilość;Wartość;Oznaczenie',
    'Antal;Värde;Beteckning',
    '数量;値;部品番号',
    'Количество;Номинал;Обозначение',
    'Q.ty;Valore;Riferimenti',
    'Qnty;Part Value;Ref. Des.',
  ]) {
    const rows = rowsOf(`${header}\n2;10k;R1,R2\n1;22k;R3\n`);
    assert.deepEqual(
      brief(rows),
      [
        [2, 'R1 R2', 2],
        [3, 'R3', 1],
      ],
      header,
    );
    assert.equal(value(rows[0]), 10_000, header);
  }
});

void test('each column is told with its evidence, and a person can correct it by number or header', () => {
  const text = 'Ref,Number,Thing\nR1,1,10k\nR2,2,22k\nR3,3,33k\nR4,4,47k\n';
  assert.deepEqual(
    read(text).columns.map(({ column, header, role }) => [column, header, role]),
    [
      [1, 'Ref', 'refs'],
      [2, 'Number', 'index'],
      [3, 'Thing', 'other'],
    ],
  );
  const told = read(text, '3=value, number=quantity');
  assert.deepEqual(
    told.columns.map(({ role, evidence }) => [role, evidence]),
    [
      ['refs', 'header-and-cells'],
      ['quantity', 'told'],
      ['value', 'told'],
    ],
  );
  assert.equal(value(told.rows[2]), 33_000);
  assert.equal(parseColumnChoice('3=colour of the sky'), null);
});

void test('title lines, repeated headers, section headings and totals are no lines of the BOM', () => {
  const text =
    'Night lamp rev B,,\nDate:,2024-05-01,\n\nResistors,,\n\nName,Count,Value\nR1,1,10k\n\nCapacitors,,\n\nName,Count,Value\nC1,1,100n\nTotal,2,\n';
  assert.deepEqual(brief(rowsOf(text)), [
    [7, 'R1', 1],
    [12, 'C1', 1],
  ]);
});

void test('a section heading or Markdown heading states the kind of what stands under it', () => {
  const rows = rowsOf(
    '## Electrolytic capacitors\n| Value | Qty |\n|---|---|\n| 10 | 5 |\n## Resistors\n| Value | Qty |\n|---|---|\n| 10 | 5 |\n',
  );
  assert.deepEqual(
    rows.map(({ row, part }) => [row, part.kind]),
    [
      [4, 'capacitor'],
      [8, 'resistor'],
    ],
  );
});

void test('units and kinds in headers and in a column of units hold for bare numbers', () => {
  const [row] = rowsOf('Capacitance,Unit,Voltage (V),Tolerance %\n4.7,uF,16,10\n');
  assert.deepEqual(
    [row?.part.kind, value(row), row && numberFact(row.part, 'voltage'), row && numberFact(row.part, 'tolerance-high')],
    ['capacitor', 4.7e-6, '16e0', '1e-1'],
  );
  assert.deepEqual(
    rowsOf('Resistance,Tol\n4700,5\n').map((line) => [line.part.kind, value(line)]),
    [['resistor', 4700]],
  );
});

void test('a matrix of ratings: one mark states the rating, several are several stock lines', () => {
  const rows = rowsOf('Value,16V,25V,50V\n10uF,-,y,-\n22uF,7,-,-\n47uF,y,-,y\n');
  assert.deepEqual(
    rows.map((row) => [numberFact(row.part, 'voltage'), row.quantity, row.doubts.map(({ field }) => field).join()]),
    [
      ['25e0', null, ''],
      ['16e0', 7, ''],
      [null, null, 'voltage,quantity'],
    ],
  );
});

void test('a stock list: bag or place, supplier, loose quantities', () => {
  const rows = rowsOf(
    'Bag;Box;Part;Qty;Supplier\n12;A;Resistor 4k7 0805;100;Nordpart\n13;A;LED red 3mm;approx 40;\n14;B;Transistor BC547;reel;Halden\n',
  );
  assert.deepEqual(
    rows.map(({ location, box, supplier, quantity }) => [location, box, supplier, quantity]),
    [
      ['12', 'A', 'Nordpart', 100],
      ['13', 'A', null, null],
      ['14', 'B', 'Halden', null],
    ],
  );
  assert.deepEqual(
    rows.map(({ doubts }) =>
      doubts
        .filter(({ field }) => field === 'quantity')
        .map(({ code }) => code)
        .join(),
    ),
    ['', 'quantity-estimate', 'quantity-unreadable'],
  );
});

void test('marks for left off, in a column of their own, in the value, in a note', () => {
  const fitted = (text: string): string =>
    rowsOf(text)
      .map((row) => (row.fitted ? 'fit' : 'off'))
      .join(' ');
  assert.equal(fitted('Ref,Value,DNP\nR1,1k,\nR2,1k,DNP\nR3,1k,x\nR4,1k,no\n'), 'fit off off fit');
  assert.equal(fitted('Ref,Value,Populate\nR1,1k,1\nR2,1k,0\nR3,1k,yes\nR4,1k,no\n'), 'fit off fit off');
  assert.equal(
    fitted('Ref,Value,Notes\nR1,1k,\nR2,DNF,\nR3,1k (DNI),\nR4,1k,no mount\nR5,NF,\nR6,1k,exclude\nR7,1k,fit after test\n'),
    'fit off off off off off fit',
  );
  assert.equal(fitted('Ref;Wert;Bestückt\nR1;1k;ja\nR2;1k;nein\n'), 'fit off');
});

void test('a column that says what is fitted is understood in its own words; what it is not understood by is a doubt, never a yes', () => {
  const read = (header: string, ...said: string[]): string[] =>
    rowsOf(`Ref;Wert;${header}\n${said.map((cell, at) => `R${at + 1};1k;${cell}\n`).join('')}`).map(
      ({ fitted, doubts }) => `${fitted ? 'fit' : 'off'}${doubts.some(({ field }) => field === 'fitted') ? '?' : ''}`,
    );
  assert.deepEqual(
    read('Bestückung', 'bestücken', 'nicht bestücken', 'nicht bestückt', 'unbestückt', 'bestückt', '', 'vielleicht'),
    ['fit', 'off', 'off', 'off', 'fit', 'fit', 'fit?'],
  );
  assert.deepEqual(read('Populate', 'yes', 'populate', 'x', 'do not populate', 'rev B only', 'fitted?'), [
    'fit',
    'fit',
    'fit',
    'off',
    'fit?',
    'fit?',
  ]);
  assert.deepEqual(read('Montage', 'oui', 'non', 'non monté', 'ne pas monter', 'monté'), ['fit', 'off', 'off', 'off', 'fit']);
});

void test('lists in words give their counts, refs and kinds; prose between them is left out', () => {
  const rows = rowsOf(
    'What you need for the lamp\n\n3 push buttons\n2x LED red 5mm\n9 100 ohm resistors\n10k potentiometer (1)\nR1, R2 - 10k 0805\n\nSolder everything, and be patient.\n',
  );
  assert.deepEqual(
    rows.map(({ row, refs, quantity, part }) => [row, refs.length, quantity, part.kind]),
    [
      [3, 0, 3, 'switch'],
      [4, 0, 2, 'led'],
      [5, 0, 9, 'resistor'],
      [6, 0, 1, 'potentiometer'],
      [7, 2, null, 'resistor'],
    ],
  );
});

void test('refs that go on in the next row belong to the row above', () => {
  assert.deepEqual(brief(rowsOf('Item\tQuantity\tReference\tPart\n1\t4\tC1,C2,\t100n\n\t\tC3,C4\t\n2\t1\tR1\t10k\n')), [
    [2, 'C1 C2 C3 C4', 4],
    [4, 'R1', 1],
  ]);
});

void test('read with a doubt where it belongs: counts that disagree, half pieces, refs twice, backward ranges', () => {
  assert.deepEqual(brief(rowsOf('Ref,Qty,Value\n"R1,R2",3,10k\nR3,1.5,10k\n"R4,R4",1,10k\nR9-R7,3,10k\n')), [
    [2, 'R1 R2', 3, 'quantity quantity-not-refs'],
    [3, 'R3', 1.5, 'quantity quantity-not-whole', 'quantity quantity-not-refs'],
    [4, 'R4', 1, 'refs ref-twice'],
    [5, '', 3, 'refs ref-unreadable'],
  ]);
});

void test('read with a doubt where it belongs: no header, an open quote, a guessed encoding, an unquoted delimiter', () => {
  const bare = rowsOf('R1,10k,0603\nR2,22k,0603\nC1,100n,0805\n');
  assert.deepEqual(
    bare.map(({ refs }) => refs.join()),
    ['R1', 'R2', 'C1'],
  );
  assert.deepEqual(bare[0]?.doubts.map(({ field, code }) => `${field} ${code}`).slice(0, 2), [
    'row no-header',
    'refs column-guessed',
  ]);
  const open = rowsOf('Ref,Qty,Value\nR1,1,"10k\nR2,1,22k\n');
  assert.deepEqual(
    open.map((row) => [row.row, value(row), row.doubts[0]?.code]),
    [
      [2, 10_000, 'quote-unclosed'],
      [3, 22_000, undefined],
    ],
  );
  const latin = read(new Uint8Array([...bytes('Ref,Value\nC1,10'), 0xb5, ...bytes('F\nR1,1k\n')]));
  assert.deepEqual(
    latin.rows.map((row) => row.doubts.map(({ field, code }) => `${field} ${code}`).join()),
    ['value encoding-guessed', ''],
  );
  const shifted = rowsOf('Ref,Description,Qty\nJ1,jack, 3.5 mm,1\nJ2,plug,1\n');
  assert.deepEqual(brief(shifted), [
    [2, 'J1', 1, 'row cells-uneven'],
    [3, 'J2', 1],
  ]);
});

void test('by commas a point is a thousands mark; without a sign of the habit it is a doubt', () => {
  const rows = rowsOf('Bauteil;Wert;Menge\nElko;1.000 µF;1.500\nElko;4,7 µF;20\n');
  assert.deepEqual(
    rows.map((row) => [value(row), row.quantity]),
    [
      [1e-3, 1500],
      [4.7e-6, 20],
    ],
  );
  const [bare] = rowsOf('Bauteil;Wert;Menge\nElko;1.000 µF;20\nElko;47 µF;20\n');
  assert.deepEqual(
    bare?.doubts.map(({ field, code }) => `${field} ${code}`),
    ['value two-readings'],
  );
});

void test('bag numbers, boxes and places are told apart, and each is kept', () => {
  const where = (text: string): unknown[] => rowsOf(text).map(({ location, bag, box, place }) => [location, bag, box, place]);
  assert.deepEqual(where('Bag;Box;Place;Part;Qty\n12;B;7;LED red;5\n13;B;8;LED green;5\n'), [
    ['12', '12', 'B', '7'],
    ['13', '13', 'B', '8'],
  ]);
  assert.deepEqual(where('Beutel;Fach;Bauteil;Menge\n12;3a;LED rot;5\n'), [['12', '12', null, '3a']]);
  assert.deepEqual(where('Location;Drawer;Part;Qty\n12;top;LED red;5\n'), [['12', '12', null, 'top']]);
  assert.deepEqual(where('Part;Drawer;Qty\nLED red;7;5\n'), [['7', null, null, '7']]);
  assert.deepEqual(where('Part;Shelf;Drawer;Qty\nLED red;2;7;5\n'), [['Shelf 2, Drawer 7', null, null, 'Shelf 2, Drawer 7']]);
  assert.deepEqual(read('Bag;Place;Part;Qty\n1;1;LED red;5\n2;0;LED green;5\n').columns.map(({ role }) => role)[1], 'place');
});

void test('alternates are parts of the kind of the line, remarks are kept as words', () => {
  const [row] = rowsOf('Ref,Part,Alternates,Remarks\nQ1,BC547B,"BC550C; BC546B",tall ones\n');
  assert.deepEqual(
    row?.alternates?.map(({ kind, facts }) => [kind, facts.partNumber?.value]),
    [
      ['transistor', 'BC550C'],
      ['transistor', 'BC546B'],
    ],
  );
  assert.equal(row?.remark, 'tall ones');
  for (const header of ['Alt', 'Alternativ', 'Substitute', '2nd source', 'Ersatztyp'])
    assert.equal(rowsOf(`Ref,Part,${header}\nQ1,BC547B,BC550C\n`)[0]?.alternates?.length, 1, header);
});

void test('columns that say whether a part is fitted, in many languages', () => {
  for (const [header, no] of [
    ['Bestückung', 'nein'],
    ['Fit', 'no'],
    ['Mount', 'N'],
    ['Populate', '0'],
    ['Montaje', 'no'],
    ['Osazeno', 'ne'],
    ['Montering', 'nej'],
    ['实装', '否'],
  ] as const) {
    const rows = rowsOf(`Ref;Value;${header === '实装' ? '実装' : header}\nR1;1k;${no}\n`);
    assert.equal(rows[0]?.fitted, false, header);
  }
});

void test('hardware is counted by its quantity where one ref stands for several', () => {
  const rows = rowsOf('Ref,Qty,Description\nH1,4,screw M3x8\nMP1,20,rubber foot\nC1,20,100n 0603\n');
  assert.deepEqual(
    rows.map((row) => [perBoardOf(row), row.doubts.map(({ code }) => code).join()]),
    [
      [4, ''],
      [20, ''],
      [1, 'quantity-not-refs'],
    ],
  );
});

void test('headers that no word explains leave the columns to their cells', () => {
  const rows = rowsOf(
    'Bag;What is in it;How many are there\n1;resistor 4k7 1% 0805;100\n2;LED red 3mm;50\n3;BC547B transistor;7\n',
  );
  assert.deepEqual(
    rows.map(({ bag, quantity, part }) => [bag, quantity, part.kind]),
    [
      ['1', 100, 'resistor'],
      ['2', 50, 'led'],
      ['3', 7, 'transistor'],
    ],
  );
  const strange = rowsOf('What is in it;How many are there\nresistor 4k7 1% 0805;100\nLED red 3mm;50\n');
  assert.deepEqual(
    strange.map(({ row, quantity }) => [row, quantity]),
    [
      [2, 100],
      [3, 50],
    ],
  );
});

void test('all cells that can not be are told at once', () => {
  assert.equal(
    refusal('Ref,Value,Qty\nR1,10k,-5\nR2,22k,7\nR3,1k,-1\n'),
    "lamp.csv: nothing was read, for these cells:\n  row 2, column 3: '-5' can't be a quantity: it is below zero\n  row 4, column 3: '-1' can't be a quantity: it is below zero",
  );
  assert.match(refusal(`Ref,Value,Qty\n${Array.from({ length: 25 }, (_, at) => `R${at},1k,-1`).join('\n')}\n`), /and 5 more$/);
});

void test('a correction of a column that is not there is told', () => {
  const reading = readFile(bytes('Ref,Value\nR1,10k\n'), 'lamp.csv', parseColumnChoice('2=value, tray=place') ?? undefined);
  assert.equal(reading.ok ? '' : refusalText(reading.refusal), "lamp.csv has no column 'tray'. Its columns: 1 'Ref', 2 'Value'.");
});

void test('refused in one line that names file, row and column', () => {
  assert.equal(
    refusal('Ref,Value\nR1,10k\nR1-R999999999,22k\n'),
    "lamp.csv, row 3, column 1: 'R1-R999999999' names more than 10000 refs.",
  );
  assert.equal(refusal('Ref,Value,Qty\nR1,10k,-5\n'), "lamp.csv, row 2, column 3: '-5' can't be a quantity: it is below zero.");
  assert.match(refusal(`Ref,Value\nR1,${'x'.repeat(3_000_000)}\n`), /^lamp\.csv, row 2, column 2: /);
  assert.match(refusal(`Ref${',x'.repeat(2999)}\n`), /^lamp\.csv, row 1, column 3000: /);
  assert.equal(refusal(''), 'lamp.csv is empty.');
  assert.match(
    refusal(new Uint8Array([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a])),
    /^lamp\.csv is no text; it looks like a PNG picture/,
  );
  assert.match(refusal('Ref,Value\nR1,\0\n'), /^lamp\.csv is no text/);
});

void test('refused as no table: a letter, program text', () => {
  assert.match(
    refusal('Dear friend, it was a nice day, and we walked.\nThe sun shone, the sea was calm, and so on.\n'),
    /^lamp\.csv is no table/,
  );
  assert.match(refusal('const a = [1, 2, 3];\nfunction add(a, b) { return a + b; }\n'), /^lamp\.csv is no table/);
});

void test('law: any bytes are read or refused, never an exception', () => {
  fc.assert(
    fc.property(fc.uint8Array({ maxLength: 300 }), (any) => void readFile(any, 'any')),
    { seed: 20_250_108 },
  );
  const piece = fc.constantFrom(
    'Ref',
    'Qty',
    'Value',
    'DNP',
    '16V',
    'R1',
    'R1-R5',
    'C1,',
    '10k',
    '100n',
    '-3',
    '2.5',
    ',',
    ',',
    ';',
    '\n',
    '\n',
    '"',
    ' ',
    '| ',
    '---|---',
    '# Resistors',
    '- ',
    'Total',
    'n/a',
    'µ',
    '0603',
    '\t',
  );
  fc.assert(
    fc.property(fc.array(piece, { maxLength: 80 }), (pieces) => void readFile(bytes(pieces.join('')), 'any')),
    { seed: 20_250_109, numRuns: 500 },
  );
});

void test('a column of nothing but refs holds the refs whatever its head says; ranges with points count as ranges', () => {
  const line = (cells: string): string => `${cells}\n`;
  for (const head of ['Bauteil', 'Kennung im Plan']) {
    const reading = read(
      ['R1,R2;4k7;2', 'C1...C3;100n;3', 'C4…C6;10n;3', 'D1;1N4148;1']
        .map(line)
        .reduce((all, one) => all + one, `${head};Wert;Menge\n`),
    );
    assert.equal(reading.columns[0]?.role, 'refs', head);
    assert.deepEqual(
      reading.rows.map(({ refs }) => refs.length),
      [2, 3, 3, 1],
      head,
    );
  }
  const words = read('Bauteil;Wert;Menge\nWiderstand;4k7;2\nKondensator;100n;3\n');
  assert.notEqual(words.columns[0]?.role, 'refs');
});

void test('pieces without refs in a table of refs are a doubt; hardware needs none', () => {
  const rows = rowsOf('Ref,Value,Qty\nR1,10k,1\n,22k,3\n,100n,1\n,Screw M3x8,4\n');
  assert.deepEqual(
    rows.map(({ doubts }) => doubts.filter(({ field }) => field === 'quantity').map(({ code }) => code)),
    [[], ['quantity-not-refs'], [], []],
  );
});
