import { Link, useNavigate, useSearch } from '@tanstack/react-router';
import { useMemo, useState } from 'react';
import type { BoxesView } from '#api/bags.ts';
import { BOXES_PAGE, sayBoxes, sayRoom } from '#say/en/boxes-page.ts';
import { useBoxes } from '../../lab/answers.ts';
import { Answer } from '../../ui/answer.tsx';
import { useKeys } from '../../ui/keys.ts';
import { useNarrow } from '../../ui/narrow.ts';
import { TroubleNote } from '../../ui/trouble-note.tsx';
import { useTypedNumber } from '../../ui/typed-number.ts';
import { Arrange } from './arrange.tsx';
import { BoxDrawer } from './box-drawer.tsx';
import { BoxFront } from './box-front.tsx';
import { LooseBags } from './loose-bags.tsx';
import { boxWith, nextNumber, standingOf, sumOf, usedNumbers } from './boxes.ts';
import { useArranging } from './use-arranging.ts';
import './boxes.css';

/** The boxes as they stand, side by side or stacked: fill, exhausted places, what is where. */
export function BoxesPage() {
  const { value, waiting, trouble } = useBoxes();
  return (
    <main id="main" className="page boxes">
      {waiting && <Answer title={BOXES_PAGE.reading} />}
      <TroubleNote trouble={trouble} />
      {value && (value.boxes.length + value.loose.length === 0 ? <NoBox /> : <Standing view={value} />)}
    </main>
  );
}

function NoBox() {
  return (
    <Answer title={BOXES_PAGE.none} why={BOXES_PAGE.noneWhy}>
      <Link to="/receive" search={{ box: 'A' }} className="btn main">
        {BOXES_PAGE.receive}
      </Link>
    </Answer>
  );
}

function KeyHints() {
  const { keys } = BOXES_PAGE;
  return (
    <p className="keys">
      <span>
        <kbd>↑</kbd> <kbd>↓</kbd> {keys.row}
      </span>
      <span>
        <kbd>114</kbd> {keys.number}
      </span>
      <span>
        <kbd>Esc</kbd> {keys.close}
      </span>
    </p>
  );
}

function Standing({ view }: { readonly view: BoxesView }) {
  const { box: chosen } = useSearch({ from: '/boxes' });
  const navigate = useNavigate();
  const arranging = useArranging(view);
  const sums = view.boxes.map(sumOf);
  const used = useMemo(() => usedNumbers(view), [view]);
  const [hit, setHit] = useState<number | null>(null);
  const over = useNarrow() && chosen !== undefined;
  const stacked = standingOf(view) === 'stacked';
  const bags = sums.reduce((all, { box }) => all + box.bags.length, 0);
  const open = (name: string | null): void =>
    void navigate({
      to: '/boxes',
      search: name === null ? {} : { box: name },
      replace: chosen !== undefined,
      resetScroll: false,
    });
  const step = (by: 1 | -1): void => {
    const at = view.boxes.findIndex(({ name }) => name === chosen);
    const next = view.boxes[at < 0 ? (by > 0 ? 0 : view.boxes.length - 1) : at + by];
    if (next) open(next.name);
  };
  const figures = useTypedNumber((bag) => {
    setHit(bag);
    const box = boxWith(view, bag);
    if (box !== null && box !== chosen) open(box);
  });
  useKeys({ ...figures, ArrowDown: () => step(1), ArrowUp: () => step(-1), Escape: () => chosen !== undefined && open(null) });
  return (
    <div className={chosen === undefined ? 'split alone' : 'split'}>
      <div className="list" inert={over}>
        <Answer title={sayBoxes(bags, sums.length)} why={sayRoom(sums.map(({ box, room }) => ({ name: box.name, room })))} />
        {sums.length > 0 && <Arrange view={view} arranging={arranging} />}
        <ol className={stacked ? 'fronts stack-of' : 'fronts beside'}>
          {sums.map((sum, at) => (
            <BoxFront
              key={sum.box.name}
              sum={sum}
              chosen={sum.box.name === chosen}
              arranging={arranging}
              next={nextNumber(sum, used)}
              beside={!stacked}
              end={{ first: at === 0, last: at === sums.length - 1 }}
            />
          ))}
        </ol>
        {view.loose.length > 0 && <LooseBags loose={view.loose} />}
        {sums.length > 0 && <KeyHints />}
      </div>
      {chosen !== undefined && (
        <BoxDrawer
          key={chosen}
          name={chosen}
          sum={sums.find(({ box }) => box.name === chosen) ?? null}
          hit={hit}
          over={over}
          onClose={() => open(null)}
        />
      )}
    </div>
  );
}
