/** Powers of ten by SI prefix (SI brochure, table 7), with the spellings that the trade uses for them. */
export const PREFIXES: readonly (readonly [power: number, spellings: readonly string[]])[] = [
  [-15, ['f']],
  [-12, ['p']],
  [-9, ['n']],
  [-6, ['u', 'µ']],
  [-3, ['m']],
  [0, ['']],
  [3, ['k', 'K']],
  [6, ['M']],
  [9, ['G']],
  [12, ['T']],
];

/** Prefixes written as words or short words before a unit: `4.7 meg`, `10 micro F`. */
export const PREFIX_WORDS: Readonly<Record<string, number>> = {
  meg: 6, mega: 6, kilo: 3, kil: 3, milli: -3, micro: -6, mic: -6, nano: -9, pico: -12,
};

/**
 * Units that stand beside numbers in descriptions. `upperM` is what `M` means where nothing in the text has lower case and the
 * prefix can't be told apart (`10MH` is milli, `16MHZ` mega; common practice, no source); `smallest`/`largest` are the powers
 * that occur in the trade. A unit without a fact of its own is listed so that its number is not taken for something else.
 */
export interface UnitRow {
  readonly unit: string;
  readonly spellings: readonly string[];
  readonly smallest?: number;
  readonly largest?: number;
  readonly upperM?: number;
  readonly note?: string;
}

export const UNIT_ROWS: readonly UnitRow[] = [
  { unit: 'ohm', spellings: ['Ω', 'ohm', 'ohms', 'Ohm', 'Ohms', 'ohmios', 'ohmia', 'ohmin', 'オーム', 'R'], smallest: -6, largest: 12, upperM: 6 },
  { unit: 'F', spellings: ['F', 'Farad', 'farad', 'farads', 'FD'], smallest: -15, largest: 0, upperM: -6 },
  { unit: 'H', spellings: ['H', 'Henry', 'henry', 'henries', 'Hy', 'HY'], smallest: -12, largest: 0, upperM: -3 },
  { unit: 'Hz', spellings: ['Hz', 'hertz', 'c/s'], smallest: 0, largest: 9, upperM: 6 },
  { unit: 'V', spellings: ['V', 'volt', 'volts', 'Volt', 'Volts', 'WV', 'Vrms', 'Vz'], smallest: -6, largest: 3, upperM: -3 },
  { unit: 'V', spellings: ['VDC', 'Vdc', 'vdc', 'Vcc', 'WVDC', 'DCV', 'V=', 'VGL'], smallest: -3, largest: 3, upperM: -3, note: 'dc' },
  { unit: 'V', spellings: ['VAC', 'Vac', 'vac', 'ACV', 'V~'], smallest: -3, largest: 3, upperM: -3, note: 'ac' },
  { unit: 'V', spellings: ['Vds', 'VDS', 'Vdss', 'VDSS', 'Vce', 'VCE', 'Vceo', 'VCEO', 'Vr', 'VR', 'Vrrm', 'VRRM', 'Vrwm', 'VRWM', 'VWM', 'Vwm', 'PIV'], smallest: 0, largest: 3, note: 'rating' },
  { unit: 'V', spellings: ['Vout', 'VOUT', 'Vo', 'VO'], smallest: 0, largest: 0, note: 'out' },
  { unit: 'V', spellings: ['Vin', 'VIN', 'Vf', 'VF', 'Vgs', 'VGS', 'Vth', 'Vc', 'Vbr'], smallest: 0, largest: 0, note: 'other' },
  { unit: 'A', spellings: ['A', 'amp', 'amps', 'Amp', 'Amps', 'Ampere', 'ampere', 'amperes', 'ADC', 'Adc', 'AAC', 'Aac'], smallest: -12, largest: 3, upperM: -3 },
  { unit: 'W', spellings: ['W', 'watt', 'watts', 'Watt', 'Watts'], smallest: -6, largest: 3, upperM: -3 },
  { unit: 'fraction', spellings: ['%', 'percent', 'pct', 'Prozent'] },
  { unit: 'ppm', spellings: ['ppm', 'PPM'] },
  { unit: 'm', spellings: ['m'], smallest: -9, largest: -2, upperM: -3 },
  { unit: 'm', spellings: ['mm', 'MM', 'cm', 'CM'], note: 'length' },
  { unit: 'inch', spellings: ['"', 'in', 'inch', 'zoll', 'Zoll', 'pouces', 'mil', 'mils'] },
  { unit: 'Ah', spellings: ['Ah', 'AH'], smallest: -3, largest: 0, upperM: -3 },
  { unit: 'degC', spellings: ['°C', '°', 'C', 'degC', '℃', '°F'] },
  { unit: 'cd', spellings: ['cd', 'CD'], smallest: -6, largest: 0, upperM: -3 },
  { unit: 'other', spellings: ['s', 'S', 'g', 'lm', 'Pa', 'bps', 'b', 'B', 'bit', 'Bit', 'byte', 'Bytes', 'bits', 'baud', 'SPS', 'VA'], smallest: -12, largest: 12, upperM: 6 },
  { unit: 'other', spellings: ['AWG', 'awg', 'RPM', 'rpm', 'KV', 'dB', 'dBm', 'dBi', 'turns', 'hours', 'H/105C', 'rev', 'lbs', 'oz', 'kg', 'st', 'nd', 'rd', 'th', 'x'] },
  { unit: 'K/W', spellings: ['K/W', '°C/W', 'ppm/K', 'ppm/°C', 'ppm/C', 'PPM/C'] },
  { unit: 'pins', spellings: ['pin', 'pins', 'Pin', 'Pins', 'PIN', 'PINS', 'pos', 'POS', 'Pos', 'POSN', 'way', 'ways', 'WAY', 'polig', 'pol', 'position', 'positions', 'Position', 'broches', 'pines', 'poli', 'contact', 'contacts', 'P', 'ckt', 'CKT', 'cond', 'pinnar', 'ピン', '極'] },
];

/** Units in one character (Unicode block CJK Compatibility), as Japanese and Chinese sheets have them: `10㎌`, `4.7㏀`. */
export const SQUARED: readonly (readonly [sign: string, unit: string, power: number])[] = [
  ['㏀', 'ohm', 3], ['㏁', 'ohm', 6], ['㎊', 'F', -12], ['㎋', 'F', -9], ['㎌', 'F', -6],
  ['㎐', 'Hz', 0], ['㎑', 'Hz', 3], ['㎒', 'Hz', 6], ['㎓', 'Hz', 9],
  ['㎶', 'V', -6], ['㎷', 'V', -3], ['㎸', 'V', 3], ['㎁', 'A', -9], ['㎂', 'A', -6], ['㎃', 'A', -3], ['㎄', 'A', 3],
  ['㎼', 'W', -6], ['㎽', 'W', -3], ['㎾', 'W', 3],
];
