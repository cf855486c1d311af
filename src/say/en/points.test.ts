import assert from 'node:assert/strict';
import { test } from 'node:test';
import { readPart } from '#core/part/read-part.ts';
import { pointsOf } from '#core/serve/points.ts';
import { sayPoint } from './points.ts';

function said(bag: string, line: string): string[] {
  const [has, asked] = [readPart(bag).part, readPart(line).part];
  return pointsOf(has, asked).map((point) => {
    const told = sayPoint(point, has, asked);
    return [told.point, told.asked, told.has, told.fit, told.word].join(' | ').replaceAll('\u202f', '~');
  });
}

void test('points in words, with a narrow space before the unit', () => {
  assert.deepEqual(said('10uF 25V X7R 0805 10%', '10uF 16V X5R 0805'), [
    'Capacitance | 10~µF | 10~µF | exact | same',
    'Voltage | 16~V | 25~V | serves | higher',
    'Dielectric | X5R | X7R | serves | steadier',
    'Package | 0805 | 0805 | exact | same',
    'Tolerance |  | ±10~% | none | any will do',
  ]);
});

void test('what is another kind is named as a kind', () => {
  assert.deepEqual(said('INA219 module', 'INA219')[0], 'Kind | Sensor | Module | check | differs');
});
