import { useId, useRef } from 'react';
import { COLOURS, type Colour } from '#core/part/marking/colours.data.ts';
import { COLOUR_WORDS, sayBandIs, STRAY_PAGE } from '#say/en/stray-page.ts';
import { Button } from '../../ui/button.tsx';
import { Choice } from '../../ui/choice.tsx';
import { DrawnResistor } from './drawn-resistor.tsx';
import { BAND_COUNTS, paint, recount, type Gap, type StrayPlace } from './place.ts';
import { Tick } from './tick.tsx';
import { gapBefore } from './stray.ts';

const asOptions = (numbers: readonly number[]): { readonly value: string; readonly says: string }[] =>
  numbers.map((number) => ({ value: String(number), says: String(number) }));
const GAPS: readonly { readonly value: Gap | 'none'; readonly says: string }[] = [
  { value: 'none', says: STRAY_PAGE.gaps.none },
  { value: 'first', says: STRAY_PAGE.gaps.first },
  { value: 'last', says: STRAY_PAGE.gaps.last },
];

/** Says the bands of a resistor: on its drawing, or by radios that arrows walk. */
export function BandForm({ place }: { readonly place: StrayPlace }) {
  const { bands, band } = place;
  return (
    <div className="ask2">
      <div className="stack">
        <Choice
          legend={STRAY_PAGE.count}
          options={asOptions(BAND_COUNTS)}
          value={String(bands.length)}
          onChange={(count) => place.go(recount(place, Number(count)))}
        />
        <DrawnResistor bands={bands} band={band} gapBefore={gapBefore(place)} onBand={(chosen) => place.go({ band: chosen })} />
        <Choice
          legend={STRAY_PAGE.which}
          options={bands.map((colour, at) => ({
            value: String(at + 1),
            says: `${at + 1} ${colour === null ? STRAY_PAGE.notSet : COLOUR_WORDS[colour]}`,
          }))}
          value={String(band)}
          onChange={(chosen) => place.go({ band: Number(chosen) })}
        />
        <Palette
          band={band}
          colour={bands[band - 1] ?? null}
          onColour={(colour, onward) => place.go(paint(place, colour, onward))}
        />
      </div>
      <div className="stack side">
        {bands.length > 3 && (
          <Choice
            legend={STRAY_PAGE.gap}
            options={GAPS}
            value={place.gap ?? 'none'}
            onChange={(gap) => place.go({ gap: gap === 'none' ? null : gap })}
          />
        )}
        <Tick legend={STRAY_PAGE.more} says={STRAY_PAGE.old} on={place.old} onChange={(old) => place.go({ old })} />
        <div className="do">
          <Button onClick={() => place.go({ bands: bands.map(() => null), band: 1 }, 'push')}>{STRAY_PAGE.clear}</Button>
        </div>
      </div>
    </div>
  );
}

interface PaletteProps {
  readonly band: number;
  readonly colour: Colour | null;
  /** `onward`: a pointer chose it, so that the next band is meant next; arrows walk the colours and stay */
  readonly onColour: (colour: Colour, onward: boolean) => void;
}

function Palette({ band, colour, onColour }: PaletteProps) {
  const name = useId();
  const pointed = useRef(false);
  return (
    <fieldset
      className="choice pal"
      onPointerDown={() => {
        pointed.current = true;
      }}
      onKeyDown={() => {
        pointed.current = false;
      }}
    >
      <legend>{sayBandIs(band)}</legend>
      {COLOURS.map((one) => (
        <label key={one}>
          <input type="radio" name={name} value={one} checked={colour === one} onChange={() => onColour(one, pointed.current)} />
          <span className={`sw ${one}`} />
          {COLOUR_WORDS[one]}
        </label>
      ))}
    </fieldset>
  );
}
