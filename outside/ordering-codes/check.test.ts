import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import { decodeOrderingCode } from '#core/part/decode.ts';
import { decimal, multiply, toNumber } from '#core/quantity/decimal.ts';

const rows = readFileSync(new URL('./data/mpn-examples.csv', import.meta.url), 'utf8')
  .trim()
  .split(/\r?\n/)
  .slice(1)
  .map((line) => line.split(','));

void test('each of the 130 ordering codes decodes to what the source prints', () => {
  assert.equal(rows.length, 130);
  for (const [, mpn = '', imperial, , value = '', unit = '', tolerance = '', voltage = '', dielectric = ''] of rows) {
    const decoded = decodeOrderingCode(mpn);
    assert.ok(decoded, `${mpn} is not decoded`);
    const fact = (key: string): string | null => decoded.facts.find((one) => one.key === key)?.value ?? null;
    const scale = unit === 'pF' ? decimal('1e-12') : decimal(1);
    assert.equal(fact('value'), multiply(decimal(value), scale), `${mpn}: value`);
    assert.equal(fact('package'), imperial, `${mpn}: size`);
    assert.equal(fact('voltage'), voltage ? decimal(voltage) : null, `${mpn}: voltage`);
    assert.equal(fact('dielectric'), dielectric || null, `${mpn}: dielectric`);
    if (Number(value) > 0)
      assert.deepEqual(
        [fact('tolerance-low'), fact('tolerance-high')].map((one) => one && toNumber(decimal(one))),
        printed(tolerance),
        `${mpn}: tolerance`,
      );
  }
});

/** `±1%` → fractions; `±0.25 pF` → farads; `+80/-20%` → below and above. */
function printed(tolerance: string): [number, number] {
  const asymmetric = /^\+(\d+)\/-(\d+)%$/.exec(tolerance);
  if (asymmetric) return [Number(asymmetric[2]) / 100, Number(asymmetric[1]) / 100];
  const match = /^±([\d.]+)\s?(%|pF)$/.exec(tolerance);
  const size = toNumber(multiply(decimal(match?.[1] ?? '0'), decimal(match?.[2] === 'pF' ? '1e-12' : '0.01')));
  return [size, size];
}

/** Codes in which a letter or figure means another thing than it seems, with value, tolerance, volts, dielectric and size. */
const TRAPS: readonly (readonly [
  mpn: string,
  value: string,
  low: string | null,
  volts: string | null,
  dielectric: string | null,
  size: string,
])[] = [
  ['RC0603JR-070RL', '0', null, null, null, '0603'],
  ['RC0402FR-074K7L', '4700', '0.01', null, null, '0402'],
  ['RC0805FR-071ML', '1000000', '0.01', null, null, '0805'],
  ['RC0603FR-7W1KL', '1000', '0.01', null, null, '0603'],
  ['CRCW04024K70JNED', '4700', '0.05', null, null, '0402'],
  ['CRCW02011R00FNED', '1', '0.01', null, null, '0201'],
  ['ERJ3GEYJ103V', '10000', '0.05', null, null, '0603'],
  ['ERJ3EKF1002V', '10000', '0.01', null, null, '0603'],
  ['0603WAF470KT5E', '4.7', '0.01', null, null, '0603'],
  ['0603SAF750JT5E', '75', '0.01', null, null, '0603'],
  ['CL10B104KB8NNNC', '1e-7', '0.1', '50', 'X7R', '0603'],
  ['CL10A106MP8NNNC', '1e-5', '0.2', '10', 'X5R', '0603'],
  ['GRM188R71H104KA93D', '1e-7', '0.1', '50', 'X7R', '0603'],
  ['GRM1555C1H2R3WA01D', '2.3e-12', '0.05e-12', '50', 'C0G', '0402'],
  ['C1608X7R1H104K080AA', '1e-7', '0.1', '50', 'X7R', '0603'],
  ['C0603C104K5RACTU', '1e-7', '0.1', '50', 'X7R', '0603'],
  ['C0603X5R1A104K030BC', '1e-7', '0.1', '10', 'X5R', '0201'],
  ['C0805C229C5GACTU', '2.2e-12', '0.25e-12', '50', 'C0G', '0805'],
  ['04025A9R1DAT2A', '9.1e-12', '0.5e-12', '50', 'C0G', '0402'],
  ['MC1206B332K201CT', '3.3e-9', '0.1', '200', 'X7R', '1206'],
  ['CC0805KRX7R0BB104', '1e-7', '0.1', '100', 'X7R', '0805'],
  // families known from memory
  ['UMK107B7104KA-T', '1e-7', '0.1', '50', 'X7R', '0603'],
  ['RMCF0603FT10K0', '10000', '0.01', null, null, '0603'],
  ['MCR03EZPFX1002', '10000', '0.01', null, null, '0603'],
  ['0603B104K500CT', '1e-7', '0.1', '50', 'X7R', '0603'],
  ['CRG0603F5K6', '5600', '0.01', null, null, '0603'],
  ['RR0816P-102-D', '1000', '0.005', null, null, '0603'],
  ['ERA3AEB102V', '1000', '0.001', null, null, '0603'],
  ['TNPW060310K0BEEA', '10000', '0.001', null, null, '0603'],
  ['WSL2512R0100FEA', '0.01', '0.01', null, null, '2512'],
  ['TAJB106K016RNJ', '1e-5', '0.1', '16', null, 'EIA-3528'],
  ['T491A106K010AT', '1e-5', '0.1', '10', null, 'EIA-3216'],
  ['VJ0603Y104KXACW1BC', '1e-7', '0.1', '50', 'X7R', '0603'],
  ['CGA3E2X7R1H104K080AA', '1e-7', '0.1', '50', 'X7R', '0603'],
  ['CAY16-103J4LF', '10000', '0.05', null, null, '4x0603'],
  ['LQW18AN10NJ00D', '1e-8', '0.05', null, null, '0603'],
  ['LQM21PN2R2MC0D', '2.2e-6', '0.2', null, null, '0805'],
  ['BLM18AG601SN1D', '600', null, null, null, '0603'],
  ['NCP18XH103F03RB', '10000', '0.01', null, null, '0603'],
];

void test('codes whose letters deceive decode to what they mean', () => {
  for (const [mpn, value, low, volts, dielectric, size] of TRAPS) {
    const facts = decodeOrderingCode(mpn)?.facts ?? [];
    const fact = (key: string): string | null => facts.find((one) => one.key === key)?.value ?? null;
    assert.deepEqual(
      [fact('value'), fact('tolerance-low'), fact('voltage'), fact('dielectric'), fact('package')],
      [decimal(value), low && decimal(low), volts && decimal(volts), dielectric, size],
      mpn,
    );
  }
});

void test('the head of a known code with the tail of another maker is not decoded', () => {
  assert.equal(decodeOrderingCode('C1608X7R102KHTS'), null);
});
