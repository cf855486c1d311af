import assert from 'node:assert/strict';
import { test } from 'node:test';
import type { FactKey } from './part.ts';
import { readPart } from './read-part.ts';

const said = (text: string, key: FactKey): string | null => readPart(text).part.facts[key]?.value ?? null;

// words of the trade in the languages of Europe; common practice, no source
void test('the technology of a capacitor is read from words of the main European languages', () => {
  const texts = {
    ceramic: ['kondensator ceramiczny 100nF', 'keramische condensator 100nF', 'condensateur céramique 100nF', 'Kerko 100nF'],
    film: ['condensador de poliéster 100nF', 'foliecondensator 100nF 63V', 'Folienkondensator 100n', 'kondensator foliowy 100nF'],
    electrolytic: [
      'condensateur chimique 10uF',
      'elektrolytisk kondensator 10uF',
      'condensatore elettrolitico 10uF',
      'Elko 10uF',
    ],
    tantalum: ['tantaalcondensator 10u 16V', 'Tantalkondensatoren 10u', 'condensatore al tantalo 10uF'],
    polymer: ['Polymerelko 100uF 16V', 'alu polymer 100uF 16V'],
    supercap: ['Doppelschichtkondensator 1F 5.5V', 'supercondensateur 1F 5,5V'],
    mica: ['mica argentée 100pF', 'glimmercondensator 100p'],
  };
  for (const [technology, all] of Object.entries(texts))
    for (const text of all) {
      assert.equal(readPart(text).part.kind, 'capacitor', text);
      assert.equal(said(text, 'technology'), technology, text);
    }
});

void test('polarity is read where it is said, not where it is only likely', () => {
  assert.equal(said('condensador electrolítico no polarizado 10uF', 'polarised'), 'no');
  assert.equal(said('condensatore elettrolitico bipolare 10uF', 'polarised'), 'no');
  assert.equal(said('Elko 10uF 25V gepolt', 'polarised'), 'yes');
  assert.equal(said('Elko 10uF 25V', 'polarised'), null);
});

void test('direct, alternating and mains voltage are three kinds; a voltage alone says none', () => {
  const kinds = {
    '100nF 400VDC': 'dc',
    '100nF 250V~': 'ac',
    '100nF 230V mains': 'mains',
    '100nF 250 V AC mains': 'mains',
    '100nF 50V': null,
  };
  for (const [text, kind] of Object.entries(kinds)) assert.equal(said(text, 'voltage-kind'), kind, text);
});

// IEC 60384-14, classes; -9 and -22, codes of class 2, from memory
void test('X1 is a class beside an alternating voltage; an IEC dielectric is read where it is no number', () => {
  assert.equal(said('100nF X1 275VAC', 'safety'), 'X1');
  assert.equal(said('2n2 X1/Y2 250VAC capacitor', 'safety'), 'X1/Y2');
  assert.equal(said('100nF 50V X1', 'safety'), null);
  assert.equal(said('10n 2C1 50V', 'dielectric'), '2C1');
  assert.equal(said('10nF 2R1 50V', 'dielectric'), null);
  assert.equal(
    readPart('', { kind: 'capacitor', fields: { value: '10n', dielectric: '2R1' } }).part.facts.dielectric?.value,
    '2R1',
  );
  assert.equal(
    readPart('', { kind: 'capacitor', fields: { value: '10n', dielectric: 'NPO' } }).part.facts.dielectric?.value,
    'C0G',
  );
});
