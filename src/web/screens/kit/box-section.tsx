import type { BoxPicture } from '#api/bags.ts';
import type { KitTakeView } from '#api/kits.ts';
import { KIT, sayAllOfBox, sayBoxDone, sayBoxPicture, sayBoxToPick, saySpare, sayWentBack } from '#say/en/kit-page.ts';
import { PHONE } from '#say/en/kit-phone-page.ts';
import { figures } from '#say/en/ui.ts';
import { Fragment, type ReactNode } from 'react';
import { BagLink } from '../../ui/bag-link.tsx';
import { Button } from '../../ui/button.tsx';
import { Icon } from '../../ui/icon.tsx';
import { Ring } from '../../ui/ring.tsx';
import { Slots } from '../../ui/slots.tsx';
import { Tag } from '../../ui/tag.tsx';
import { isOpen, lacks, lies, slotsOf, sparesIn, toTake, type BoxWalk } from './walk.ts';

interface BoxSectionProps {
  readonly walk: BoxWalk;
  readonly picture: BoxPicture | undefined;
  readonly chosen: KitTakeView | null;
  readonly emptied: ReadonlySet<number>;
  readonly trays: number;
  readonly canPick: boolean;
  readonly busy: boolean;
  readonly onChoose: (take: KitTakeView) => void;
  /** the open stops that are booked at once */
  readonly atOnce: readonly KitTakeView[];
  readonly onAll: (walk: BoxWalk) => void;
  /** what stands under the chosen row */
  readonly panel: ReactNode;
}

/** The stops of one box; folded to its tags when it is done. */
export function BoxSection(props: BoxSectionProps) {
  const { walk, picture, chosen, emptied, trays, canPick, busy, onChoose, atOnce, onAll, panel } = props;
  const { box, takes, open } = walk;
  if (open.length === 0) return <DoneBox walk={walk} />;
  const now = takes.some(({ id }) => id === chosen?.id);
  const bags = [...new Set(open.map(({ bag }) => bag))];
  return (
    <section className={now ? 'bx now' : 'bx'}>
      <header className="apart">
        <h3>{KIT.box(box)}</h3>
        <span className="two s">{sayBoxToPick(open.length)}</span>
      </header>
      {picture && (
        <Slots
          slots={slotsOf(picture, takes, now ? (chosen?.bag ?? null) : null)}
          front={picture.bags[0] ? PHONE.front(picture.bags[0].bag) : ''}
          back={picture.bags.at(-1) ? PHONE.back(picture.bags.at(-1)?.bag ?? 0) : ''}
          says={sayBoxPicture(picture.name, bags)}
          height="1.75rem"
        />
      )}
      <table className="ledger tight route">
        <caption className="vh">{KIT.caption(box)}</caption>
        <thead className="vh">
          <tr>
            {Object.values(KIT.columns).map((name) => (
              <th key={name} scope="col">
                {name}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {takes.map((take) => (
            <Fragment key={take.id}>
              <StopRow
                take={take}
                on={take.id === chosen?.id}
                empties={emptied.has(take.bag)}
                tray={trays > 1}
                canPick={canPick}
                onChoose={onChoose}
              />
              {take.id === chosen?.id && panel && (
                <tr className="at">
                  <td colSpan={Object.keys(KIT.columns).length}>{panel}</td>
                </tr>
              )}
            </Fragment>
          ))}
        </tbody>
      </table>
      {canPick && atOnce.length > 1 && (
        <p>
          <Button disabled={busy} onClick={() => onAll(walk)}>
            {sayAllOfBox(atOnce.length, open.length, box)}
          </Button>
        </p>
      )}
    </section>
  );
}

function DoneBox({ walk: { box, takes } }: { readonly walk: BoxWalk }) {
  const bags = [...new Set(takes.map(({ bag }) => bag))];
  return (
    <section className="bx done">
      <header className="apart">
        <h3>{KIT.box(box)}</h3>
        <span className="done s">
          <Icon sign="tick" />
          {sayBoxDone(takes.length)}
        </span>
      </header>
      <p className="line donetags">
        {bags.map((bag) => (
          <Tag key={bag} bag={bag} size="sm" />
        ))}
      </p>
    </section>
  );
}

interface StopRowProps {
  readonly take: KitTakeView;
  readonly on: boolean;
  readonly empties: boolean;
  /** there are several trays, so the cell says of which */
  readonly tray: boolean;
  readonly canPick: boolean;
  readonly onChoose: (take: KitTakeView) => void;
}

function StopRow({ take, on, empties, tray, canPick, onChoose }: StopRowProps) {
  const open = isOpen(take);
  const [pieces, spare] = open ? [toTake(take), sparesIn(take)] : [lies(take), 0];
  return (
    <tr className={[on && 'on', !open && 'in'].filter(Boolean).join(' ') || undefined} aria-current={on ? 'step' : undefined}>
      <td className="t">
        <BagLink bag={take.bag} />
      </td>
      <td className="part">
        {open && canPick ? (
          <button type="button" className="pick" id={`stop-${take.id}`} onClick={() => onChoose(take)}>
            {take.said.name}
          </button>
        ) : (
          take.said.name
        )}
        <small>
          {take.said.rest}
          {take.place !== null && take.box === null ? `, ${take.place}` : ''}
          {open && empties && <span className="warn"> {KIT.empties}</span>}
        </small>
      </td>
      <td className="n t">
        <b>{figures(pieces)}</b> {take.unit !== 'piece' && <span className="two s">{take.unit} </span>}
        {spare > 0 && <span className="two s">{saySpare(spare)}</span>}
        {!open && take.returned > 0 && <span className="two s back">{sayWentBack(take.returned)}</span>}
      </td>
      <td className="t">
        <Ring cell={take.cell} />
        {tray && <small>{KIT.ofTray(take.tray)}</small>}
      </td>
      <td className="t s state">
        <StopState take={take} on={on} canPick={canPick} />
      </td>
    </tr>
  );
}

function StopState({ take, on, canPick }: Pick<StopRowProps, 'take' | 'on' | 'canPick'>) {
  if (isOpen(take)) return on ? <b>{KIT.next}</b> : <span className="vh">{KIT.toPick}</span>;
  if (canPick && lacks(take)) return <span className="warn">{KIT.short}</span>;
  return (
    <span className="done">
      <Icon sign="tick" />
      {KIT.in}
    </span>
  );
}
