import Papa from 'papaparse';
import { readFile } from '#actions/read-file.ts';
import { readPart } from '#core/part/read-part.ts';
import { expect, milliseconds, type Bench, type Measured } from './bench.ts';
import { garbage, syntheticSheet, syntheticTexts } from './synthetic-sheet.ts';

const TEXTS = 20_000;
const ROWS = 100_000;
const DIFFERENT = 5_000;
const MOST_RATIO = 6;
const MOST_GROWTH = 12;
/** characters: ten times as many are still read whole */
const SHORT = 190;
const REPEATS = 200;

/** Milliseconds of processor time, the least of three: what else runs on the machine counts less than in time on the clock. */
function quickest(call: () => unknown): number {
  const times = Array.from({ length: 3 }, () => {
    const before = process.cpuUsage();
    call();
    const { user, system } = process.cpuUsage(before);
    return (user + system) / 1000;
  });
  return Math.min(...times);
}

/** Descriptions that are all different, so that nothing is read from memory. */
function descriptions(): Measured {
  const texts = [...new Set(syntheticTexts(TEXTS))];
  const known = texts.filter((text) => readPart(text).part.kind !== 'other').length;
  expect(known > texts.length * 0.9, `${known} of ${texts.length} descriptions have a kind`);
  const time = quickest(() => texts.map((text) => readPart(text)));
  const rate = Math.round((texts.length / time) * 1000);
  return { what: `${texts.length} different descriptions`, ours: `${rate} / s`, other: '', ratio: '', target: '', ok: true };
}

/** Ten times the input against the input: at most twelve times as long. */
function growth(what: string, small: () => unknown, large: () => unknown): Measured {
  const [less, more] = [quickest(small), quickest(large)];
  return {
    what,
    ours: milliseconds(more),
    other: milliseconds(less),
    ratio: `${(more / less).toFixed(1)} ×`,
    target: `≤ ${MOST_GROWTH} ×`,
    ok: more / less <= MOST_GROWTH,
  };
}

function longer(what: string, textOf: (characters: number) => string): Measured {
  const read = (text: string) => (): void => {
    for (let time = 0; time < REPEATS; time += 1) readPart(text);
  };
  return growth(`${what}, ${SHORT} → ${SHORT * 10} characters`, read(textOf(SHORT)), read(textOf(SHORT * 10)));
}

const words = (characters: number): string => syntheticTexts(100).join(', ').slice(0, characters);

/** A sheet read whole, as `bagatelle read` does, beside a bare parse of the same bytes. */
function sheet(different: number, tell: (progress: string) => void): Measured {
  tell(`read: ${ROWS} rows of ${different} parts`);
  const bytes = syntheticSheet(ROWS, different);
  const read = readFile(bytes, 'sheet.csv');
  expect(read.ok && read.value.rows.length === ROWS, 'every row of the sheet is read');
  const bare = quickest(() => Papa.parse(new TextDecoder().decode(bytes)));
  const ours = quickest(() => readFile(bytes, 'sheet.csv'));
  const judged = different < ROWS;
  return {
    what: `${ROWS} rows, ${judged ? `${different} different parts` : 'drawn anew for each row'}`,
    ours: milliseconds(ours),
    other: milliseconds(bare),
    ratio: `${(ours / bare).toFixed(1)} ×`,
    target: judged ? `≤ ${MOST_RATIO} ×` : '',
    ok: !judged || ours / bare <= MOST_RATIO,
  };
}

export const bench: Bench = {
  name: 'read',
  about:
    'texts and sheets to parts, processor time, each the least of three; other: a tenth of the input, or for the whole sheet a bare parse of the same bytes by papaparse, cells as text',
  run(tell) {
    tell('read: descriptions');
    const rows = [
      descriptions(),
      longer('words', words),
      longer('garbage', garbage),
      longer('one mark over and over', (characters) => '('.repeat(characters)),
      longer('digits over and over', (characters) => '10'.repeat(characters / 2)),
      longer('blanks over and over', (characters) => ' 1'.repeat(characters / 2)),
    ];
    const [small, large] = [syntheticSheet(ROWS / 10, DIFFERENT / 10), syntheticSheet(ROWS, DIFFERENT)];
    rows.push(
      growth(
        `sheet, ${ROWS / 10} → ${ROWS} rows`,
        () => readFile(small, 'a.csv'),
        () => readFile(large, 'b.csv'),
      ),
    );
    rows.push(sheet(DIFFERENT, tell), sheet(ROWS, tell));
    return Promise.resolve(rows);
  },
};
