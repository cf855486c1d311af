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
