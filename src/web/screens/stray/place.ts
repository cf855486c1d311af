import { useNavigate, useSearch } from '@tanstack/react-router';
import { COLOURS, type Colour } from '#core/part/marking/colours.data.ts';
import { LOOKS, type Look } from '#core/part/marking/marking.ts';
import { wholeWord } from '../../address.ts';

export type Gap = 'first' | 'last';

/** What a person has said of the part so far. */
export interface Seen {
  readonly look: Look;
  /** as many as there are bands; null where one is not set */
  readonly bands: readonly (Colour | null)[];
  /** the band that a colour is chosen for, from 1 */
  readonly band: number;
  readonly gap: Gap | null;
  readonly old: boolean;
  readonly mark: string;
  readonly underlined: boolean;
}

export interface StrayPlace extends Seen {
  readonly go: (change: Partial<Seen>, how?: 'push' | 'replace') => void;
}

export type StrayWords = { readonly [Name in 'look' | 'bands' | 'band' | 'gap' | 'old' | 'mark' | 'line']?: string };

export const BAND_COUNTS = [1, 3, 4, 5, 6] as const;
const USUAL_COUNT = 4;
const UNSET = '-';

const colourNamed = (word: string): Colour | null => COLOURS.find((colour) => colour === word) ?? null;

/** The band that is meant where none is said: the first that is not set, else the first. */
const nextBand = (bands: Seen['bands']): number => Math.max(bands.indexOf(null), 0) + 1;

/** `yellow.violet.-.gold` → four bands, the third not set; what is no list of bands is four that are not set. */
export function readSeen(words: StrayWords): Seen {
  const named = words.bands?.split('.') ?? [];
  const known = BAND_COUNTS.some((count) => count === named.length);
  const bands = known ? named.map(colourNamed) : Array.from({ length: USUAL_COUNT }, () => null);
  return {
    look: LOOKS.find((look) => look === words.look) ?? 'bands',
    bands,
    band: wholeWord(words.band, 1, bands.length) ?? nextBand(bands),
    gap: words.gap === 'first' || words.gap === 'last' ? words.gap : null,
    old: words.old === '1',
    mark: words.mark ?? '',
    underlined: words.line === '1',
  };
}

/** The same, as it stands behind the `?`; what is as it begins is left out. */
export function writeSeen({ look, bands, band, gap, old, mark, underlined }: Seen): StrayWords {
  const plain = bands.length === USUAL_COUNT && bands.every((colour) => colour === null);
  return {
    ...(look !== 'bands' && { look }),
    ...(!plain && { bands: bands.map((colour) => colour ?? UNSET).join('.') }),
    ...(band !== nextBand(bands) && { band: String(band) }),
    ...(gap && { gap }),
    ...(old && { old: '1' }),
    ...(mark && { mark }),
    ...(underlined && { line: '1' }),
  };
}

/** Another number of bands keeps the ones from the left. */
export function recount(seen: Seen, count: number): Pick<Seen, 'bands' | 'band'> {
  const bands = Array.from({ length: count }, (_, at) => seen.bands[at] ?? null);
  return { bands, band: Math.min(seen.band, count) };
}

/** A band in its colour; `onward` goes to the next one that is not set. */
export function paint(seen: Seen, colour: Colour, onward: boolean): Pick<Seen, 'bands' | 'band'> {
  const bands = seen.bands.with(seen.band - 1, colour);
  const after = bands.indexOf(null, seen.band);
  const next = after === -1 ? bands.indexOf(null) : after;
  return { bands, band: onward && next !== -1 ? next + 1 : seen.band };
}

export function useStrayPlace(): StrayPlace {
  const search = useSearch({ from: '/stray' });
  const navigate = useNavigate({ from: '/stray' });
  return {
    ...readSeen(search),
    go: (change, how = 'replace') =>
      void navigate({
        to: '/stray',
        search: (before: StrayWords) => writeSeen({ ...readSeen(before), ...change }),
        replace: how === 'replace',
        resetScroll: false,
      }),
  };
}
