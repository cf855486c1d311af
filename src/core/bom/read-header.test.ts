import assert from 'node:assert/strict';
import { test } from 'node:test';
import { countHeaderWords, headerFacts, headerMeanings } from './read-header.ts';

const first = (header: string): string | undefined => headerMeanings(header)[0]?.role;

void test('headers mean what the trade means by them, whatever their case, accents and punctuation', () => {
  for (const [header, role] of [
    ['REFERENCE(S)', 'refs'],
    ['Ref. Des.', 'refs'],
    ['Designator', 'refs'],
    ['位号', 'refs'],
    ['Q.ty', 'quantity'],
    ['Qté', 'quantity'],
    ['Stückzahl', 'quantity'],
    ['Mængde', 'quantity'],
    ['Qty per board', 'quantity'],
    ['Mfr. Part #', 'partNumber'],
    ['MPN', 'partNumber'],
    ['Manufacturer Part Number', 'partNumber'],
    ['Hersteller-Nr.', 'partNumber'],
    ['Supplier Part #', 'supplierNumber'],
    ['Shop P/N', 'supplierNumber'],
    ['Bestellnummer', 'supplierNumber'],
    ['PCB footprint', 'footprint'],
    ['Gehäuse', 'package'],
    ['パッケージ', 'package'],
    ['Lagerort', 'location'],
    ['Bag no.', 'bag'],
    ['Schublade', 'place'],
    ['Unit price (EUR)', 'price'],
    ['Do Not Populate', 'not-fitted'],
  ] as const) {
    assert.equal(first(header), role, header);
  }
  assert.deepEqual(headerMeanings('4k7'), []);
});

void test('units and kinds that a header states', () => {
  assert.deepEqual(headerFacts('Capacitance (µF)'), { unit: 'uF', kind: 'capacitor' });
  assert.deepEqual(headerFacts('Voltage [V]'), { unit: 'V' });
  assert.deepEqual(headerFacts('Resistance'), { unit: 'ohm', kind: 'resistor' });
  assert.deepEqual(headerFacts('Value'), {});
});

void test('a row of data has no words of a header', () => {
  assert.equal(countHeaderWords(['Ref', 'Qty', 'Value']), 3);
  assert.equal(countHeaderWords(['R1', '2', '10k', 'R_0805']), 0);
});
