/** Metric threads: the coarse pitch and the fine ones, in mm (ISO 261 and ISO 262; M1 to M2.6 of older national standards included). */
export const METRIC_THREADS: readonly (readonly [size: string, coarse: string, fine: string])[] = [
  ['1', '0.25', ''], ['1.2', '0.25', ''], ['1.4', '0.3', ''], ['1.6', '0.35', '0.2'], ['1.7', '0.35', ''], ['2', '0.4', '0.25'],
  ['2.2', '0.45', ''], ['2.3', '0.4', ''], ['2.5', '0.45', '0.35'], ['2.6', '0.45', ''], ['3', '0.5', '0.35'], ['3.5', '0.6', '0.35'],
  ['4', '0.7', '0.5'], ['5', '0.8', '0.5'], ['6', '1', '0.75'], ['8', '1.25', '1 0.75'], ['10', '1.5', '1.25 1 0.75'],
  ['12', '1.75', '1.5 1.25 1'], ['14', '2', '1.5'], ['16', '2', '1.5 1'],
];

/** Plain washers by their measures in mm: hole, outer diameter, thickness (ISO 7089), and the thread that they are for. */
export const PLAIN_WASHERS: readonly (readonly [thread: string, hole: string, outer: string, thick: string])[] = [
  ['M1.6', '1.7', '4', '0.3'], ['M2', '2.2', '5', '0.3'], ['M2.5', '2.7', '6', '0.5'], ['M3', '3.2', '7', '0.5'],
  ['M4', '4.3', '9', '0.8'], ['M5', '5.3', '10', '1'], ['M6', '6.4', '12', '1.6'], ['M8', '8.4', '16', '1.6'],
];
