import { FIND_PAGE, WAYS_TO_ASK } from '#say/en/find-page.ts';
import { useActs, useBags } from '../../lab/answers.ts';
import { touchedLast } from './touched.ts';
import { BagLedger } from './found-ledger.tsx';
import type { StandsIn } from './places.ts';

interface StartProps {
  readonly chosen: number | null;
  readonly places: ReadonlyMap<number, StandsIn>;
}

/** Nothing typed yet: the bags touched last, and ways to ask. */
export function Start({ chosen, places }: StartProps) {
  const last = useTouched();
  return (
    <div className="cols2">
      <div className="col">
        <div className="headed">
          <h2>{FIND_PAGE.last}</h2>
        </div>
        {last.length === 0 ? (
          <p className="two">{FIND_PAGE.noneTouched}</p>
        ) : (
          <BagLedger
            caption={FIND_PAGE.lastCaption}
            groups={[{ head: null, bags: last }]}
            chosen={chosen}
            words=""
            places={places}
          />
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

const ACTS = 30;

export function useTouched(): ReturnType<typeof touchedLast> {
  const acts = useActs(ACTS);
  const bags = useBags();
  return touchedLast(acts.value?.acts ?? [], bags.value?.bags ?? []);
}
