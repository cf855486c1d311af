/**
 * What the places of a dielectric code mean. Temperatures in °C; changes of capacitance in tenths of a percent of that at 25 °C;
 * coefficients in tenths of 1e-6/K, tolerances of them in 1e-6/K. EIA-198-1 (text not seen: makers' pages and public tables agree,
 * `L` from memory of edition F); IEC 60384-8/-21 and -9/-22 from memory.
 */

/** EIA-198 class 2 and 3, first place: the lowest temperature. */
export const LOWEST: Readonly<Record<string, number>> = { X: -55, Y: -30, Z: 10 };

/** Second place: the highest temperature. Sources contradict each other on 3. */
export const HIGHEST: Readonly<Record<string, number>> = { '2': 45, '4': 65, '5': 85, '6': 105, '7': 125, '8': 150, '9': 200 };

/** Third place: how far the capacitance may fall and rise within that range. */
export const CHANGES: Readonly<Record<string, readonly [down: number, up: number]>> = {
  A: [10, 10], B: [15, 15], C: [22, 22], D: [33, 33], E: [47, 47], F: [75, 75], P: [100, 100], R: [150, 150], S: [220, 220],
  T: [330, 220], U: [560, 220], V: [820, 220], L: [400, 150],
};

/** EIA-198 class 1, first place: the figures of the temperature coefficient, in tenths. */
export const FIGURES: Readonly<Record<string, number>> = { C: 0, B: 3, L: 8, A: 9, M: 10, P: 15, R: 22, S: 33, T: 47, V: 56, U: 75 };

/** Second place: what they are multiplied by. Sources contradict each other on 4, 5 and 9, which no code in use has. */
export const MULTIPLIERS: Readonly<Record<string, number>> = { '0': -1, '1': -10, '2': -100, '3': -1000, '6': 10, '7': 100, '8': 1000 };

/** Third place, and the second of the IEC code: how far a part may be from its coefficient. F is of IEC alone. */
export const SPREADS: Readonly<Record<string, number>> = { F: 15, G: 30, H: 60, J: 120, K: 250, L: 500, M: 1000, N: 2500 };

/** IEC 60384-8 and -21, class 1: the nominal coefficient by its letter. JIS writes its codes so too. */
export const IEC_COEFFICIENTS: Readonly<Record<string, number>> = {
  A: 1000, C: 0, H: -330, L: -750, P: -1500, R: -2200, S: -3300, T: -4700, U: -7500,
};

/** IEC 60384-9 and -22, class 2: the change by its letter, without voltage. */
export const IEC_CHANGES: Readonly<Record<string, readonly [down: number, up: number]>> = {
  B: [100, 100], C: [200, 200], D: [300, 200], E: [560, 220], F: [800, 300], R: [150, 150], X: [150, 150],
};

/** Its figure: the category temperatures. */
export const IEC_RANGES: Readonly<Record<string, readonly [low: number, high: number]>> = {
  '1': [-55, 125], '2': [-55, 85], '3': [-40, 85], '4': [-25, 85], '5': [-10, 85], '6': [10, 85],
};
