/** IEC 60063:2015: the members of E24, ten times over. E12, E6 and E3 are every second, fourth and eighth of them. */
export const E24 = [10, 11, 12, 13, 15, 16, 18, 20, 22, 24, 27, 30, 33, 36, 39, 43, 47, 51, 56, 62, 68, 75, 82, 91] as const;

/** Members of E48 to E192 that are not the rounded power of ten of their place, a hundred times over: 9.19 would be the rounded one. */
export const NOT_ROUNDED: Readonly<Record<number, number>> = { 919: 920 };
