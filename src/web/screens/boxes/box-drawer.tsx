import { BOXES_PAGE, sayBoxTitle, sayExhaustedPlaces, sayFill } from '#say/en/boxes-page.ts';
import { useBags } from '../../lab/answers.ts';
import { BagLink } from '../../ui/bag-link.tsx';
import { Button } from '../../ui/button.tsx';
import { Fit } from '../../ui/fit.tsx';
import { Note } from '../../ui/note.tsx';
import type { BoxSum } from './boxes.ts';

interface BoxDrawerProps {
  readonly name: string;
  readonly sum: BoxSum | null;
  readonly onClose: () => void;
}

/** Everything in one box, front to back; what is exhausted keeps its place and is greyed. */
export function BoxDrawer({ name, sum, onClose }: BoxDrawerProps) {
  const { value } = useBags();
  const known = new Map(value?.bags.map((bag) => [bag.bag, bag]));
  return (
    <aside className="drawer flush" aria-label={sayBoxTitle(name)}>
      <section>
        <div className="apart">
          <h2>{sayBoxTitle(name)}</h2>
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
              {sum.box.bags.map(({ bag, standing }) => (
                <tr key={bag} className={standing === 'holds' ? undefined : 'off'}>
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
                      known.get(bag)?.onHand
                    )}
                  </td>
                </tr>
              ))}
            </tbody>
          </table>
        </section>
      )}
    </aside>
  );
}
