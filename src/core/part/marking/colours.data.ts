/** The colours of bands, in the order of their figures. */
export const COLOURS = [
  'black',
  'brown',
  'red',
  'orange',
  'yellow',
  'green',
  'blue',
  'violet',
  'grey',
  'white',
  'gold',
  'silver',
  'pink',
] as const;
export type Colour = (typeof COLOURS)[number];

/**
 * What a colour says as a figure, a power of ten, a tolerance (± in %) and a temperature coefficient (± in 10⁻⁶/K): IEC 60062:2016,
 * from secondary sources. `older` is the tolerance that tables before 2016 gave it; those of orange and yellow stood in no standard.
 */
export interface ColourRow {
  readonly figure?: string;
  readonly times?: number;
  readonly tolerance?: string;
  readonly older?: string;
  readonly temperature?: string;
}

export const COLOUR_ROWS: Readonly<Record<Colour, ColourRow>> = {
  black: { figure: '0', times: 0, temperature: '250' },
  brown: { figure: '1', times: 1, tolerance: '1', temperature: '100' },
  red: { figure: '2', times: 2, tolerance: '2', temperature: '50' },
  orange: { figure: '3', times: 3, tolerance: '0.05', older: '3', temperature: '15' },
  yellow: { figure: '4', times: 4, tolerance: '0.02', older: '4', temperature: '25' },
  green: { figure: '5', times: 5, tolerance: '0.5', temperature: '20' },
  blue: { figure: '6', times: 6, tolerance: '0.25', temperature: '10' },
  violet: { figure: '7', times: 7, tolerance: '0.1', temperature: '5' },
  grey: { figure: '8', times: 8, tolerance: '0.01', older: '0.05', temperature: '1' },
  white: { figure: '9', times: 9 },
  gold: { times: -1, tolerance: '5' },
  silver: { times: -2, tolerance: '10' },
  pink: { times: -3 },
};

export type Slot = 'figure' | 'times' | 'tolerance' | 'temperature' | 'extra';

/** The ways in which bands stand on a resistor; `tolerances` are the usual ones, `only` the ones without which the way is not used. */
export interface BandLayout {
  readonly notation: string;
  readonly slots: readonly Slot[];
  readonly tolerances: readonly Colour[];
  readonly only?: readonly Colour[];
}

export const LAYOUTS: readonly BandLayout[] = [
  { notation: 'bands-3', slots: ['figure', 'figure', 'times'], tolerances: [] },
  { notation: 'bands-4', slots: ['figure', 'figure', 'times', 'tolerance'], tolerances: ['gold', 'silver', 'brown', 'red'] },
  {
    notation: 'bands-5',
    slots: ['figure', 'figure', 'figure', 'times', 'tolerance'],
    tolerances: ['brown', 'red', 'green', 'blue', 'violet'],
  },
  // four bands and one that tells of reliability or temperature: makers' sheets, older and military parts
  {
    notation: 'bands-4-extra',
    slots: ['figure', 'figure', 'times', 'tolerance', 'extra'],
    tolerances: ['gold', 'silver'],
    only: ['gold', 'silver'],
  },
  {
    notation: 'bands-6',
    slots: ['figure', 'figure', 'figure', 'times', 'tolerance', 'temperature'],
    tolerances: ['brown', 'red', 'green', 'blue', 'violet'],
  },
];

/** Temperature coefficients that are met on resistors (common practice, no source). */
export const USUAL_TEMPERATURES: readonly Colour[] = ['brown', 'red', 'yellow', 'orange', 'blue', 'violet'];
