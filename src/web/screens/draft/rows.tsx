import type { DraftView } from '#api/drafts.ts';
import { sayMoreLines } from '#say/en/draft-more.ts';
import { DRAFT, sayGroup, sayShowMore, sayShown } from '#say/en/draft-page.ts';
import { Button } from '../../ui/button.tsx';
import type { Answering } from './doubt.tsx';
import { groupsOf, shownOf, STEP, type RowGroup } from './draft.ts';
import { Row } from './row.tsx';

interface RowsProps extends Answering {
  readonly draft: DraftView;
  /** row that the eye is on */
  readonly on: number | null;
  readonly saying: { readonly row: number; readonly field: string } | null;
  readonly onSay: (row: number, field: string | null) => void;
  /** why what was typed in the open field was refused */
  readonly refused: string | null;
  readonly onLook: (row: number) => void;
  /** rows of a group that were asked for */
  readonly show: number | null;
  readonly onShow: (rows: number) => void;
}

/** All lines as they were read, those with doubts first. */
export function Rows({ draft, show, ...rest }: RowsProps) {
  const list = draft.is === 'list';
  const more = sayMoreLines(draft.more, draft.moreDoubted);
  return (
    <div className="col lines">
      <table className="ledger fold read">
        <caption className="vh">{DRAFT.rowsCaption}</caption>
        <thead>
          <tr>
            <th scope="col" className="n">
              {DRAFT.line}
            </th>
            <th scope="col">{list ? DRAFT.bag : DRAFT.refs}</th>
            <th scope="col">{DRAFT.read}</th>
            <th scope="col" className="n">
              {list ? DRAFT.pieces : DRAFT.each}
            </th>
            {list && <th scope="col">{DRAFT.box}</th>}
            <th scope="col">{DRAFT.reading}</th>
          </tr>
        </thead>
        {groupsOf(draft.rows).map((group) => (
          <Group key={group.group} {...rest} draft={draft} group={group} shown={shownOf(group, show)} />
        ))}
      </table>
      {more !== null && <p className="s two">{more}</p>}
    </div>
  );
}

interface GroupProps extends Omit<RowsProps, 'show'> {
  readonly group: RowGroup;
  readonly shown: number;
}

function Group({ group: { group, rows }, shown, draft, on, saying, onShow, ...rest }: GroupProps) {
  const others = rows.length - shown;
  const width = draft.is === 'list' ? 6 : 5;
  return (
    <tbody>
      <tr>
        <th scope="rowgroup" colSpan={width}>
          {sayGroup(group, rows.length, draft.is)} {others > 0 && <small>{sayShown(shown)}</small>}
        </th>
      </tr>
      {rows.slice(0, shown).map((row) => (
        <Row
          key={row.row}
          {...rest}
          row={row}
          is={draft.is}
          on={on === row.row}
          saying={saying?.row === row.row ? saying.field : null}
        />
      ))}
      {others > 0 && (
        <tr className="others">
          <td colSpan={width} data-as="folded">
            <Button onClick={() => onShow(shown + STEP)}>{sayShowMore(STEP, others)}</Button>
          </td>
        </tr>
      )}
    </tbody>
  );
}
