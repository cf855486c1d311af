import type { CSSProperties } from 'react';
import type { BoardLine } from '#api/boards.ts';
import { writeRefs } from '#core/bom/write-refs.ts';
import { BOARD_LINE, sayMoreLacks, sayReach } from '#say/en/board-line.ts';
import { figures } from '#say/en/ui.ts';
import { BOARD_PAGE } from '#say/en/board-page.ts';
import { reachingOf, type Reaching } from './board.ts';

/** How many boards each line reaches: the five that reach least, against what was asked. */
export function Reaches({ lines, boards }: { readonly lines: readonly BoardLine[]; readonly boards: number }) {
  const { least, rest } = reachingOf(lines, boards);
  return (
    <section>
      <h2>{BOARD_LINE.reach}</h2>
      {least.length === 0 ? (
        <p className="s two">{BOARD_LINE.reachNone}</p>
      ) : (
        <>
          <ul className="bars s">
            {least.map((one) => (
              <Bar key={one.row} reaching={one} />
            ))}
          </ul>
          <p className="s two">
            {sayReach(
              boards,
              rest,
              least.some(({ short }) => short),
            )}
          </p>
        </>
      )}
    </section>
  );
}

function Bar({ reaching: { row, name, boards, short, length, goal } }: { readonly reaching: Reaching }) {
  const style = { '--x': length, '--goal': goal } as CSSProperties; // as: React's type knows no custom properties
  return (
    <li className={short ? 'short' : undefined} style={style}>
      <span className="name">
        {name}, {BOARD_PAGE.fold.line} {row}
      </span>
      <span className="len" aria-hidden="true">
        <i />
      </span>
      <span className="n">
        <b>{figures(boards)}</b>
      </span>
    </li>
  );
}

/** More than these are read in the table of the lines. */
const MOST_LACKS = 12;

/** What lacks for all the boards that were asked. */
export function Lacks({ lines, boards }: { readonly lines: readonly BoardLine[]; readonly boards: number }) {
  const short = lines.filter((line) => line.short > 0 && line.waits === null);
  if (short.length === 0) return null;
  const shown = short.slice(0, MOST_LACKS);
  return (
    <section>
      <h2>{BOARD_LINE.toReach(boards)}</h2>
      <table className="ledger tight">
        <caption className="vh">{BOARD_LINE.toReachCaption(boards)}</caption>
        <tbody>
          {shown.map((line) => (
            <tr key={line.row}>
              <td className="n main t">{figures(line.short)}</td>
              <td className="long">{line.said.name}</td>
              <td className="two refs">{writeRefs(line.refs)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {short.length > shown.length && <p className="s two">{sayMoreLacks(short.length - shown.length)}</p>}
    </section>
  );
}
