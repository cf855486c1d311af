import { useEffect, useRef, useState } from 'react';
import type { BoardLine, LineDetail } from '#api/boards.ts';
import { writeRefs } from '#core/bom/write-refs.ts';
import { BOARD_LINE, sayLine } from '#say/en/board-line.ts';
import { UI } from '#say/en/ui.ts';
import type { Asked } from '../../lab/answers.ts';
import { BagLink } from '../../ui/bag-link.tsx';
import { Button } from '../../ui/button.tsx';
import { Fit } from '../../ui/fit.tsx';
import { Icon } from '../../ui/icon.tsx';
import { TroubleNote } from '../../ui/trouble-note.tsx';
import type { BoardActs } from './board-acts.ts';
import { groupOf, standingOf } from './board.ts';
import { LineActions } from './line-actions.tsx';
import { FIT_OF, wordOf } from './line-row.tsx';
import { OtherBags } from './other-bags.tsx';
import type { BoardPlace } from './place.ts';
import { PointTable } from './point-table.tsx';

interface LineDrawerProps {
  readonly line: BoardLine;
  readonly asked: Asked<LineDetail>;
  readonly place: BoardPlace;
  readonly acts: BoardActs;
  /** it stands over the list, as a view of its own */
  readonly over: boolean;
  readonly onClose: () => void;
}

/** Everything about one line: what it asks, the bag that answers, and what can be done. */
export function LineDrawer({ line, asked, place, acts, over, onClose }: LineDrawerProps) {
  const detail = asked.value?.row === line.row ? asked.value : undefined;
  const [askedFor, askFor] = useState<number | null>(null);
  return (
    <>
      <section>
        <Head key={line.row} line={line} over={over} onClose={onClose} />
        <p className="said">
          {BOARD_LINE.says} <q>{line.asks}</q>, {BOARD_LINE.readAs} {line.said.name} <span className="two">{line.said.rest}</span>
        </p>
        {detail && <Against line={line} detail={detail} />}
        {!detail && asked.waiting && <p className="two">{BOARD_LINE.reading}</p>}
        <TroubleNote trouble={asked.trouble} />
        {detail && <LineActions line={line} detail={detail} place={place} acts={acts} onOthers={() => askFor(line.row)} />}
      </section>
      {detail && place.others && <OtherBags key={line.row} detail={detail} place={place} focus={askedFor === line.row} />}
      {detail && <Because detail={detail} />}
      <Doubts line={line} />
    </>
  );
}

function Head({ line, over, onClose }: Pick<LineDrawerProps, 'line' | 'over' | 'onClose'>) {
  const head = useRef<HTMLHeadingElement>(null);
  // where the list is gone from sight, the focus goes with the eye
  useEffect(() => {
    if (over) head.current?.focus();
  }, [over]);
  return (
    <div className="apart">
      <h2 ref={head} tabIndex={-1}>
        {sayLine(line.row, writeRefs(line.refs))}
      </h2>
      <Button look={over ? 'plain' : 'quiet'} onClick={onClose}>
        {over ? BOARD_LINE.back : <Icon sign="close" />}
        {!over && <span className="vh">{UI.close}</span>}
      </Button>
    </div>
  );
}

/** The bag that is put beside the line, with the verdict, and each point of it. */
function Against({ line, detail }: { readonly line: BoardLine; readonly detail: LineDetail }) {
  if (groupOf(line) === 'noPart') return null;
  if (detail.bag === null)
    return (
      <p>
        <Fit fit="missing">{wordOf('missing')}</Fit> {BOARD_LINE.nothing} <span className="two">{BOARD_LINE.nothingWay}</span>
      </p>
    );
  const own = line.chosen?.bag === detail.bag;
  const standing = own
    ? standingOf({ verdict: detail.verdict === 'missing' ? 'check' : detail.verdict, chosen: line.chosen })
    : detail.verdict;
  return (
    <>
      <p className="line beside">
        <BagLink bag={detail.bag} size="big" />
        <Fit fit={FIT_OF[standing]}>{wordOf(standing)}</Fit>
      </p>
      <PointTable row={line.row} bag={detail.bag} points={detail.points} />
    </>
  );
}

function Because({ detail }: { readonly detail: LineDetail }) {
  if (detail.because.length === 0) return null;
  return (
    <section>
      <h3>{BOARD_LINE.why}</h3>
      <ul className="s two">
        {detail.because.map((text) => (
          <li key={text}>{text}</li>
        ))}
      </ul>
    </section>
  );
}

function Doubts({ line }: { readonly line: BoardLine }) {
  if (line.doubts.length === 0) return null;
  return (
    <section>
      <h3>{BOARD_LINE.doubts}</h3>
      <ul className="s">
        {line.doubts.map(({ field, why, settle }) => (
          <li key={`${field} ${why}`}>
            {why} <span className="two">{settle}</span>
          </li>
        ))}
      </ul>
    </section>
  );
}
