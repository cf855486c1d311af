import assert from 'node:assert/strict';
import { test } from 'node:test';
import { qrSquares } from './qr.ts';

/**
 * A reader of its own, by ISO/IEC 18004:2015: sizes (table 1), modes and their length fields (tables 2 and 3), data codewords and
 * blocks (tables 7 and 9), patterns (6.3), order of codewords (7.7.3), masks (table 10), format (7.9.1). It corrects no errors,
 * since a code that was just made has none. Versions 1 to 5, which the address of a lab fits; by the two bits of a level (M, L,
 * H, Q), 0 where its blocks are not of one length.
 */
const DATA = [
  [16, 19, 9, 13],
  [28, 34, 16, 22],
  [44, 55, 26, 34],
  [64, 80, 36, 48],
  [86, 108, 0, 0],
];
const BLOCKS = [
  [1, 1, 1, 1],
  [1, 1, 1, 1],
  [1, 1, 2, 2],
  [2, 1, 4, 2],
  [2, 1, 0, 0],
];
const ALPHANUMERIC = '0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ $%*+-./:';
const FINDER = ['1111111', '1000001', '1011101', '1011101', '1011101', '1000001', '1111111'];
const FORMAT_MASK = 0b101_0100_0001_0010;
const MASKS: readonly ((row: number, column: number) => boolean)[] = [
  (i, j) => (i + j) % 2 === 0,
  (i) => i % 2 === 0,
  (_, j) => j % 3 === 0,
  (i, j) => (i + j) % 3 === 0,
  (i, j) => (Math.floor(i / 2) + Math.floor(j / 3)) % 2 === 0,
  (i, j) => ((i * j) % 2) + ((i * j) % 3) === 0,
  (i, j) => (((i * j) % 2) + ((i * j) % 3)) % 2 === 0,
  (i, j) => (((i + j) % 2) + ((i * j) % 3)) % 2 === 0,
];

const dark = (squares: readonly string[], row: number, column: number): number => Number(squares[row]?.[column] ?? 'x');

function formatOf(squares: readonly string[]): { level: number; mask: number } {
  const places = [0, 1, 2, 3, 4, 5, 7].map((column) => [8, column] as const);
  const bits = [...places, [8, 8] as const, [7, 8] as const, ...[5, 4, 3, 2, 1, 0].map((row) => [row, 8] as const)];
  const format = bits.reduce((sum, [row, column]) => sum * 2 + dark(squares, row, column), 0) ^ FORMAT_MASK;
  return { level: format >> 13, mask: (format >> 10) & 7 };
}

/** Whether a square belongs to a pattern, not to the data. */
function patternAt(size: number, row: number, column: number): boolean {
  const corner = (row < 9 && column < 9) || (row < 9 && column >= size - 8) || (row >= size - 8 && column < 9);
  const near = (at: number): boolean => Math.abs(at - (size - 7)) <= 2;
  const alignment = size > 21 && near(row) && near(column);
  return corner || alignment || row === 6 || column === 6;
}

function bitsOf(squares: readonly string[], mask: number): number[] {
  const size = squares.length;
  const bits: number[] = [];
  let upwards = true;
  for (let right = size - 1; right > 0; right -= 2) {
    if (right === 6) right--;
    for (let step = 0; step < size; step++) {
      const row = upwards ? size - 1 - step : step;
      for (const column of [right, right - 1]) {
        if (patternAt(size, row, column)) continue;
        bits.push(dark(squares, row, column) ^ (MASKS[mask]?.(row, column) ? 1 : 0));
      }
    }
    upwards = !upwards;
  }
  return bits;
}

function readQr(squares: readonly string[]): string {
  const version = (squares.length - 17) / 4;
  const { level, mask } = formatOf(squares);
  const [count = 0, blocks = 0] = [DATA[version - 1]?.[level], BLOCKS[version - 1]?.[level]];
  assert.ok(count > 0, `version ${version}, level ${level}`);
  const bits = bitsOf(squares, mask);
  const codewords = Array.from({ length: count }, (_, at) => bits.slice(at * 8, at * 8 + 8));
  const data = Array.from({ length: blocks }, (_, block) => codewords.filter((_word, at) => at % blocks === block)).flat(2);
  let at = 0;
  const take = (length: number): number => data.slice(at, (at += length)).reduce((sum, bit) => sum * 2 + bit, 0);
  let text = '';
  for (let mode = take(4); mode !== 0 && at < data.length; mode = take(4)) {
    if (mode === 4) for (let left = take(8); left > 0; left--) text += String.fromCodePoint(take(8));
    else if (mode === 2) {
      for (let left = take(9); left > 0; left -= 2) {
        const pair = take(left > 1 ? 11 : 6);
        text += left > 1 ? `${ALPHANUMERIC[Math.floor(pair / 45)]}${ALPHANUMERIC[pair % 45]}` : ALPHANUMERIC[pair];
      }
    } else if (mode === 1) {
      for (let left = take(10); left > 0; left -= 3) {
        const digits = Math.min(left, 3);
        text += String(take(digits * 3 + 1)).padStart(digits, '0');
      }
    } else assert.fail(`mode ${mode}`);
  }
  return text;
}

void test('an address is read back from its squares by a reader of its own', () => {
  for (const [text, version] of [
    ['BAGATELLE', 1],
    ['http://10.0.0.7/pair?c=AB', 2],
    ['http://10.0.0.7:4242/pair?code=23456789AB', 3],
    ['http://192.168.178.123:4242/pair?code=WWALHU4ZKW', 4],
    ['http://192.168.178.123:54242/pair?code=ZZZZZZZZZZ&and=something-more-of-it', 5],
  ] as const) {
    const squares = qrSquares(text);
    assert.equal(squares.length, 17 + 4 * version, text);
    assert.ok(squares.every((row) => row.length === squares.length && /^[01]+$/.test(row)));
    assert.equal(readQr(squares), text);
  }
});

void test('its patterns stand where a camera looks for them', () => {
  const squares = qrSquares('http://192.168.178.123:4242/pair?code=WWALHU4ZKW');
  const size = squares.length;
  for (const [row, column] of [
    [0, 0],
    [0, size - 7],
    [size - 7, 0],
  ] as const)
    assert.deepEqual(
      squares.slice(row, row + 7).map((line) => line.slice(column, column + 7)),
      FINDER,
    );
  for (let at = 8; at < size - 8; at++) {
    assert.equal(dark(squares, 6, at), (at + 1) % 2, 'timing, across');
    assert.equal(dark(squares, at, 6), (at + 1) % 2, 'timing, down');
  }
});
