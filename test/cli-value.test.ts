import assert from 'node:assert/strict';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { test } from 'node:test';
import { deviationText } from '#say/en/value.ts';
import { decimal } from '#core/quantity/decimal.ts';
import { jsonLines, runCli } from './cli-child.ts';

// Nothing is opened or written: no lab is there.
const HOME = join(tmpdir(), 'bagatelle-of-nobody');
const value = (...words: string[]): ReturnType<typeof runCli> => runCli(HOME, ['value', ...words]);

// Series and neighbours: IEC 60063. The mark 93B: place 93 of E96, B for ten times (IEC 60062 clause 7)
void test('a value says its series, its nearest members, its spellings and its marks', async () => {
  const { status, out, said } = await value('9k09');
  assert.deepEqual([status, said], [0, '']);
  for (const part of [
    "'9k09' is 9.09 kΩ; in codes 9K09.",
    'E48, E96, E192',
    '9.1 kΩ',
    '+0.11 %',
    '8.87 kΩ',
    '9.31 kΩ',
    '9091',
    '93B (±1 %)',
  ])
    assert.ok(out.includes(part), `${part} in ${out}`);
});

void test('words of one value are one value, and its doubts are said apart from the answer', async () => {
  const bare = await value('100', 'n');
  assert.equal(bare.status, 1, 'an n apart from its number is no prefix');
  const { out, said } = await value('0.1MF');
  assert.match(out, /100 nF/);
  assert.match(said, /100 nF or as 100 µF/);
  assert.match((await value('4.7', 'kΩ')).out, /E3, E6, E12, E24, E192/);
});

void test('a value of no series, of a link, of another unit', async () => {
  assert.match((await value('12345', 'ohm')).out, /of no series/);
  assert.match((await value('0R')).out, /it is a link/);
  assert.match((await value('16MHz')).out, /are for ohms/);
});

void test('machines get one line', async () => {
  const { out } = await value('9.2k', '--json');
  const [told] = jsonLines(out) as {
    value: number;
    unit: string;
    series: string[];
    nearest: { nearest: string; deviation: number }[];
  }[]; // as: our own answer
  assert.deepEqual([told?.value, told?.unit, told?.series], [9200, 'ohm', ['E192']]);
  assert.deepEqual(
    told?.nearest.map(({ nearest, deviation }) => [nearest, deviation]),
    [
      ['9.1 kΩ', -0.01087],
      ['9.31 kΩ', 0.011957],
    ],
  );
});

void test('what is no value is refused in one line', async () => {
  const ran = await value('xyz');
  assert.deepEqual([ran.status, ran.out], [1, '']);
  assert.equal(ran.said.trim().split('\n').length, 1);
  assert.equal((await value()).status, 2);
});

void test('a deviation has its sign; one that would round to nothing is not called exact', () => {
  assert.deepEqual(
    ['0', '0.0011', '-0.0108', '0.000001', '-0.00009'].map((one) => deviationText(decimal(one))),
    ['exact', '+0.11 %', '−1.08 %', '+< 0.01 %', '−< 0.01 %'],
  );
});
