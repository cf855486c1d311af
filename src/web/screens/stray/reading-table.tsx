import type { Piece, Plausible, Reading } from '#core/part/marking/marking.ts';
import { speaks } from '#core/part/marking/weigh.ts';
import { LOOK_WORDS, PLAUSIBLE_WORDS, sayEvidence, sayPiece, sayReading } from '#say/en/markings.ts';
import { COLOUR_WORDS, STRAY_PAGE } from '#say/en/stray-page.ts';
import { Fit, type Fits } from '../../ui/fit.tsx';
import { Icon } from '../../ui/icon.tsx';
import { BagsOf } from './bags-of.tsx';

const FIT: Readonly<Record<Plausible, Fits>> = { likely: 'exact', possible: 'serves', unlikely: 'check' };
const SIGNS = { for: 'tick', against: 'close', neither: 'minus' } as const;
const COLUMNS = STRAY_PAGE.columns;

/** Every reading with how plausible it is, why, and the bags that it may belong in. */
export function ReadingTable({ readings }: { readonly readings: readonly Reading[] }) {
  return (
    <div className="col">
      <table className="ledger fold reads">
        <caption className="vh">{STRAY_PAGE.caption}</caption>
        <thead>
          <tr>
            <th scope="col">{COLUMNS.plausible}</th>
            <th scope="col">{COLUMNS.reading}</th>
            <th scope="col">{COLUMNS.how}</th>
            <th scope="col">{COLUMNS.why}</th>
            <th scope="col">{COLUMNS.bags}</th>
          </tr>
        </thead>
        <tbody>
          {readings.map((reading) => (
            <ReadingRow key={keyOf(reading)} reading={reading} />
          ))}
        </tbody>
      </table>
    </div>
  );
}

const keyOf = (reading: Reading): string => `${reading.look} ${reading.notation} ${sayReading(reading)} ${typedOf(reading)}`;
const typedOf = ({ pieces }: Reading): string => pieces.map(({ typed }) => typed).join(' ');

function ReadingRow({ reading }: { readonly reading: Reading }) {
  const { plausible, evidence, look } = reading;
  return (
    <tr>
      <td className="t" data-as="sub">
        <Fit fit={FIT[plausible]}>{PLAUSIBLE_WORDS[plausible]}</Fit>
      </td>
      <td className="main" data-as="main">
        {sayReading(reading)}
        <span className="two s">{LOOK_WORDS[look]}</span>
      </td>
      <td data-as="code">
        <Pieces reading={reading} />
      </td>
      <td data-as="folded">
        <ul className="evid">
          {evidence.map((one) => {
            const way = speaks(one.code);
            return (
              <li key={one.code}>
                <Icon sign={SIGNS[way]} />
                <span>
                  <span className="vh">{STRAY_PAGE.speaks[way]}</span>
                  {sayEvidence(one)}
                </span>
              </li>
            );
          })}
        </ul>
      </td>
      <td data-as="folded">
        <BagsOf reading={reading} />
      </td>
    </tr>
  );
}

const isColour = (word: string): word is keyof typeof COLOUR_WORDS => word in COLOUR_WORDS;

/** What stands on the part above, what it means below. */
function Pieces({ reading }: { readonly reading: Reading }) {
  const unit = reading.facts.value?.unit ?? '';
  const placed = reading.pieces.map((piece, at) => ({ ...piece, place: at }));
  return (
    <p className="gloss">
      <span className="vh">{STRAY_PAGE.readsAs}</span>
      {placed.map((piece) => (
        <span key={piece.place} className={doubtful(piece) ? 'doubt' : undefined}>
          <i>{isColour(piece.typed) ? COLOUR_WORDS[piece.typed] : piece.typed}</i>
          <b>{sayPiece(piece, unit)}</b>
        </span>
      ))}
    </p>
  );
}

const doubtful = ({ is }: Piece): boolean => is === 'unknown' || is === 'extra';
