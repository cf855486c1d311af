import type { Colour } from '#core/part/marking/colours.data.ts';
import { COLOUR_WORDS, sayDrawn, STRAY_PAGE } from '#say/en/stray-page.ts';

interface DrawnProps {
  readonly bands: readonly (Colour | null)[];
  /** the chosen band, from 1 */
  readonly band: number;
  readonly gapBefore: number | null;
  readonly onBand: (band: number) => void;
}

const FIRST = 150;
const LAST = 396;
const WIDE = 24;
const GAP = 34;

/** Left edges of the bands, spread over the body, with more room at the wider gap. */
function edges(count: number, gapBefore: number | null): number[] {
  if (count === 1) return [(FIRST + LAST) / 2];
  const step = (LAST - FIRST - (gapBefore === null ? 0 : GAP)) / (count - 1);
  return Array.from({ length: count }, (_, at) => FIRST + step * at + (gapBefore !== null && at >= gapBefore ? GAP : 0));
}

/** The part as it is seen, each band with its name below; a press chooses a band, as the numbers below the drawing do for keys. */
export function DrawnResistor({ bands, band, gapBefore, onBand }: DrawnProps) {
  const at = edges(bands.length, gapBefore);
  return (
    <svg className="resistor" viewBox="0 0 560 132" role="img" aria-label={sayDrawn(bands, gapBefore)}>
      <path className="wire" d="M0 60H92M468 60H560" />
      <path
        className="skin"
        d="M92 60C92 28 104 22 124 22c16 0 18 8 34 8h244c16 0 18-8 34-8 20 0 32 6 32 38s-12 38-32 38c-16 0-18-8-34-8H158c-16 0-18 8-34 8-20 0-32-6-32-38z"
      />
      {bands.map((colour, place) => {
        const left = at[place] ?? 0;
        const chosen = place + 1 === band;
        return (
          // oxlint-disable-next-line react/no-array-index-key -- a band is its place
          <g key={place} className="band" onClick={() => onBand(place + 1)}>
            <rect className="reach" x={left - 8} y={8} width={WIDE + 16} height={124} />
            <rect className={colour ?? 'unset'} x={left} y={30} width={WIDE} height={60} />
            {chosen && <rect className="pick" x={left - 5} y={18} width={WIDE + 10} height={84} />}
            <text className={chosen ? 'mid wd strong' : 'mid wd'} x={left + WIDE / 2} y={126}>
              {colour === null ? STRAY_PAGE.notSet : COLOUR_WORDS[colour]}
            </text>
            <text className={chosen ? 'mid no strong' : 'mid no'} x={left + WIDE / 2} y={126}>
              {place + 1}
            </text>
          </g>
        );
      })}
    </svg>
  );
}
