import type { KitTakeView } from '#api/kits.ts';
import { writeRefs } from '#core/bom/write-refs.ts';
import { KIT, saySpare, sayWentBack } from '#say/en/kit-page.ts';
import { figures } from '#say/en/ui.ts';
import { Icon } from '../../ui/icon.tsx';
import { Ring } from '../../ui/ring.tsx';
import { Tag } from '../../ui/tag.tsx';
import { WholeCodes } from '../../ui/whole-codes.tsx';
import { lies, type Tray, type TrayCell } from './walk.ts';

/** The trays as they lie on the bench. */
export function TrayView({ trays, going }: { readonly trays: readonly Tray[]; readonly going: boolean }) {
  return trays.map(({ tray, cells }) => (
    <section key={tray} className="traybox">
      <div className="traytop">
        <h2>{KIT.tray(tray, trays.length)}</h2>
        {tray === trays[0]?.tray && <span className="s two">{KIT.trayWhy}</span>}
      </div>
      <ol className="tray">
        {cells.map((cell) => (
          <CellView key={cell.cell} cell={cell} going={going} />
        ))}
      </ol>
      <p className="notch">{KIT.edge}</p>
    </section>
  ));
}

const LOOK: Readonly<Record<TrayCell['state'], string | undefined>> = { in: 'in', next: 'next', waiting: undefined };

interface CellProps {
  readonly cell: TrayCell;
  /** the kit is being picked: what a cell lacks is still to be had */
  readonly going: boolean;
}

function CellView({ cell: { cell, takes, state }, going }: CellProps) {
  const [first] = takes;
  if (!first) return null;
  const refs = writeRefs(first.refs);
  const back = sum(takes, ({ returned }) => returned);
  const short = going && state === 'in' && sum(takes, lies) < sum(takes, ({ planned, spare }) => planned - spare);
  return (
    <li className={LOOK[state]}>
      <Ring cell={cell} />
      <span className="tags">
        {[...new Set(takes.map(({ bag }) => bag))].map((bag) => (
          <Tag key={bag} bag={bag} size="sm" />
        ))}
      </span>
      <span className="refs">{refs === '' ? first.said.name : refs}</span>
      <span className="val">
        <WholeCodes text={refs === '' ? first.said.rest : `${first.said.name} ${first.said.rest}`} />
      </span>
      <span className="qty">
        <b>{figures(sum(takes, (take) => (take.state === 'done' ? lies(take) : take.planned)))}</b>{' '}
        {state !== 'in' && saySpare(sum(takes, ({ spare }) => spare))}
        {state === 'in' && back > 0 && sayWentBack(back)}
      </span>
      <span className="state">
        {state === 'in' ? (
          <>
            <Icon sign="tick" />
            {short ? KIT.short : KIT.in}
          </>
        ) : state === 'next' ? (
          KIT.next
        ) : (
          <span className="vh">{KIT.toPick}</span>
        )}
      </span>
    </li>
  );
}

const sum = (takes: readonly KitTakeView[], of: (take: KitTakeView) => number): number =>
  takes.reduce((all, take) => all + of(take), 0);
