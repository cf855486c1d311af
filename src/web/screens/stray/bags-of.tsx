import { Link } from '@tanstack/react-router';
import type { Reading } from '#core/part/marking/marking.ts';
import { sayAmount } from '#say/en/find-page.ts';
import { sayInBag, STRAY_PAGE } from '#say/en/stray-page.ts';
import { useFound } from '../../lab/answers.ts';
import { BagLink } from '../../ui/bag-link.tsx';
import { Fit } from '../../ui/fit.tsx';
import { TroubleNote } from '../../ui/trouble-note.tsx';
import { belongs, saysOf, wordsOf } from './stray.ts';

/** The bags that a part so read may have come from, and where to go when it is in none. */
export function BagsOf({ reading }: { readonly reading: Reading }) {
  const words = wordsOf(reading);
  const { value, trouble } = useFound(words);
  if (trouble) return <TroubleNote trouble={trouble} />;
  if (!value || value.words !== words) return <p className="two s">{STRAY_PAGE.reading}</p>;
  const { bags, more } = belongs(value.found, reading.look);
  return (
    <div className="bagsof">
      {bags.length === 0 && <p className="two">{STRAY_PAGE.noBag}</p>}
      <ul>
        {bags.map(({ bag, caution }) => (
          <li key={bag.bag}>
            <BagLink bag={bag.bag} gone={bag.onHand === 0} />
            <span>
              {bag.said.name}
              <span className="two s">
                {[bag.said.rest, bag.onHand === 0 ? STRAY_PAGE.exhausted : sayInBag(sayAmount(bag.onHand, bag.unit))]
                  .filter(Boolean)
                  .join(', ')}
              </span>
              {caution && <Fit fit="check">{STRAY_PAGE.cautions[caution]}</Fit>}
            </span>
          </li>
        ))}
      </ul>
      <p className="do">
        {more && (
          <Link className="btn quiet" to="/" search={{ words }}>
            {STRAY_PAGE.moreBags}
          </Link>
        )}
        <Link className="btn quiet" to="/receive" search={{ says: saysOf(reading) }}>
          {STRAY_PAGE.receive}
        </Link>
      </p>
    </div>
  );
}
