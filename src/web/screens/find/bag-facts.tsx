import { Link } from '@tanstack/react-router';
import type { BagWithHistory, BoxesView } from '#api/bags.ts';
import { BAG_DRAWER, sayAfter, sayLook, sayPlaceOf, sayStands, sayState } from '#say/en/bag-drawer.ts';
import { sayBack, sayFront } from '#say/en/boxes-page.ts';
import { sayAmount, sayEmptySince } from '#say/en/find-page.ts';
import { sayDay } from '#say/en/when.ts';
import { BagLink } from '../../ui/bag-link.tsx';
import { Gloss } from '../../ui/gloss.tsx';
import { Note } from '../../ui/note.tsx';
import { useNow } from '../../ui/now.ts';
import { Slots } from '../../ui/slots.tsx';
import { emptySince } from './movements.ts';
import { slotsOf, type StandsIn } from './places.ts';

/** Where the bag stands: its box from above, or the words of its place. */
export function BagStands({
  bag,
  at,
  boxes,
}: {
  readonly bag: BagWithHistory;
  readonly at: StandsIn | undefined;
  readonly boxes: BoxesView | undefined;
}) {
  const now = useNow();
  const box = boxes?.boxes.find(({ name }) => name === bag.box);
  const since = emptySince(bag);
  return (
    <section>
      <p className="apart place">
        <b>{at ? sayStands(at.box, at) : sayPlaceOf(bag.box, bag.place)}</b>
        <span className="two s">{at ? sayAfter(at, at.after) : since && sayEmptySince(sayDay(since, now))}</span>
      </p>
      {box && box.bags.length > 0 && (
        <Slots
          slots={slotsOf(box, bag.bag)}
          front={sayFront(box.bags[0]?.bag)}
          back={sayBack(box.bags.at(-1)?.bag)}
          says={at ? sayLook(at.box, bag.bag, at) : sayPlaceOf(bag.box, bag.place)}
        />
      )}
    </section>
  );
}

/** How many there are, and for whom. */
export function BagSums({ bag }: { readonly bag: BagWithHistory }) {
  const said = (amount: number): string => sayAmount(amount, bag.unit);
  return (
    <dl className="facts">
      <dt>{BAG_DRAWER.onHand}</dt>
      <dd className="sum">{said(bag.onHand)}</dd>
      {bag.sure < bag.onHand && <dt>{BAG_DRAWER.sure}</dt>}
      {bag.sure < bag.onHand && <dd>{said(bag.sure)}</dd>}
      {bag.reservedFor.map(({ build, name, quantity }) => (
        <div key={build}>
          <dt>
            {BAG_DRAWER.reservedFor}{' '}
            <Link to="/kits/$build" params={{ build }}>
              {name}
            </Link>
          </dt>
          <dd>{said(quantity)}</dd>
        </div>
      ))}
      <dt>{BAG_DRAWER.free}</dt>
      <dd className={bag.free < 0 ? 'sum bad' : 'sum'}>{said(bag.free)}</dd>
      {bag.alike.map((other) => (
        <div key={other.bag}>
          <dt>
            {BAG_DRAWER.alike} <BagLink bag={other.bag} size="sm" gone={other.onHand === 0} /> {other.box}
          </dt>
          <dd>{said(other.onHand)}</dd>
        </div>
      ))}
    </dl>
  );
}

/** What is written on it and was not read with certainty; how it stands; whether it is to be counted. */
export function BagDoubts({ bag }: { readonly bag: BagWithHistory }) {
  const state = sayState(bag.state);
  const doubtful = bag.doubts.length > 0 || bag.gloss.some(({ how }) => how === 'doubt' || how === 'unread');
  return (
    <>
      {state && (
        <Note kind={bag.state === 'astray' ? 'stop' : 'check'} title={`${state.word}:`}>
          {state.why}
        </Note>
      )}
      {bag.toCount && (
        <Note kind="check" title={`${BAG_DRAWER.toCount}:`}>
          {BAG_DRAWER.toCountWhy}
        </Note>
      )}
      {doubtful && (
        <section>
          <h3>{BAG_DRAWER.written}</h3>
          <Gloss pieces={bag.gloss} />
          <ul className="s doubts">
            {bag.doubts.map(({ field, why, settle }) => (
              <li key={`${field} ${why}`}>
                {why} <span className="two">{settle}</span>
              </li>
            ))}
          </ul>
        </section>
      )}
    </>
  );
}

export function UsedOn({ bag }: { readonly bag: BagWithHistory }) {
  if (bag.usedOn.length === 0) return null;
  return (
    <section>
      <h3>{BAG_DRAWER.usedOn}</h3>
      <ul className="s used">
        {bag.usedOn.map(({ board, refs }) => (
          <li key={board}>
            <Link to="/boards/$board" params={{ board }}>
              {board}
            </Link>{' '}
            <span className="two">{refs.join(', ')}</span>
          </li>
        ))}
      </ul>
    </section>
  );
}
