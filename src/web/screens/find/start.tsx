import { FIND_PAGE, WAYS_TO_ASK } from '#say/en/find-page.ts';
import { BagLedger, type RowBag } from './found-ledger.tsx';
import type { Places } from './places.ts';

interface StartProps {
  /** the bags touched last, the newest first */
  readonly last: readonly RowBag[];
  readonly chosen: number | null;
  readonly places: Places;
}

/** Nothing typed yet: the bags touched last, and ways to ask. */
export function Start({ last, chosen, places }: StartProps) {
  return (
    <div className="cols2">
      <div className="col">
        <div className="headed">
          <h2>{FIND_PAGE.last}</h2>
        </div>
        {last.length === 0 ? (
          <p className="two">{FIND_PAGE.noneTouched}</p>
        ) : (
          <BagLedger caption={FIND_PAGE.lastCaption} groups={[{ head: null, bags: last }]} chosen={chosen} places={places} />
        )}
      </div>
      <WaysToAsk />
    </div>
  );
}

/** How a person may write what they look for. */
export function WaysToAsk() {
  return (
    <div>
      <div className="headed">
        <h2>{FIND_PAGE.ways}</h2>
      </div>
      <dl className="ways2">
        {WAYS_TO_ASK.map(([typed, finds]) => (
          <div key={typed}>
            <dt>{typed}</dt>
            <dd>{finds}</dd>
          </div>
        ))}
      </dl>
    </div>
  );
}
