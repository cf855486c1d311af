import { useEffect, useRef, useState } from 'react';
import type { BagView } from '#api/bags.ts';
import { BOXES_PAGE, sayBoxTitle, sayExhaustedPlaces, sayFill, sayShowAll } from '#say/en/boxes-page.ts';
import { sayAmount } from '#say/en/find-page.ts';
import { useBags } from '../../lab/answers.ts';
import { BagLink } from '../../ui/bag-link.tsx';
import { Button } from '../../ui/button.tsx';
import { Fit } from '../../ui/fit.tsx';
import { Note } from '../../ui/note.tsx';
import type { BoxSum } from './boxes.ts';

/** So many rows are drawn at first; a list without boxes may have put thousands into one. */
const SHOWN = 120;

interface BoxDrawerProps {
  readonly name: string;
  readonly sum: BoxSum | null;
  /** a bag whose number was typed */
  readonly hit: number | null;
  /** it stands over the list, as a view of its own */
  readonly over: boolean;
  readonly onClose: () => void;
}

/** The focus goes to the bag whose number was typed. */
function focusLink(row: HTMLTableRowElement | null): void {
  row?.querySelector('a')?.focus();
}

function Held({ bag }: { readonly bag: BagView | undefined }) {
  return bag && sayAmount(bag.onHand, bag.unit);
}

/** Everything in one box, front to back; what is exhausted keeps its place and is greyed. */
export function BoxDrawer({ name, sum, hit, over, onClose }: BoxDrawerProps) {
  const { value } = useBags();
  const head = useRef<HTMLHeadingElement>(null);
  // where the list is gone from sight, the focus goes with the eye
  useEffect(() => {
    if (over) head.current?.focus();
  }, [over]);
  const [all, setAll] = useState(false);
  const reach = sum?.box.bags.findIndex(({ bag }) => bag === hit) ?? -1;
  const shown = sum?.box.bags.slice(0, all ? undefined : Math.max(SHOWN, reach + 1)) ?? [];
  const known = new Map(value?.bags.map((bag) => [bag.bag, bag]));
  return (
    <aside className={over ? 'drawer flush over' : 'drawer flush'} aria-label={sayBoxTitle(name)}>
      <section>
        <div className="apart">
          <h2 ref={head} tabIndex={-1}>
            {sayBoxTitle(name)}
          </h2>
          <Button look="quiet" onClick={onClose}>
            {BOXES_PAGE.close}
          </Button>
        </div>
        {sum && <p className="two">{sayFill(sum.filled, sum.box.places, sum.exhausted, sum.astray)}</p>}
        {sum && (
          <p className="two s">
            {sayExhaustedPlaces(sum.box.bags.flatMap(({ bag, standing }) => (standing === 'exhausted' ? [bag] : [])))}
          </p>
        )}
        {!sum && <Note title={BOXES_PAGE.nowhere} />}
      </section>
      {sum && (
        <section className="col">
          <table className="ledger tight inbox">
            <caption className="vh">{sayBoxTitle(name)}</caption>
            <thead>
              <tr>
                <th scope="col">{BOXES_PAGE.columns.bag}</th>
                <th scope="col">{BOXES_PAGE.columns.what}</th>
                <th scope="col" className="n">
                  {BOXES_PAGE.columns.onHand}
                </th>
              </tr>
            </thead>
            <tbody>
              {shown.map(({ bag, standing }) => (
                <tr
                  key={bag}
                  ref={bag === hit ? focusLink : undefined}
                  className={bag === hit ? 'on' : standing === 'holds' ? undefined : 'off'}
                >
                  <td className="t">
                    <BagLink bag={bag} gone={standing === 'exhausted'} size="sm" />
                  </td>
                  <td>
                    <b>{known.get(bag)?.said.name}</b> <span className="two s">{known.get(bag)?.said.rest}</span>
                  </td>
                  <td className="n">
                    {standing === 'astray' ? (
                      <Fit fit="check">{BOXES_PAGE.astray}</Fit>
                    ) : standing === 'exhausted' ? (
                      BOXES_PAGE.exhausted
                    ) : (
                      <Held bag={known.get(bag)} />
                    )}
                  </td>
                </tr>
              ))}
            </tbody>
          </table>
          {shown.length < sum.box.bags.length && (
            <Button look="quiet" onClick={() => setAll(true)}>
              {sayShowAll(sum.box.bags.length - shown.length)}
            </Button>
          )}
        </section>
      )}
    </aside>
  );
}
