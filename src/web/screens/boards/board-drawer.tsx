import { Link } from '@tanstack/react-router';
import type { CSSProperties } from 'react';
import { fileName } from '#say/en/board-page.ts';
import { BOARDS_PAGE } from '#say/en/boards-page.ts';
import { figures } from '#say/en/ui.ts';
import { sayDay } from '#say/en/when.ts';
import { barsOf, type BoardEntry, type BuildBar } from './boards.ts';

/** The chosen board: its revisions, and what was built of it. */
export function BoardDrawer({ entry, now }: { readonly entry: BoardEntry; readonly now: Date }) {
  const { name, board, open } = entry;
  const bars = barsOf(board.builds);
  return (
    <aside className="drawer flush" aria-label={BOARDS_PAGE.drawer}>
      <section>
        <p className="s two">{BOARDS_PAGE.chosen}</p>
        <h2 className="big">
          <bdi>{name}</bdi>
        </h2>
        <p className="do">
          <Link className="btn" to="/boards/$board" params={{ board: name }}>
            {BOARDS_PAGE.openLines}
          </Link>
          {open[0] && (
            <Link className="btn" to="/kits/$build" params={{ build: open[0].build }}>
              {BOARDS_PAGE.goOn(open[0].name)}
            </Link>
          )}
        </p>
      </section>
      <hr />
      <section>
        <h2>{BOARDS_PAGE.revisions}</h2>
        <Revisions entry={entry} now={now} />
      </section>
      <hr />
      <section>
        <h2>{BOARDS_PAGE.builds}</h2>
        {bars.length === 0 ? (
          <p className="s two">{BOARDS_PAGE.noBuilds}</p>
        ) : (
          <ul className="bars s">
            {bars.map((bar) => (
              <Bar key={bar.build.build} bar={bar} now={now} />
            ))}
          </ul>
        )}
      </section>
    </aside>
  );
}

function Revisions({ entry: { name, board }, now }: { readonly entry: BoardEntry; readonly now: Date }) {
  const { revisionColumns: heads } = BOARDS_PAGE;
  return (
    <table className="ledger tight">
      <caption className="vh">{BOARDS_PAGE.revisionsCaption(name)}</caption>
      <thead>
        <tr>
          <th scope="col">{heads.revision}</th>
          <th scope="col">{heads.since}</th>
          <th scope="col" className="n">
            {heads.lines}
          </th>
          <th scope="col">{heads.source}</th>
        </tr>
      </thead>
      <tbody>
        {board.revisions.toReversed().map((revision, at) => (
          <tr key={revision.id}>
            <td className="main">
              <Link to="/boards/$board" params={{ board: name }} search={at === 0 ? {} : { revision: revision.name }}>
                {revision.name}
              </Link>
            </td>
            <td>{sayDay(revision.saved, now)}</td>
            <td className="n">{figures(revision.lines)}</td>
            <td className="two long">{revision.source !== null && fileName(revision.source)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

const stateWord = (state: string): string => Object.entries(BOARDS_PAGE.state).find(([name]) => name === state)?.[1] ?? state;

function Bar({ bar: { build, boards, length, open }, now }: { readonly bar: BuildBar; readonly now: Date }) {
  const style = { '--x': length } as CSSProperties; // as: React's type knows no custom properties
  return (
    <li className={open ? 'lead' : undefined} style={style}>
      <span className="name">
        <Link to="/kits/$build" params={{ build: build.build }}>
          {build.name}
        </Link>
        {open && <span className="two">, {stateWord(build.state)}</span>}
      </span>
      <span className="len" aria-hidden="true" />
      <span className="n">
        <b>{figures(boards)}</b>
      </span>
      <span className="day">{sayDay(build.when, now)}</span>
    </li>
  );
}
