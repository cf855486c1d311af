import { Link, useParams } from '@tanstack/react-router';
import type { ReactNode } from 'react';
import type { KitTakeView } from '#api/kits.ts';
import { writeRefs } from '#core/bom/write-refs.ts';
import { KITS_PAGE, saySheetTitle, sayTrayOf } from '#say/en/kits-page.ts';
import { saySpare } from '#say/en/kit-page.ts';
import { sayBoxName } from '#say/en/place-words.ts';
import { figures } from '#say/en/ui.ts';
import { useKit } from '../../lab/answers.ts';
import { Answer } from '../../ui/answer.tsx';
import { Button } from '../../ui/button.tsx';
import { Named } from '../../ui/named.tsx';
import { Ring } from '../../ui/ring.tsx';
import { Tag } from '../../ui/tag.tsx';
import { TroubleNote } from '../../ui/trouble-note.tsx';
import { WholeCodes } from '../../ui/whole-codes.tsx';
import { boxWalks, traysOf } from '../kit/walk.ts';
import './tray-sheet.css';

/** The trays of a kit on paper, true to size, then the walk: tray first, since it is laid on the bench first. */
export function TraySheetPage() {
  const { build } = useParams({ from: '/kits/$build/sheet' });
  const { value, waiting, trouble } = useKit(build);
  const kit = value?.build;
  return (
    <main id="main" className="page sheet">
      <div className="noprint">
        <Answer
          title={waiting || !kit ? KITS_PAGE.sheet : <Named says={saySheetTitle(kit.name, kit.boards)} name={kit.name} />}
          why={KITS_PAGE.sheetWhy}
        >
          <Button look="main" onClick={() => print()} disabled={!value || value.takes.length === 0}>
            {KITS_PAGE.print}
          </Button>
          <Link to="/kits/$build" params={{ build }} className="btn">
            {KITS_PAGE.back}
          </Link>
        </Answer>
        <TroubleNote trouble={trouble} />
      </div>
      {kit && value.takes.length === 0 && <Answer title={KITS_PAGE.nothing} why={KITS_PAGE.nothingWhy} />}
      {kit && value.takes.length > 0 && (
        <Sheets title={<Named says={saySheetTitle(kit.name, kit.boards)} name={kit.name} />} takes={value.takes} />
      )}
    </main>
  );
}

function Sheets({ title, takes }: { readonly title: ReactNode; readonly takes: readonly KitTakeView[] }) {
  const trays = traysOf(takes, null);
  // wider than a phone: what scrolls is reached by keys too
  return (
    <div className="scroll" role="region" aria-label={KITS_PAGE.sheet} tabIndex={0}>
      {trays.map(({ tray, cells }) => (
        <section key={tray} className="paper">
          <SheetHead title={title} part={sayTrayOf(tray, trays.length)} />
          <ol className="cells">
            {cells.map(({ cell, takes: inIt }) => (
              <PaperCell key={cell} cell={cell} takes={inIt} />
            ))}
          </ol>
          <p className="foot">{KITS_PAGE.soldering}</p>
        </section>
      ))}
      <section className="paper">
        <SheetHead title={title} part={KITS_PAGE.route} />
        {boxWalks(takes).map(({ box, takes: inBox }) => (
          <RouteOfBox key={box ?? ''} box={box} takes={inBox} />
        ))}
      </section>
    </div>
  );
}

function SheetHead({ title, part }: { readonly title: ReactNode; readonly part: string }) {
  return (
    <header className="papertop">
      <div>
        <h2>{title}</h2>
        <p>{part}</p>
      </div>
      <div className="ruler">
        <span>{KITS_PAGE.bar}</span>
      </div>
    </header>
  );
}

function PaperCell({ cell, takes }: { readonly cell: number; readonly takes: readonly KitTakeView[] }) {
  const [first] = takes;
  if (!first) return null;
  const refs = writeRefs(first.refs);
  const pieces = takes.reduce((sum, take) => sum + (take.state === 'done' ? take.picked : take.planned), 0);
  const spare = takes.reduce((sum, take) => sum + take.spare, 0);
  return (
    <li>
      <div className="celltop">
        <Ring cell={cell} />
        <span>
          {[...new Set(takes.map(({ bag }) => bag))].map((bag) => (
            <Tag key={bag} bag={bag} size="sm" />
          ))}
        </span>
      </div>
      <p className={refs.length > 60 ? 'refs many' : 'refs'}>{refs === '' ? first.said.name : refs}</p>
      <p className="val">
        <WholeCodes text={refs === '' ? first.said.rest : `${first.said.name} ${first.said.rest}`} />
      </p>
      <p className="qty">
        <b>{figures(pieces)}</b> {saySpare(spare)}
      </p>
    </li>
  );
}

function RouteOfBox({ box, takes }: { readonly box: string | null; readonly takes: readonly KitTakeView[] }) {
  const { columnsRoute: columns } = KITS_PAGE;
  return (
    <table className="ledger tight walk">
      <caption>{box === null ? KITS_PAGE.route : sayBoxName(box)}</caption>
      <thead>
        <tr>
          <th scope="col">{columns.bag}</th>
          <th scope="col">{columns.what}</th>
          <th scope="col" className="n">
            {columns.take}
          </th>
          <th scope="col" className="n">
            {columns.cell}
          </th>
          <th scope="col" className="n">
            {columns.done}
          </th>
        </tr>
      </thead>
      <tbody>
        {takes.map((take) => (
          <tr key={take.id}>
            <td className="t">
              <Tag bag={take.bag} size="sm" />
            </td>
            <td>
              <b>{take.said.name}</b> <WholeCodes text={take.said.rest} /> {take.box === null && take.place}
            </td>
            <td className="n">
              <b>{figures(take.planned)}</b> {saySpare(take.spare)}
            </td>
            <td className="n">
              <Ring cell={take.cell} />
            </td>
            <td className="n">
              <span className="tickbox" aria-hidden="true" />
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
