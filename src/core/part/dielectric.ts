import {
  CHANGES,
  FIGURES,
  HIGHEST,
  IEC_CHANGES,
  IEC_COEFFICIENTS,
  IEC_RANGES,
  LOWEST,
  MULTIPLIERS,
  SPREADS,
} from './dielectric-letters.data.ts';

/** What a dielectric code promises. */
export interface Dielectric {
  readonly class: 1 | 2;
  /** Each measures the change from another temperature (25 and 20 °C), so that equal figures are not equal limits. */
  readonly system: 'eia' | 'iec';
  /** °C */
  readonly low: number;
  readonly high: number;
  /** class 1: the lowest and highest temperature coefficient, tenths of 1e-6/K; class 2: null */
  readonly coefficient: readonly [least: number, most: number] | null;
  /** how far the capacitance may fall and rise within the range, 1e-7 of it */
  readonly down: number;
  readonly up: number;
}

/** Names that makers and trade have for one code. `CG` of IEC is taken for it too, as everybody does. */
const SAME: Readonly<Record<string, string>> = { NP0: 'C0G', NPO: 'C0G', COG: 'C0G', CG0: 'C0G', CG: 'C0G' };

/** `NP0` → `C0G`, `x7r` → `X7R`. */
export function dielectricName(code: string): string {
  const name = code.trim().toUpperCase();
  return SAME[name] ?? name;
}

/**
 * What a code means: `X7R` → class 2, −55 to 125 °C, ±15 %; `U2J` → class 1, −750 ±120 ppm/K; `2C1` (IEC) → class 2, −55 to 125 °C,
 * ±20 %. Null for what is no such code, or one whose meaning sources give differently (`X3R`).
 */
export function readDielectric(code: string): Dielectric | null {
  const name = dielectricName(code);
  if (name === 'SL') return classOne([-10_000, 3500], 'iec', 20, 85);
  if (name.length === 2) return iecClassOne(name);
  if (name.length !== 3) return null;
  return iecClassTwo(name) ?? eiaClassTwo(name) ?? eiaClassOne(name);
}

function eiaClassTwo([first = '', second = '', third = '']: string): Dielectric | null {
  const [low, high, change] = [LOWEST[first], HIGHEST[second], CHANGES[third]];
  return low === undefined || high === undefined || !change ? null : classTwo(low, high, change, 'eia');
}

function iecClassTwo([first, second = '', third = '']: string): Dielectric | null {
  const [change, range] = [IEC_CHANGES[second], IEC_RANGES[third]];
  return first !== '2' || !change || !range ? null : classTwo(range[0], range[1], change, 'iec');
}

function eiaClassOne([first = '', second = '', third = '']: string): Dielectric | null {
  const [figure, multiplier, spread] = [FIGURES[first], MULTIPLIERS[second], SPREADS[third]];
  if (figure === undefined || multiplier === undefined || spread === undefined || third === 'F') return null;
  return classOne(around(figure * multiplier, spread), 'eia');
}

function iecClassOne([first = '', second = '']: string): Dielectric | null {
  const [nominal, spread] = [IEC_COEFFICIENTS[first], SPREADS[second]];
  return nominal === undefined || spread === undefined || spread > 250 ? null : classOne(around(nominal, spread), 'iec');
}

const around = (nominal: number, spread: number): [number, number] => [nominal - spread * 10, nominal + spread * 10];

const TENTHS_OF_PERCENT = 10_000;

function classTwo(low: number, high: number, [down, up]: readonly [number, number], system: Dielectric['system']): Dielectric {
  return { class: 2, system, low, high, coefficient: null, down: down * TENTHS_OF_PERCENT, up: up * TENTHS_OF_PERCENT };
}

/** A class 1 code names no range; −55 to 125 °C is what they are made for (common practice). */
function classOne(coefficient: readonly [number, number], system: Dielectric['system'], low = -55, high = 125): Dielectric {
  const [below, above] = [low - ROOM, high - ROOM];
  const changes = coefficient.flatMap((tenths) => [tenths * below, tenths * above]);
  return { class: 1, system, low, high, coefficient, down: -Math.min(0, ...changes), up: Math.max(0, ...changes) };
}

/** °C from which the change is counted (EIA-198) */
const ROOM = 25;

/** How one dielectric stands for another. */
export type DielectricFit = 'same' | 'serves' | 'close' | 'falls-short' | 'unknown';

/**
 * May a capacitor of this dielectric stand for one of that? It does when it holds at least the range of temperature and changes at most
 * as much: `X7R` for `X5R` → serves; `X7R` for `Y5P` → falls-short (±15 % is more than ±10 %); class 2 never for class 1. `close`: the
 * same figures in the other system (`2R1` for `X7R`). The rule is a definition computed from the codes, not a clause of a standard.
 */
export function dielectricFit(has: string, asked: string): DielectricFit {
  if (dielectricName(has) === dielectricName(asked)) return 'same';
  const [mine, wanted] = [readDielectric(has), readDielectric(asked)];
  if (!mine || !wanted) return 'unknown';
  if (mine.low > wanted.low || mine.high < wanted.high) return 'falls-short';
  const bands: readonly [Band, Band] =
    wanted.coefficient && mine.coefficient ? [mine.coefficient, wanted.coefficient] : [changeOf(mine), changeOf(wanted)];
  if ((wanted.class === 1 && mine.class === 2) || !isWithin(...bands)) return 'falls-short';
  return mine.system === wanted.system || isClearOf(...bands) ? 'serves' : 'close';
}

type Band = readonly [least: number, most: number];
const changeOf = ({ down, up }: Dielectric): Band => [-down, up];
const isWithin = (mine: Band, wanted: Band): boolean => mine[0] >= wanted[0] && mine[1] <= wanted[1];
/** Within, with something to spare on both sides. */
const isClearOf = (mine: Band, wanted: Band): boolean => mine[0] > wanted[0] && mine[1] < wanted[1];

/** Is more than half of the capacitance lost at an end of the range, as with `Y5V` and `Z5U`? */
export function losesHalf(code: string): boolean {
  return (readDielectric(code)?.down ?? 0) > 500 * TENTHS_OF_PERCENT;
}

/** Is it of class 2, whose capacitance also falls with the voltage that lies across it? */
export function losesUnderBias(code: string): boolean {
  return readDielectric(code)?.class === 2;
}
