import { digitsOf, fromDigits, parseDecimal, shift, type Decimal } from '#core/quantity/decimal.ts';
import { readFigures, readRkm, writeFigures } from '#core/quantity/mark.ts';
import { membersIn } from '#core/quantity/series.ts';
import { plainDigits } from '#core/quantity/write-quantity.ts';
import { EIA198_FIGURES, EIA96_POWERS } from './codes.data.ts';
import type { Piece } from './marking.ts';

/** How a value is printed: its shape as a pattern, its reader and its writer; both in the unit of the notation that uses it. */
export interface Marks {
  readonly shape: string;
  readonly read: (marks: string) => Decimal | null;
  readonly write: (value: Decimal) => string | null;
  /** figures that it can tell apart */
  readonly figures: 2 | 3;
  /** it can say no other values than those that are made */
  readonly closed?: true;
  readonly pieces?: (marks: string) => readonly Piece[];
}

const lastTimes = (marks: string): Piece[] => {
  const power = Number(marks.at(-1));
  return [
    { typed: marks.slice(0, -1), is: 'figures', means: marks.slice(0, -1) },
    { typed: marks.slice(-1), is: 'times', means: String(power) },
  ];
};
const lastTimesSmall = (marks: string): Piece[] => {
  const [figures, times] = lastTimes(marks);
  const power = Number(times?.means ?? 0);
  return figures && times ? [figures, { ...times, means: String(power > 7 ? power - 10 : power) }] : [];
};

/** Noughts alone are a link, which is a notation of its own. */
const nonZero = (value: Decimal, text: string | null): string | null => (digitsOf(value).digits === 0n ? null : text);

/** `472`: two figures and a power of ten. */
export const THREE: Marks = {
  shape: String.raw`(?!000)\d{3}`,
  read: (marks) => readFigures(marks),
  write: (value) => nonZero(value, writeFigures(value, 2)),
  figures: 2,
  pieces: lastTimes,
};

/** As `472`, but a last 8 or 9 is ×0.01 or ×0.1: capacitors in pF. */
export const THREE_SMALL: Marks = {
  ...THREE,
  read: (marks) => readFigures(marks, true),
  write: (value) => nonZero(value, writeFigures(value, 2, true)),
  pieces: lastTimesSmall,
};

/** `4992`: three figures and a power of ten. */
export const FOUR: Marks = {
  shape: String.raw`(?!0000)\d{4}`,
  read: (marks) => readFigures(marks),
  write: (value) => nonZero(value, writeFigures(value, 3)),
  figures: 3,
  pieces: lastTimes,
};

/** `0`, `000`: a link. */
export const LINK: Marks = {
  shape: '0{1,4}',
  read: () => fromDigits(0n, 0),
  write: (value) => (digitsOf(value).digits === 0n ? '000' : null),
  figures: 2,
  pieces: (marks) => [{ typed: marks, is: 'link', means: '0' }],
};

/** Figures as they are, `digits` of them: `47`, `2200`. */
export function plain(digits: string): Marks {
  return {
    shape: String.raw`(?!0)\d{${digits}}`,
    read: (marks) => parseDecimal(marks),
    write: (value) => {
      const { exponent } = digitsOf(value);
      const text = exponent < 0 || exponent > 6 ? null : plainDigits(value);
      return text !== null && new RegExp(`^\\d{${digits}}$`).test(text) ? text : null;
    },
    figures: 3,
  };
}

/** With a point: `.022`, `0.47`. */
export const POINTED: Marks = {
  shape: String.raw`\d{0,3}[.,]\d{1,4}`,
  read: (marks) => parseDecimal(marks.replace(',', '.')),
  write: (value) => {
    const text = plainDigits(value).replace(/^0/, '');
    return /^\d{0,3}\.\d{1,4}$/.test(text) ? text : null;
  },
  figures: 3,
};

/**
 * A letter where the point stands (IEC 60062 clause 4), written in capitals and read in any case: `4R7`, `47K`, `N47`. `powers` says
 * what each letter is worth.
 */
