import { Link } from '@tanstack/react-router';
import { useEffect, useRef } from 'react';
import type { BagWithHistory, BoxesView } from '#api/bags.ts';
import { BAG_DRAWER, sayUndo } from '#say/en/bag-drawer.ts';
import { UI } from '#say/en/ui.ts';
import { sayMoment } from '#say/en/when.ts';
import { useBag } from '../../lab/answers.ts';
import { Button } from '../../ui/button.tsx';
import { Icon } from '../../ui/icon.tsx';
import { useKeys } from '../../ui/keys.ts';
import { Note } from '../../ui/note.tsx';
import { useNow } from '../../ui/now.ts';
import { Tag } from '../../ui/tag.tsx';
import { TroubleNote } from '../../ui/trouble-note.tsx';
import { useBagActs, type BagActs } from './bag-acts.ts';
import { BagDoubts, BagStands, BagSums, UsedOn } from './bag-facts.tsx';
import { BagMoves } from './bag-moves.tsx';
import { DeedForm } from './deed-form.tsx';
import { latestUndoable } from './movements.ts';
import type { BagDeed, FindPlace } from './place.ts';
import type { Places, StandsIn } from './places.ts';

interface BagDrawerProps {
  readonly number: number;
  readonly place: FindPlace;
  readonly places: Places;
  readonly boxes: BoxesView | undefined;
  /** it stands over the list, as a view of its own */
  readonly over: boolean;
}

/** Everything about one bag, and what can be done with it. */
export function BagDrawer({ number, place, places, boxes, over }: BagDrawerProps) {
  const asked = useBag(number);
  // the former bag's answer stays while the next one comes, but is not this bag's
  const bag = asked.value?.bag === number ? asked.value : undefined;
  const missing = asked.trouble?.kind === 'refused' && asked.trouble.problem.code === 'no-such-bag';
  const close = (): void => place.go({ bag: null }, 'replace');
  return (
    <aside className={over ? 'drawer flush over' : 'drawer flush'} aria-label={BAG_DRAWER.ofBag(number)}>
      <Head
        key={`head ${over ? number : ''}`}
        number={number}
        gone={missing || bag?.onHand === 0}
        bag={bag}
        over={over}
        onClose={close}
      />
      {missing ? (
        <Note
          title={BAG_DRAWER.noBag(number)}
          actions={
            <Link className="btn" to="/receive" search={{ bag: String(number) }}>
              {BAG_DRAWER.takeIn}
            </Link>
          }
        >
          {BAG_DRAWER.noBagWay}
        </Note>
      ) : (
        <TroubleNote trouble={asked.trouble} />
      )}
      {!bag && asked.waiting && <p className="two">{BAG_DRAWER.reading(number)}</p>}
      {bag && !missing && <Bag key={`bag ${number}`} bag={bag} place={place} at={places(bag.bag, bag.box)} boxes={boxes} />}
    </aside>
  );
}

interface HeadProps {
  readonly number: number;
  /** no piece of it is there, or it never was */
  readonly gone: boolean;
  readonly bag: BagWithHistory | undefined;
  readonly over: boolean;
  readonly onClose: () => void;
}

function Head({ number, gone, bag, over, onClose }: HeadProps) {
  const head = useRef<HTMLHeadingElement>(null);
  // where the list is gone from sight, the focus goes with the eye
  useEffect(() => {
    if (over && !document.activeElement?.closest('.deed')) head.current?.focus();
  }, [over]);
  return (
    <section className="bagtop">
      <Tag bag={number} size="big" gone={gone} />
      <div>
        <h2 ref={head} tabIndex={-1}>
          {bag?.said.name ?? BAG_DRAWER.ofBag(number)}
        </h2>
        {bag && <p className="two">{bag.said.rest}</p>}
        {bag && (
          <p className="two s">
            <span className="code">{bag.code}</span>
          </p>
        )}
      </div>
      <Button look={over ? 'plain' : 'quiet'} onClick={onClose}>
        {over ? BAG_DRAWER.back : <Icon sign="close" />}
        {!over && <span className="vh">{UI.close}</span>}
      </Button>
    </section>
  );
}

interface BagProps {
  readonly bag: BagWithHistory;
  readonly place: FindPlace;
  readonly at: StandsIn | undefined;
  readonly boxes: BoxesView | undefined;
}

function Bag({ bag, place, at, boxes }: BagProps) {
  const acts = useBagActs();
  const latest = latestUndoable(bag.movements);
  const begin = (act: BagDeed): void => {
    acts.forget();
    place.go({ act }, 'replace');
  };
  useKeys({
    p: () => begin('pick'),
    t: () => begin('return'),
    c: () => begin('count'),
    u: () => latest && !acts.busy && void acts.undo(latest.act),
  });
  return (
    <>
      <BagStands bag={bag} at={at} boxes={boxes} />
      <section>
        <BagSums bag={bag} />
      </section>
      <section>
        <Deeds deed={place.act} empty={bag.onHand === 0} onBegin={begin} />
        {place.act && (
          <DeedForm key={place.act} bag={bag} deed={place.act} acts={acts} onClose={() => place.go({ act: null }, 'replace')} />
        )}
        <Latest bag={bag} acts={acts} />
      </section>
      <BagDoubts bag={bag} />
      <BagMoves bag={bag.bag} movements={bag.movements} acts={acts} />
      <UsedOn bag={bag} />
    </>
  );
}

interface DeedsProps {
  readonly deed: BagDeed | null;
  /** nothing can be picked: what is likely is a count */
  readonly empty: boolean;
  readonly onBegin: (deed: BagDeed) => void;
}

function Deeds({ deed, empty, onBegin }: DeedsProps) {
  const likely = deed === null ? (empty ? 'count' : 'pick') : null;
  return (
    <div className="do3">
      <Button
        look={likely === 'pick' ? 'main' : 'plain'}
        keyHint="P"
        aria-expanded={deed === 'pick'}
        onClick={() => onBegin('pick')}
      >
        {BAG_DRAWER.pick}
      </Button>
      <Button keyHint="T" aria-expanded={deed === 'return'} onClick={() => onBegin('return')}>
        {BAG_DRAWER.takeBack}
      </Button>
      <Button
        look={likely === 'count' ? 'main' : 'plain'}
        keyHint="C"
        aria-expanded={deed === 'count'}
        onClick={() => onBegin('count')}
      >
        {BAG_DRAWER.count}
      </Button>
    </div>
  );
}

/** The way back from what happened last, and what is to know of it. */
function Latest({ bag, acts }: { readonly bag: BagWithHistory; readonly acts: BagActs }) {
  const now = useNow();
  const latest = latestUndoable(bag.movements);
  return (
    <div className="latest" aria-live="polite">
      {acts.warnings.map(({ code, text }) => (
        <Note key={code} kind="check" title={text} />
      ))}
      <TroubleNote trouble={acts.undoTrouble} again={() => void acts.undoAgain()} />
      {latest && (
        <Button look="quiet" keyHint="U" disabled={acts.busy} onClick={() => void acts.undo(latest.act)}>
          {sayUndo(latest, sayMoment(latest.happenedAt, now))}
        </Button>
      )}
    </div>
  );
}
