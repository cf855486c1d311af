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
