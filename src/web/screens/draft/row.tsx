import { useEffect, useRef } from 'react';
import type { DraftRow, DraftView } from '#api/drafts.ts';
import { writeRefs } from '#core/bom/write-refs.ts';
import { DRAFT, sayReadAs } from '#say/en/draft-page.ts';
import { figures } from '#say/en/ui.ts';
import { Button } from '../../ui/button.tsx';
import { Fit, type Fits } from '../../ui/fit.tsx';
import { Gloss } from '../../ui/gloss.tsx';
import { Tag } from '../../ui/tag.tsx';
import { Doubt, type Answering } from './doubt.tsx';
import { groupOf, notRead, type Group } from './draft.ts';
import { SayForm } from './say-form.tsx';

interface RowProps extends Answering {
  readonly row: DraftRow;
  readonly is: DraftView['is'];
  /** the eye is on it */
  readonly on: boolean;
  /** field of the doubt that is being answered in words */
  readonly saying: string | null;
  readonly onSay: (row: number, field: string | null) => void;
  /** why what was typed in the open field was refused */
  readonly refused: string | null;
  readonly onLook: (row: number) => void;
}

/** One line: as written over what it was read as, and what it asks. */
export function Row({ row, is, on, saying, onSay, refused, onLook, ...answering }: RowProps) {
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
      {is === 'list' ? <ListHead row={row} onLook={onLook} /> : <BomHead row={row} onLook={onLook} />}
      <td data-as="folded">
        {row.gloss.length > 0 ? <Gloss pieces={row.gloss} /> : <p>{row.text}</p>}
        {group === 'doubts' &&
          row.doubts.map((doubt, at) => (
            <Doubt
              key={`${doubt.field} ${doubt.why}`}
              {...answering}
              row={row}
              doubt={doubt}
              canLeave={doubt.stops || (at === row.doubts.length - 1 && !row.doubts.some((one) => one.stops))}
              refused={refused}
              saying={saying === doubt.field}
              onSay={(open) => onSay(row.row, open ? doubt.field : null)}
            />
          ))}
        <Said row={row} group={group} {...answering} />
        {asksPart(row, saying) && (
          <SayForm
            field="part"
            begin={row.text}
            refused={refused}
            onSay={(text) => answering.answer(row.row, 'part', text)}
            onClose={() => onSay(row.row, null)}
          />
        )}
        {on && saying === null && <WholeRow row={row} group={group} onSay={onSay} {...answering} />}
      </td>
      <Count row={row} is={is} />
      <td className="t" data-as="sub">
        <Fit fit={fitOf(row, group)}>{wordOf(row, group)}</Fit>
      </td>
    </tr>
  );
}

/** Is the field open where it is said what the row is as a whole? */
const asksPart = ({ doubts }: DraftRow, saying: string | null): boolean =>
  saying !== null && !doubts.some(({ field }) => field === saying);

interface WholeProps extends Answering {
  readonly row: DraftRow;
  readonly group: Group;
  readonly onSay: (row: number, field: string | null) => void;
}

/** What can be done with the row that the eye is on; a row with doubts has its own buttons. */
function WholeRow({ row, group, onSay, leaveOut }: WholeProps) {
  const doubts = group === 'doubts';
  if (group === 'out' || (doubts && row.doubts.some(({ field }) => field === 'kind'))) return null;
  return (
    <p className="do">
      <Button look="quiet" onClick={() => onSay(row.row, 'part')}>
        {doubts ? DRAFT.sayWhole : DRAFT.say}
      </Button>
      {!doubts && (
        <Button look="quiet" onClick={() => leaveOut(row.row, true)}>
          {DRAFT.leaveOut}
        </Button>
      )}
    </p>
  );
}

/** What was said of the row, and how it was read. */
function Said({ row, group, forget, leaveOut }: Answering & { readonly row: DraftRow; readonly group: Group }) {
  return (
    <>
      {row.answers.map(({ field, text }) => (
        <p key={field} className="said s">
          {DRAFT.youSaid(text)} {text !== null && sayReadAs(field, row)}{' '}
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

interface HeadProps {
  readonly row: DraftRow;
  readonly onLook: (row: number) => void;
}

/** The number of the line, which chooses it. */
function LineNumber({ row: { row }, onLook }: HeadProps) {
  return (
    <td className="n three t" data-as="idx" data-l={DRAFT.line}>
      <button type="button" className="lineno" aria-label={DRAFT.chooseLine(row)} onClick={() => onLook(row)}>
        {row}
      </button>
    </td>
  );
}

function BomHead({ row, onLook }: HeadProps) {
  return (
    <>
      <LineNumber row={row} onLook={onLook} />
      <td className="main" data-as="main">
        {writeRefs(row.refs) || row.said.name}
      </td>
    </>
  );
}

function ListHead({ row, onLook }: HeadProps) {
  return (
    <>
      <LineNumber row={row} onLook={onLook} />
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
      <td className="n main" data-as="n" data-l={is === 'list' ? DRAFT.pieces : DRAFT.each}>
        {row.quantity === null ? none : row.about ? DRAFT.about(row.quantity) : figures(row.quantity)}
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
