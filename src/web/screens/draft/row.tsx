import { useEffect, useRef } from 'react';
import type { DraftRow, DraftView } from '#api/drafts.ts';
import { writeRefs } from '#core/bom/write-refs.ts';
import { DRAFT } from '#say/en/draft-page.ts';
import { figures } from '#say/en/ui.ts';
import { Button } from '../../ui/button.tsx';
import { Fit, type Fits } from '../../ui/fit.tsx';
import { Gloss } from '../../ui/gloss.tsx';
import { Tag } from '../../ui/tag.tsx';
import { Doubt, type Answering } from './doubt.tsx';
import { groupOf, notRead, type Group } from './draft.ts';

interface RowProps extends Answering {
  readonly row: DraftRow;
  readonly is: DraftView['is'];
  /** the eye is on it */
  readonly on: boolean;
  /** field of the doubt that is being answered in words */
  readonly saying: string | null;
  readonly onSay: (row: number, field: string | null) => void;
}

/** One line: as written over what it was read as, and what it asks. */
export function Row({ row, is, on, saying, onSay, ...answering }: RowProps) {
  const place = useRef<HTMLTableRowElement>(null);
  useEffect(() => {
    if (on && saying === null) place.current?.focus({ preventScroll: false });
  }, [on, saying]);
  const group = groupOf(row);
  return (
    <tr
      ref={place}
      className={on ? 'on' : group === 'out' || group === 'none' ? 'off' : undefined}
      aria-current={on || undefined}
      tabIndex={-1}
    >
      {is === 'list' ? <ListHead row={row} /> : <BomHead row={row} />}
      <td data-as="folded">
        {row.gloss.length > 0 ? <Gloss pieces={row.gloss} /> : <p>{row.text}</p>}
        {group === 'doubts' &&
          row.doubts.map((doubt, at) => (
            <Doubt
              key={`${doubt.field} ${doubt.why}`}
              {...answering}
              row={row}
              doubt={doubt}
              last={at === row.doubts.length - 1}
              saying={saying === doubt.field}
              onSay={(open) => onSay(row.row, open ? doubt.field : null)}
            />
          ))}
        <Said row={row} group={group} {...answering} />
      </td>
      <Count row={row} is={is} />
      <td className="t" data-as="sub">
        <Fit fit={fitOf(row, group)}>{wordOf(row, group)}</Fit>
      </td>
    </tr>
  );
}

/** What was said of the row, and what can be done with the whole of it. */
function Said({ row, group, forget, leaveOut }: Answering & { readonly row: DraftRow; readonly group: Group }) {
  return (
    <>
      {row.answers.map(({ field, text }) => (
        <p key={field} className="said s">
          {DRAFT.youSaid(text)}{' '}
          <button type="button" className="btn quiet" onClick={() => forget(row.row, field)}>
            {DRAFT.askAgain}
          </button>
        </p>
      ))}
      {group === 'out' && (
        <Button look="quiet" onClick={() => leaveOut(row.row, false)}>
          {DRAFT.takeIn}
        </Button>
      )}
    </>
  );
}

function BomHead({ row }: { readonly row: DraftRow }) {
  return (
    <>
      <td className="n three t" data-as="idx" data-l={DRAFT.line}>
        {row.row}
      </td>
      <td className="main" data-as="main">
        {writeRefs(row.refs) || row.said.name}
      </td>
    </>
  );
}

function ListHead({ row }: { readonly row: DraftRow }) {
  return (
    <>
      <td className="n three t" data-as="idx" data-l={DRAFT.line}>
        {row.row}
      </td>
      <td className="t" data-as="tag">
        {row.bag !== null && !row.out && row.part && <Tag bag={row.bag} />}
      </td>
    </>
  );
}

function Count({ row, is }: { readonly row: DraftRow; readonly is: DraftView['is'] }) {
  const none = is === 'list' ? DRAFT.uncounted : '';
  return (
    <>
      <td className="n main" data-as="n">
        {row.quantity === null ? none : figures(row.quantity)}
      </td>
      {is === 'list' && (
        <td className="t" data-as="sub" data-l={DRAFT.box}>
          {row.out || !row.part ? '' : (row.box ?? DRAFT.noBox)}
          {row.place !== null && row.box !== null && <span className="two"> {row.place}</span>}
        </td>
      )}
    </>
  );
}

function fitOf(row: DraftRow, group: Group): Fits {
  if (group === 'doubts') return notRead(row) ? 'missing' : 'check';
  return group === 'clear' || group === 'told' ? 'exact' : 'none';
}

function wordOf(row: DraftRow, group: Group): string {
  if (group === 'doubts') return notRead(row) ? DRAFT.unread : DRAFT.check;
  if (group === 'out') return DRAFT.out;
  if (group === 'none') return DRAFT.noPart;
  if (!row.fitted) return DRAFT.notFitted;
  return group === 'told' ? DRAFT.told : DRAFT.clear;
}
