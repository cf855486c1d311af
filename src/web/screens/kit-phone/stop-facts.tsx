import type { BoxPicture } from '#api/bags.ts';
import type { KitTakeView } from '#api/kits.ts';
import { writeRefs } from '#core/bom/write-refs.ts';
import { sayBoxPicture, sayNeedAndSpare } from '#say/en/kit-page.ts';
import { sayStands } from '#say/en/place-words.ts';
import { PHONE } from '#say/en/kit-phone-page.ts';
import { figures } from '#say/en/ui.ts';
import { depthOf } from '../../ui/depth.ts';
import { Ring } from '../../ui/ring.tsx';
import { Slots } from '../../ui/slots.tsx';
import { Tag } from '../../ui/tag.tsx';
import { slotsOf, sparesIn, toTake } from '../kit/walk.ts';
import { sameBox } from './phone.ts';

interface StopFactsProps {
  readonly stop: KitTakeView;
  readonly after: KitTakeView | null;
  readonly takes: readonly KitTakeView[];
  readonly boxes: readonly BoxPicture[];
}

/** Read in this order: number, box, how deep, how many, which cell. */
export function StopFacts({ stop, after, takes, boxes }: StopFactsProps) {
  const box = boxes.find(({ name }) => name === stop.box);
  return (
    <div className="job">
      <div className={(stop.box?.length ?? 0) > 3 ? 'where long' : 'where'}>
        <Tag bag={stop.bag} size="huge" />
        <div className="bxname">
          <span className="two">{stop.box === null ? PHONE.noBox : PHONE.inBox}</span>
          <b>{stop.box ?? stop.place}</b>
        </div>
      </div>
      {box && <Depth stop={stop} box={box} takes={takes} />}
      <Take stop={stop} trays={new Set(takes.map(({ tray }) => tray)).size} />
      <p className="then">
        {after ? (
          <>
            {PHONE.after} <Tag bag={after.bag} size="sm" />
            <span>
              {sameBox(stop, after) ? PHONE.sameBox : PHONE.nextBox(after.box)}, {after.said.name}
            </span>
          </>
        ) : (
          PHONE.last
        )}
      </p>
    </div>
  );
}

function Depth({ stop, box, takes }: { stop: KitTakeView; box: BoxPicture; takes: readonly KitTakeView[] }) {
  const depth = depthOf(box.bags, stop.bag);
  const [first, last] = [box.bags[0], box.bags.at(-1)];
  return (
    <div>
      <Slots
        slots={slotsOf(
          box,
          takes.filter((take) => take.box === box.name),
          stop.bag,
        )}
        front={first ? PHONE.front(first.bag) : ''}
        back={last ? PHONE.back(last.bag) : ''}
        says={sayBoxPicture(box.name, [stop.bag])}
        height="2.25rem"
      />
      {depth && <p className="two depth">{sayStands(depth)}</p>}
    </div>
  );
}

function Take({ stop, trays }: { readonly stop: KitTakeView; readonly trays: number }) {
  const refs = writeRefs(stop.refs);
  return (
    <div className="take">
      <div>
        <p className="line">
          <span className="two">{PHONE.take}</span>
          <span className="num">{figures(toTake(stop))}</span>
          {stop.unit !== 'piece' && <span className="two">{stop.unit}</span>}
          <b>{stop.said.name}</b>
        </p>
        <p className="two s">
          {stop.said.rest}. {sayNeedAndSpare(toTake(stop), sparesIn(stop))} {refs}
        </p>
      </div>
      <div className="to">
        <span className="two s">
          {PHONE.into}
          {trays > 1 && <small>{PHONE.ofTray(stop.tray)}</small>}
        </span>
        <Ring cell={stop.cell} />
      </div>
    </div>
  );
}
