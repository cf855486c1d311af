/** What the page says that tells what a stray part is. */
import type { Colour } from '#core/part/marking/colours.data.ts';

export const STRAY_PAGE = {
  looks: 'What do you see?',
  begin: 'What is this stray part?',
  beginBands: 'Set its bands from either end; the page reads them both ways.',
  beginMark: 'Type what is printed on it; the page says every part that it may be.',
  count: 'How many bands?',
  which: 'Which band to set',
  gap: 'Where is a wider gap between bands?',
  gaps: { none: 'I see none', first: 'after the first band', last: 'before the last band' },
  more: 'What else do you see?',
  old: 'It is from before 2016',
  clear: 'Clear the bands',
  mark: 'What is printed on it',
  markHelp: 'As it stands there: 472, 10R, 68X, 104K, 4n7, 2A474J',
  underlined: 'A line stands under or over the figures',
  reading: 'Looking for its bag…',
  notSet: 'not set',
  caption: 'Readings, the most plausible first',
  readsAs: 'Read as: ',
  columns: {
    plausible: 'Plausible?',
    reading: 'Reading',
    how: 'How it reads',
    why: 'What speaks for and against it',
    bags: 'Bags it may belong in',
  },
  speaks: { for: 'for: ', against: 'against: ', neither: 'note: ' },
  cautions: {
    chip: 'a chip, and chips have no bands',
    safety: 'a safety part: only with its class printed on it',
  },
  noBag: 'No bag holds it.',
  moreBags: 'All bags like it',
  receive: 'Nothing like it? Receive it',
  exhausted: 'exhausted',
  measure: 'A meter settles the value, not the tolerance.',
  sure: 'Measure it before it goes where a wrong value can do harm.',
} as const;

export const COLOUR_WORDS: Readonly<Record<Colour, string>> = {
  black: 'black',
  brown: 'brown',
  red: 'red',
  orange: 'orange',
  yellow: 'yellow',
  green: 'green',
  blue: 'blue',
  violet: 'violet',
  grey: 'grey',
  white: 'white',
  gold: 'gold',
  silver: 'silver',
  pink: 'pink',
};

export const sayBandIs = (band: number): string => `Band ${band} is`;
export const saySetBand = (band: number, count: number): string => `Set band ${band} of ${count}.`;
export const sayLikely = (reading: string): string => `It is most likely ${reading}.`;
export const sayPerhaps = (reading: string): string => `It may be ${reading}, but that is not sure.`;
/** Two or more readings of which none is more likely: each is named once. */
export const sayEither = (readings: readonly string[]): string =>
  `It is ${readings.slice(0, -1).join(', ')} or ${readings.at(-1)}.`;

/** Readings that are less likely, or no likelier than the one that is named. */
export const sayAlso = (readings: readonly string[]): string =>
  readings.length === 0 ? '' : `It may also be ${readings.join(' or ')}.`;

/** What the drawing shows, for who does not see it. */
export function sayDrawn(bands: readonly (Colour | null)[], gap: number | null): string {
  const named = bands.map((band, at) => {
    const word = band === null ? STRAY_PAGE.notSet : COLOUR_WORDS[band];
    return at === gap ? `then a wider gap, ${word}` : word;
  });
  return `A resistor with the bands ${named.join(', ')}`;
}

/** A figure and how many are in the bag. */
export const sayInBag = (amount: string): string => `${amount} on hand`;
