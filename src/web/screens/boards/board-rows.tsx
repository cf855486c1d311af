import { Link } from '@tanstack/react-router';
import { Fragment, useEffect, useRef } from 'react';
import { BOARDS_PAGE, sayBuildable, sayKits, sayRevision } from '#say/en/boards-page.ts';
import { figures } from '#say/en/ui.ts';
import { sayDay } from '#say/en/when.ts';
import { BagLink } from '../../ui/bag-link.tsx';
import { BOARD_GROUPS, type BoardEntry } from './boards.ts';

interface BoardTableProps {
  readonly entries: readonly BoardEntry[];
  readonly chosen: string | undefined;
  readonly now: Date;
  readonly onChoose: (board: string) => void;
}

/** The boards, group by group. */
export function BoardTable({ entries, chosen, now, onChoose }: BoardTableProps) {
  const { columns, groups } = BOARDS_PAGE;
  return (
    <table className="ledger fold list">
      <caption className="vh">{BOARDS_PAGE.caption}</caption>
      <thead>
        <tr>
          <th scope="col">{columns.board}</th>
          <th scope="col">{columns.revision}</th>
          <th scope="col" className="n">
            {columns.lines}
          </th>
          <th scope="col">{columns.built}</th>
          <th scope="col">{columns.open}</th>
          <th scope="col" className="n">
            {columns.can}
          </th>
          <th scope="col">{columns.limited}</th>
        </tr>
      </thead>
      {BOARD_GROUPS.map((group) => {
        const own = entries.filter((entry) => entry.group === group);
        if (own.length === 0) return null;
        return (
          <tbody key={group}>
            <tr>
              <th scope="rowgroup" colSpan={7}>
                {groups[group]}
              </th>
            </tr>
            {own.map((entry) => (
              <BoardRow key={entry.name} entry={entry} on={entry.name === chosen} now={now} onChoose={onChoose} />
            ))}
          </tbody>
        );
      })}
    </table>
  );
}

interface BoardRowProps {
  readonly entry: BoardEntry;
  readonly on: boolean;
  readonly now: Date;
  readonly onChoose: (board: string) => void;
}

function BoardRow({ entry, on, now, onChoose }: BoardRowProps) {
  const { name, revision, lastBuilt, open } = entry;
  const { fold } = BOARDS_PAGE;
  return (
    <tr
      className={on ? 'on' : undefined}
      aria-current={on ? 'true' : undefined}
      onClick={(event) => {
        // a press beside the links chooses the row for the drawer; the links are the way of the keys
        if (event.target instanceof Element && !event.target.closest('a')) onChoose(name);
      }}
    >
      <td className="main" data-as="main">
        <BoardLink name={name} on={on} />
      </td>
      <td data-as="sub">{revision && sayRevision(revision.name)}</td>
      <td className="n" data-as="need" data-l={fold.lines}>
        {revision && figures(revision.lines)}
      </td>
      <td className={lastBuilt ? undefined : 'two'} data-as="code" data-l={fold.built}>
        {lastBuilt ? sayDay(lastBuilt.when, now) : BOARDS_PAGE.never}
      </td>
      <td data-as="box" className="kits">
        {open.map((kit, at) => (
          <Fragment key={kit.build}>
            {at > 0 && ', '}
            <Link to="/kits/$build" params={{ build: kit.build }}>
              {sayKits(kit.name, kit.boards)}
            </Link>
          </Fragment>
        ))}
      </td>
      <Reach entry={entry} />
    </tr>
  );
}

function BoardLink({ name, on }: { readonly name: string; readonly on: boolean }) {
  const link = useRef<HTMLAnchorElement>(null);
  // the focus goes with the chosen row, unless it is busy elsewhere on the page
  useEffect(() => {
    const at = document.activeElement;
    if (on && (at === document.body || at?.closest('.list'))) link.current?.focus();
  }, [on]);
  return (
    <Link ref={link} to="/boards/$board" params={{ board: name }}>
      <bdi>{name}</bdi>
    </Link>
  );
}

const MOST_LIMITS = 3;

/** How many can be built, and what ends it; it comes later than the list. */
function Reach({ entry: { reach } }: { readonly entry: BoardEntry }) {
  const limits = reach?.limitedBy ?? [];
  return (
    <>
      <td className="n main" data-as="n" data-l={BOARDS_PAGE.fold.can}>
        {reach === null && <span className="three">{BOARDS_PAGE.waiting}</span>}
        {reach?.buildable === 0 && <span className="bad">{BOARDS_PAGE.cannot}</span>}
        {reach !== null && reach.buildable > 0 && sayBuildable(reach.buildable, reach.most)}
      </td>
      <td className="lim" data-as="sub" data-l={BOARDS_PAGE.fold.limited}>
        {limits.slice(0, MOST_LIMITS).map((limit) =>
          'bag' in limit ? (
            <BagLink key={`bag ${limit.bag}`} bag={limit.bag} size="sm" />
          ) : (
            <span key={`line ${limit.line}`} className="two s">
              {BOARDS_PAGE.line} {limit.line}
            </span>
          ),
        )}
        {limits.length > MOST_LIMITS && <span className="two s">{BOARDS_PAGE.moreLimits(limits.length - MOST_LIMITS)}</span>}
      </td>
    </>
  );
}
