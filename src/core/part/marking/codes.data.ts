/** Significant figures of the series E96 (IEC 60063) in the order in which the three-character code of chip resistors numbers them, from 01. */
export const E96: readonly string[] = `
100 102 105 107 110 113 115 118 121 124 127 130 133 137 140 143 147 150 154 158 162 165 169 174
178 182 187 191 196 200 205 210 215 221 226 232 237 243 249 255 261 267 274 280 287 294 301 309
316 324 332 340 348 357 365 374 383 392 402 412 422 432 442 453 464 475 487 499 511 523 536 549
562 576 590 604 619 634 649 665 681 698 715 732 750 768 787 806 825 845 866 887 909 931 953 976
`
  .trim()
  .split(/\s+/);

/** Significant figures of the series E24 (IEC 60063, a list and no formula). */
export const E24: readonly string[] = '10 11 12 13 15 16 18 20 22 24 27 30 33 36 39 43 47 51 56 62 68 75 82 91'.split(' ');

/** Power of ten by the letter of the three-character code (IEC 60062:2016, clause on E96 marking); R and S are older spellings of Y and X. */
export const EIA96_POWERS: Readonly<Record<string, number>> = {
  Z: -3, Y: -2, R: -2, X: -1, S: -1, A: 0, B: 1, H: 1, C: 2, D: 3, E: 4, F: 5,
};

/** Significant figures by letter in the letter-and-digit code of small chip capacitors (EIA-198, from memory); the case matters. */
export const EIA198_FIGURES: Readonly<Record<string, string>> = {
  A: '10', B: '11', C: '12', D: '13', E: '15', F: '16', G: '18', H: '20', J: '22', K: '24', a: '25', L: '27', M: '30', N: '33', b: '35',
  P: '36', Q: '39', d: '40', R: '43', e: '45', S: '47', f: '50', T: '51', U: '56', m: '60', V: '62', W: '68', n: '70', X: '75', t: '80',
  Y: '82', y: '90', Z: '91',
};

/** Rated voltage by the one letter beside the figures of a tantalum chip, in volts (makers' sheets, from memory). */
export const TANTALUM_VOLTS: Readonly<Record<string, string>> = {
  e: '2.5', G: '4', J: '6.3', A: '10', C: '16', D: '20', E: '25', V: '35', T: '50',
};
