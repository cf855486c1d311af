import assert from 'node:assert/strict';
import { test } from 'node:test';
import { nameFit } from './part-number.ts';

// makers' ordering guides as named in outside/ordering-codes/SOURCE.md; the last letters of Taiyo Yuden from memory
void test('numbers that differ in how the parts are packed are one part', () => {
  for (const [one, other] of [
    ['GRM188R71H104KA93D', 'GRM188R71H104KA93J'],
    ['RC0603FR-0710KL', 'RC0603FR-1310KL'],
    ['CL10B104KB8NNNC', 'CL10B104KB8NNND'],
    ['C0603C104K5RACTU', 'C0603C104K5RAC7867'],
    ['06035C104KAT2A', '06035C104KAT4A'],
    ['UMK107B7104KA-T', 'UMK107B7104KA-R'],
    ['ERJ-3EKF1002V', 'ERJ3EKF1002V'],
    ['1N4148W-7-F', '1N4148W'],
  ] as const)
    assert.equal(nameFit(one, other), 'packing', `${one} ${other}`);
});

void test('a letter of value, tolerance, voltage or dielectric is no packing', () => {
  for (const [one, other] of [
    ['GRM188R71H104KA93D', 'GRM188R71H104MA93D'],
    ['RC0603FR-0710KL', 'RC0603JR-0710KL'],
    ['RC0603FR-0710KL', 'RC0603FR-0711KL'],
    ['CL10B104KB8NNNC', 'CL10B104KA8NNNC'],
    ['C0603C104K5RACTU', 'C0603C104K4RACTU'],
    ['06035C104KAT2A', '06033C104KAT2A'],
    ['ERJ3EKF1002V', 'ERJ3EKF1003V'],
  ] as const)
    assert.equal(nameFit(one, other), 'differs', `${one} ${other}`);
});
