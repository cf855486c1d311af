import { useState } from 'react';
import type { BagMovement } from '#api/bags.ts';
import { deedName } from '#say/en/acts.ts';
import { BAG_DRAWER, sayMoved, saySigned, sayUndo } from '#say/en/bag-drawer.ts';
import { figures } from '#say/en/ui.ts';
import { sayDay, sayMoment } from '#say/en/when.ts';
import { Button } from '../../ui/button.tsx';
import { useNow } from '../../ui/now.ts';
import type { BagActs } from './bag-acts.ts';
import { forWhom, newestFirst, newestUndoable } from './movements.ts';

/** So many are drawn at first; a bag of many years has hundreds. */
const SHOWN = 12;
const COLUMNS = BAG_DRAWER.columns;

/** Everything that was ever booked on a bag, the newest first. */
export function BagMoves({
  bag,
  movements,
  acts,
}: {
  readonly bag: number;
  readonly movements: readonly BagMovement[];
  readonly acts: BagActs;
}) {
  const [all, setAll] = useState(false);
  const now = useNow();
  const newest = newestFirst(movements);
  const undoable = newestUndoable(movements);
  const shown = all ? newest : newest.slice(0, SHOWN);
  return (
    <section>
      <h3>{BAG_DRAWER.movements}</h3>
      {newest.length === 0 && <p className="two">{BAG_DRAWER.noMovements}</p>}
      {newest.length > 0 && (
        <table className="ledger tight moves">
          <caption className="vh">
            {BAG_DRAWER.movements}, {BAG_DRAWER.ofBag(bag)}
          </caption>
          <thead>
            <tr>
              <th scope="col">{COLUMNS.day}</th>
              <th scope="col">{COLUMNS.what}</th>
              <th scope="col" className="n">
                {COLUMNS.pieces}
              </th>
              <th scope="col" className="n">
                {COLUMNS.left}
              </th>
              <th scope="col">{COLUMNS.for}</th>
            </tr>
          </thead>
          <tbody>
            {shown.map((move) => (
              <tr key={move.seq} className={move.undoneBy ? 'off' : undefined}>
                <td className="two">
                  <time dateTime={move.happenedAt}>{sayDay(move.happenedAt, now)}</time>
                </td>
                <td>
                  {deedName(move.kind)}
                  {move.undoes && <span className="why"> {BAG_DRAWER.undo.toLowerCase()}</span>}
                  {move.undoneBy && <span className="why"> {BAG_DRAWER.takenBack}</span>}
                </td>
                <td className="n">{saySigned(move.delta)}</td>
                <td className="n">{figures(move.onHand)}</td>
                <td className="two whom">
                  {forWhom(move)}
                  {move === undoable && (
                    <Button
                      look="quiet"
                      disabled={acts.busy}
                      aria-label={sayUndo(move, sayMoment(move.happenedAt, now))}
                      title={sayMoved(move)}
                      onClick={() => void acts.undo(move.act)}
                    >
                      {BAG_DRAWER.undo}
                    </Button>
                  )}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
      {newest.length > shown.length && (
        <p>
          <Button look="quiet" onClick={() => setAll(true)}>
            {BAG_DRAWER.older(newest.length - shown.length)}
          </Button>
        </p>
      )}
    </section>
  );
}
