import { RECEIVE } from '#say/en/receive-page.ts';
import { figures } from '#say/en/ui.ts';
import { BagLink } from '../../ui/bag-link.tsx';
import { Button } from '../../ui/button.tsx';
import { Fit } from '../../ui/fit.tsx';
import { Note } from '../../ui/note.tsx';
import { Tag } from '../../ui/tag.tsx';
import type { TakenIn } from './receive.ts';

interface TakenListProps {
  readonly list: readonly TakenIn[];
  readonly busy: boolean;
  readonly onBack: (act: string) => void;
}

/** Bags that were taken in on this page, the newest first, each with its way back. */
export function TakenList({ list, busy, onBack }: TakenListProps) {
  if (list.length === 0) return <Note title={RECEIVE.nothing}>{RECEIVE.nothingWhy}</Note>;
  const { bag, what, code, box, pieces, undo } = RECEIVE.columns;
  return (
    <table className="ledger fold taken">
      <caption className="vh">{RECEIVE.caption}</caption>
      <thead>
        <tr>
          <th scope="col">{bag}</th>
          <th scope="col">{what}</th>
          <th scope="col">{code}</th>
          <th scope="col">{box}</th>
          <th scope="col" className="n">
            {pieces}
          </th>
          <th scope="col">
            <span className="vh">{undo}</span>
          </th>
        </tr>
      </thead>
      <tbody>
        {list.map((one) => (
          <TakenRow key={one.act} one={one} busy={busy} onBack={onBack} />
        ))}
      </tbody>
    </table>
  );
}

interface TakenRowProps {
  readonly one: TakenIn;
  readonly busy: boolean;
  readonly onBack: (act: string) => void;
}

function TakenRow({ one, busy, onBack }: TakenRowProps) {
  const { bag, name, rest, code, box, quantity, about, added, doubts, back, act } = one;
  return (
    <tr className={back ? 'off' : undefined}>
      <td className="t" data-as="tag">
        {back && !added ? <Tag bag={bag} gone /> : <BagLink bag={bag} />}
      </td>
      <td className="main" data-as="main">
        {name} <span className="two s">{rest}</span>
        {!back &&
          doubts.map((doubt) => (
            <span key={doubt} className="why">
              <Fit fit="check" /> {doubt}
            </span>
          ))}
      </td>
      <td>
        <span className="code">{code}</span>
      </td>
      <td data-l={RECEIVE.box}>{box ?? RECEIVE.loose}</td>
      <td className="n" data-as="n">
        {about ? RECEIVE.about50(quantity) : figures(quantity)}
        {added && <span className="two s"> {RECEIVE.added}</span>}
      </td>
      <td className="n" data-as="sub">
        {back ? (
          RECEIVE.takenBack
        ) : (
          <Button look="quiet" aria-label={RECEIVE.takeBack(bag)} disabled={busy} onClick={() => onBack(act)}>
            {RECEIVE.takeBackShort}
          </Button>
        )}
      </td>
    </tr>
  );
}
