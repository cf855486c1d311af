import { useNavigate } from '@tanstack/react-router';
import { memo, useEffect, useRef } from 'react';
import type { BoardLine } from '#api/boards.ts';
import { writeRefs } from '#core/bom/write-refs.ts';
import { BOARD_PAGE, sayShort } from '#say/en/board-page.ts';
import { figures } from '#say/en/ui.ts';
import { BagLink } from '../../ui/bag-link.tsx';
import { Fit, type Fits } from '../../ui/fit.tsx';
import { PlainLink } from '../../ui/plain-link.tsx';
import { asksOf, bagOf, groupOf, standingOf, whyOf, type Standing } from './board.ts';
import { changed, toRow, type BoardWords } from './place.ts';

export const FIT_OF: Readonly<Record<Standing, Fits>> = {
  exact: 'exact',
  serves: 'serves',
  accepted: 'serves',
  check: 'check',
  missing: 'missing',
};
export const wordOf = (standing: Standing): string =>
  standing === 'accepted' ? BOARD_PAGE.accepted : BOARD_PAGE.verdicts[standing];

interface LineRowProps {
  readonly line: BoardLine;
  readonly on: boolean;
  /** address of the board with this line chosen */
  readonly href: string;
  /** of a table that shows a part of its rows: its place in the whole, from 0 */
  readonly index: number;
  readonly whole: boolean;
  readonly measure?: ((row: Element | null) => void) | undefined;
}

/** One line: what it asks, what answers it and why, and what that leaves. */
export const LineRow = memo(function LineRow({ line, on, href, index, whole, measure }: LineRowProps) {
  const now = groupOf(line) === 'now';
  const bag = bagOf(line);
  const why = whyOf(line);
  const standing = standingOf(line);
  return (
    <tr
      ref={measure}
      data-index={index}
      aria-rowindex={whole ? undefined : index + 2}
      aria-current={on ? 'true' : undefined}
      className={[on && 'on', !now && 'off'].filter(Boolean).join(' ') || undefined}
    >
      <td className="n three" data-as="idx" data-l={BOARD_PAGE.fold.line}>
        {line.row}
      </td>
      <td className="main refs" data-as="main">
        <PickLink line={line} on={on} href={href} />
      </td>
      <td className="two asks" data-as="code" data-fold={now && line.holds ? 'no' : undefined}>
        {asksOf(line) ?? <SaidCell said={line.said} />}
      </td>
      <td data-as="sub">
        {now && <Fit fit={FIT_OF[standing]}>{wordOf(standing)}</Fit>} {why && <span className="why">{why}</span>}
      </td>
      <td data-as="tag">
        {now && (bag === null ? <span className="tag none">{BOARD_PAGE.noBag}</span> : <BagLink bag={bag} />)}
      </td>
      <td className="two holds" data-as="box">
        {now && line.holds?.name}
      </td>
      <td className="n" data-as="need" data-l={BOARD_PAGE.fold.need}>
        {figures(line.need)}
      </td>
      <td className="n" data-as="have" data-l={BOARD_PAGE.fold.free}>
        {now ? figures(line.waits ?? line.free) : BOARD_PAGE.none}
      </td>
      <td className="n" data-as="n">
        <Left line={line} now={now} />
      </td>
    </tr>
  );
});

function SaidCell({ said }: { readonly said: BoardLine['said'] }) {
  return (
    <>
      {said.name} <small>{said.rest}</small>
    </>
  );
}

/** What stays in the bags, or what they lack. */
function Left({ line, now }: { readonly line: BoardLine; readonly now: boolean }) {
  if (!now) return BOARD_PAGE.none;
  if (line.waits !== null && line.waits >= line.need) return <span className="warn">{BOARD_PAGE.waits}</span>;
  if (line.short > 0) return <span className="bad">{sayShort(line.short)}</span>;
  return (
    <span className="two">
      <span className="unit">{BOARD_PAGE.fold.left} </span>
      {figures(line.left)}
    </span>
  );
}

function PickLink({ line, on, href }: Pick<LineRowProps, 'line' | 'on' | 'href'>) {
  const navigate = useNavigate();
  const link = useRef<HTMLAnchorElement>(null);
  const refs = writeRefs(line.refs);
  // the focus goes with the chosen line, unless it is busy elsewhere on the page
  useEffect(() => {
    const at = document.activeElement;
    if (on && (at === document.body || at?.closest('.lines'))) link.current?.focus();
  }, [on]);
  return (
    <PlainLink
      ref={link}
      href={href}
      onGo={() =>
        void navigate({
          from: '/boards/$board',
          to: '/boards/$board',
          params: true,
          search: (now: BoardWords) => changed(now, toRow(line.row)),
          resetScroll: false,
        })
      }
      className="pick"
      data-row={line.row}
      aria-label={`${refs === '' ? BOARD_PAGE.noRefs : refs}, ${BOARD_PAGE.fold.line} ${line.row}`}
    >
      {refs === '' ? <span className="two">{BOARD_PAGE.noRefs}</span> : refs}
    </PlainLink>
  );
}
