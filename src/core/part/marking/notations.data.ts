import { e96Code, EIA198, FOUR, lettered, LINK, plain, POINTED, readOnly, THREE, THREE_SMALL, type Marks } from './marks.ts';
import type { Look } from './marking.ts';

/**
 * One way in which a value is printed on parts of one look. `power` scales what is read to the base unit; `letters` are the tolerance
 * letters that may follow; `rated` lets a rated voltage stand beside; `exact` keeps the case. A new way is a new row.
 */
export interface NotationRow {
  readonly notation: string;
  readonly look: Exclude<Look, 'bands'>;
  readonly marks: Marks;
  readonly power: number;
  readonly use: 'usual' | 'less-usual' | 'seldom' | 'rare';
  readonly letters?: string;
  readonly rated?: boolean;
  readonly exact?: boolean;
  /** ± of every part that is marked so, as a fraction */
  readonly tolerance?: string;
  /** a letter of a tantalum chip's rated voltage stands before or behind */
  readonly tantalum?: boolean;
}

const PICO = -12;
const MICRO = -6;
const SMALL_LETTERS = 'BCDFGJKMZ';
/** With the seldom letters of IEC 60062 and those that only makers define. */
const ALL_LETTERS = 'ABCDFGHJKLMNPQRSTUVWYZ';
const POINT_LETTERS = { P: -12, N: -9, U: -6 };

/** Sources: IEC 60062 clauses 4, 5 and 7 (secondary sources), EIA-198 for the letter code; how usual each is: common practice. */
export const NOTATION_ROWS: readonly NotationRow[] = [
  { notation: 'link', look: 'chip', marks: LINK, power: 0, use: 'usual' },
  { notation: 'three-figures', look: 'chip', marks: THREE, power: 0, use: 'usual', letters: 'BCDFGJKM' },
  { notation: 'four-figures', look: 'chip', marks: FOUR, power: 0, use: 'usual', letters: 'BCDFGJ' },
  { notation: 'r-point', look: 'chip', marks: lettered({ R: 0 }), power: 0, use: 'usual', letters: 'BCDFGJKM' },
  { notation: 'k-point', look: 'chip', marks: lettered({ K: 3, M: 6, G: 9 }), power: 0, use: 'usual', letters: 'BCDFGJKM' },
  { notation: 'l-point', look: 'chip', marks: lettered({ L: -3 }), power: 0, use: 'usual', letters: 'DFGJ' },
  { notation: 'm-point', look: 'chip', marks: readOnly(lettered({ m: -3 })), power: 0, use: 'seldom', exact: true },
  { notation: 'e96', look: 'chip', marks: e96Code('ZYXABHCDEF'), power: 0, use: 'usual', tolerance: '0.01' },
  { notation: 'e96-older', look: 'chip', marks: readOnly(e96Code('RS')), power: 0, use: 'less-usual', tolerance: '0.01' },
  { notation: 'plain', look: 'chip', marks: readOnly(plain('1,2')), power: 0, use: 'seldom' },

  { notation: 'three-figures', look: 'capacitor', marks: THREE_SMALL, power: PICO, use: 'usual', letters: ALL_LETTERS, rated: true },
  { notation: 'plain-pf', look: 'capacitor', marks: plain('1,2'), power: PICO, use: 'usual', letters: SMALL_LETTERS, rated: true },
  { notation: 'plain-pf-long', look: 'capacitor', marks: plain('4,5'), power: PICO, use: 'usual', letters: SMALL_LETTERS, rated: true },
  { notation: 'plain-pf-three', look: 'capacitor', marks: readOnly(plain('3')), power: PICO, use: 'seldom', letters: SMALL_LETTERS, rated: true },
  { notation: 'four-figures', look: 'capacitor', marks: readOnly(FOUR), power: PICO, use: 'seldom', letters: SMALL_LETTERS },
  { notation: 'r-point', look: 'capacitor', marks: lettered({ R: 0 }), power: PICO, use: 'usual', letters: `A${SMALL_LETTERS}`, rated: true },
  { notation: 'npu-point', look: 'capacitor', marks: lettered(POINT_LETTERS), power: 0, use: 'usual', letters: ALL_LETTERS, rated: true },
  { notation: 'point', look: 'capacitor', marks: POINTED, power: MICRO, use: 'usual', letters: SMALL_LETTERS, rated: true },
  { notation: 'point-pf', look: 'capacitor', marks: readOnly(POINTED), power: PICO, use: 'seldom', letters: SMALL_LETTERS },
  { notation: 'eia-198', look: 'capacitor', marks: EIA198, power: PICO, use: 'less-usual', exact: true },
  { notation: 'm-point', look: 'capacitor', marks: readOnly(lettered({ m: -3 })), power: 0, use: 'seldom', exact: true },
  { notation: 'm-for-micro', look: 'capacitor', marks: readOnly(lettered({ M: -6 })), power: 0, use: 'rare', exact: true },

  { notation: 'plain-uf', look: 'can', marks: plain('1,5'), power: MICRO, use: 'usual', letters: 'MKQTSZ', rated: true },
  { notation: 'point', look: 'can', marks: POINTED, power: MICRO, use: 'usual', letters: 'MKQTSZ', rated: true },
  { notation: 'r-point', look: 'can', marks: lettered({ R: 0 }), power: MICRO, use: 'usual', letters: 'MKQTSZ', rated: true },
  { notation: 'npu-point', look: 'can', marks: lettered({ N: -9, U: -6 }), power: 0, use: 'usual', letters: 'MKQTSZ', rated: true },
  { notation: 'm-point', look: 'can', marks: readOnly(lettered({ m: -3 })), power: 0, use: 'less-usual', exact: true, rated: true },
  { notation: 'three-figures', look: 'can', marks: THREE, power: PICO, use: 'usual', letters: ALL_LETTERS, rated: true },
  { notation: 'tantalum-letter', look: 'can', marks: THREE, power: PICO, use: 'usual', exact: true, tantalum: true },

  { notation: 'three-figures', look: 'coil', marks: THREE, power: MICRO, use: 'usual', letters: 'FGJKMN' },
  { notation: 'r-point', look: 'coil', marks: lettered({ R: 0 }), power: MICRO, use: 'usual', letters: 'FGJKMN' },
  { notation: 'n-point', look: 'coil', marks: lettered({ N: -9 }), power: 0, use: 'usual', letters: 'BCDFGHJKMS' },
  { notation: 'u-point', look: 'coil', marks: readOnly(lettered({ U: -6 })), power: 0, use: 'less-usual', letters: 'FGJKM' },
  { notation: 'plain-uh', look: 'coil', marks: readOnly(plain('1,2')), power: MICRO, use: 'less-usual', letters: 'JKM' },
  { notation: 'plain-uh-three', look: 'coil', marks: readOnly(plain('3')), power: MICRO, use: 'seldom', letters: 'JKM' },
  { notation: 'four-figures', look: 'coil', marks: FOUR, power: MICRO, use: 'seldom', letters: 'FGJKM' },
];

/** Unit and kind by look. */
export const OF_LOOK = {
  chip: { kind: 'resistor', unit: 'ohm' },
  capacitor: { kind: 'capacitor', unit: 'F' },
  can: { kind: 'capacitor', unit: 'F' },
  coil: { kind: 'inductor', unit: 'H' },
} as const;
