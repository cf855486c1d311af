import { useEffect, useRef } from 'react';
import type { BoxPicture } from '#api/bags.ts';
import type { KitTakeView, KitView } from '#api/kits.ts';
import { KIT } from '#say/en/kit-page.ts';
import { useKeys } from '../../ui/keys.ts';
import { useTypedNumber } from '../../ui/typed-number.ts';
import { BoxSection } from './box-section.tsx';
import { canPick } from './kit.ts';
import { StopPanel } from './stop-panel.tsx';
import type { Picking } from './use-picking.ts';
import { boxWalks, cellOf, emptiedBags, isOpen, stopAfter } from './walk.ts';

interface RouteViewProps {
  readonly kit: KitView;
  readonly boxes: readonly BoxPicture[];
  readonly picking: Picking;
}

/** The walk, box by box, with what can be done at the chosen stop. */
export function RouteView({ kit, boxes, picking }: RouteViewProps) {
  const { chosen, acts, show, to } = picking;
  const picks = canPick(kit);
  const goes = picks && chosen !== null;
  useRouteKeys(kit, picking, goes);
  const emptied = new Set(picks ? emptiedBags(kit.takes) : []);
  const panel = goes && (
    <StopPanel
      take={chosen}
      where={cellOf(kit.takes, chosen)}
      fewer={show === 'fewer'}
      busy={acts.busy}
      onPlanned={picking.planned}
      onFewer={(open) => to(chosen, open ? 'fewer' : undefined)}
      onPut={picking.put}
      onSkip={picking.skip}
    />
  );
  return (
    <div className="col">
      <div className="traytop">
        <h2>{KIT.route}</h2>
        <span className="s two">{KIT.routeWhy}</span>
      </div>
      {boxWalks(kit.takes).map((walk) => (
        <BoxSection
          key={walk.box ?? ''}
          walk={walk}
          picture={boxes.find(({ name }) => name === walk.box)}
          chosen={picks ? chosen : null}
          emptied={emptied}
          canPick={picks}
          trays={new Set(kit.takes.map(({ tray }) => tray)).size}
          busy={acts.busy}
          onChoose={(take) => to(take)}
          atOnce={picking.atOnce(walk)}
          onAll={picking.all}
          panel={panel}
        />
      ))}
    </div>
  );
}

/** The focus goes with the chosen row when keys walk the list. */
function useRouteKeys(kit: KitView, picking: Picking, when: boolean): void {
  const { chosen, to } = picking;
  const walked = useRef<string | null>(null);
  useEffect(() => {
    if (chosen && walked.current === chosen.id) document.getElementById(`stop-${chosen.id}`)?.focus();
    walked.current = null;
  }, [chosen]);
  const walk = (take: KitTakeView | null | undefined): void => {
    if (!take || !isOpen(take)) return;
    walked.current = take.id;
    to(take);
  };
  const jump = useTypedNumber((bag) => walk(kit.takes.find((take) => take.bag === bag && isOpen(take))));
  useKeys(
    {
      ...jump,
      ' ': picking.planned,
      '-': () => to(chosen, 'fewer'),
      s: picking.skip,
      ArrowDown: () => walk(chosen && stopAfter(kit.takes, chosen)),
      ArrowUp: () => walk(chosen && stopAfter(kit.takes, chosen, -1)),
      Escape: () => to(chosen),
    },
    when,
  );
}