export function lettered(powers: Readonly<Record<string, number>>): Marks {
  const any = `[${Object.keys(powers).join('')}]`;
  return {
    shape: String.raw`\d{1,3}${any}\d{1,2}|\d{1,3}${any}|${any}\d{1,3}`,
    read: (marks) => {
      const match = /^(\d*)(\D)(\d*)$/.exec(marks);
      const [, whole = '', letter = '', part = ''] = match ?? [];
      const power = powers[letter];
      // the rule of the standard is `readRkm`'s; the letters of a printed part are more than its own
      const read = match && power !== undefined ? readRkm(`${whole}R${part}`) : null;
      return read === null ? null : shift(read, power ?? 0);
    },
    write: (value) => {
      const texts = Object.entries(powers)
        .toSorted(([, a], [, b]) => b - a)
        .flatMap(([letter, power]) => pointed(value, power, letter) ?? []);
      // `100N` rather than `U1`
      return texts.find((text) => /^\d/.test(text)) ?? texts[0] ?? null;
    },
    figures: 3,
  };
}

/** `4R7`, `470R`, `R47`, or null where the letter's power does not suit. */
function pointed(value: Decimal, power: number, letter: string): string | null {
  const { digits } = digitsOf(value);
  if (digits <= 0n) return null;
  const [whole = '', part = ''] = plainDigits(value, -power).split('.');
  if (whole.length > 3 || (whole === '0' && part.startsWith('00')) || part.length > 3) return null;
  if (whole === '0') return `${letter}${part}`;
  return whole.length === 1 && part === '' ? `${whole}${letter}0` : part.length > 2 ? null : `${whole}${letter}${part}`;
}

/** The members of E96 in the order in which the three-character code numbers them, from 01. */
const E96 = membersIn('E96').map(String);

/** The three-character code of 1 % chip resistors: two figures that number the members of E96, a letter for the power of ten. */
export function e96Code(letters: string): Marks {
  const powerOf = (letter: string): number => EIA96_POWERS[letter] ?? 0;
  return {
    shape: String.raw`\d{2}[${letters}]`,
    read: (marks) => {
      const figures = E96[Number(marks.slice(0, 2)) - 1];
      return figures === undefined ? null : fromDigits(BigInt(figures), powerOf(marks.slice(2)));
    },
    write: (value) => {
      for (const letter of letters)
        for (const [at, figures] of E96.entries())
          if (fromDigits(BigInt(figures), powerOf(letter)) === value) return `${String(at + 1).padStart(2, '0')}${letter}`;
      return null;
    },
    figures: 3,
    pieces: (marks) => [
      { typed: marks.slice(0, 2), is: 'figures', means: E96[Number(marks.slice(0, 2)) - 1] ?? '' },
      { typed: marks.slice(2), is: 'times', means: String(powerOf(marks.slice(2))) },
    ],
  };
}

/** EIA-198: a letter for two figures, a figure for the power of ten, 9 for ×0.1: `A5` is 100 nF. */
export const EIA198: Marks = {
  shape: `[${Object.keys(EIA198_FIGURES).join('')}]\\d`,
  read: (marks) => {
    const figures = EIA198_FIGURES[marks[0] ?? ''];
    const power = Number(marks[1]);
    return figures === undefined ? null : fromDigits(BigInt(figures), (power === 9 ? -1 : power) - 1);
  },
  write: (value) => {
    for (const [letter, figures] of Object.entries(EIA198_FIGURES))
      for (let power = -1; power <= 8; power++)
        if (fromDigits(BigInt(figures), power - 1) === value) return `${letter}${power === -1 ? 9 : power}`;
    return null;
  },
  figures: 2,
  closed: true,
  pieces: (marks) => [
    { typed: marks[0] ?? '', is: 'figures', means: String(Number(EIA198_FIGURES[marks[0] ?? ''] ?? 0) / 10) },
    { typed: marks[1] ?? '', is: 'times', means: marks[1] === '9' ? '-1' : (marks[1] ?? '') },
  ],
};

/** Nothing that fits is written: another notation of the same value is the usual one. */
export const readOnly = (marks: Marks): Marks => ({ ...marks, write: () => null });
