import type { BoardLines } from '#api/boards.ts';
import { SAY_ALONE, SAY_GAP, sayLimits, sayOpen, sayWaits } from '#say/en/board-page.ts';
import { countsOf, groupOf, limitsOf } from './board.ts';

/** Why not more: what limits it, what waits for a check, what is fitted later. */
export function BoardWhy({ view, id }: { readonly view: BoardLines; readonly id: string }) {
  const { check, missing } = countsOf(view.lines);
  const { buildable, buildableWithChecks } = view;
  const later = view.lines.filter((line) => groupOf(line) === 'later').length;
  const said = [
    sayLimits(limitsOf(view)),
    sayOpen({ checks: check, withChecks: buildableWithChecks, buildable, later }),
    view.proof === 'gap' ? SAY_GAP : '',
    SAY_ALONE,
  ];
  return (
    <>
      {said.filter(Boolean).join(' ')}
      {buildable === 0 && (
        <>
          {' '}
          <span id={id}>{sayWaits(check, missing)}</span>
        </>
      )}
    </>
  );
}
