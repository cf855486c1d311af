import { useId } from 'react';
import type { BoardLines } from '#api/boards.ts';
import { BOARD_PAGE, sayCanBuild, sayReading, sayReckoning } from '#say/en/board-page.ts';
import { useBoardLines, useLine } from '../../lab/answers.ts';
import { Answer } from '../../ui/answer.tsx';
import { useKeys } from '../../ui/keys.ts';
import { Named } from '../../ui/named.tsx';
import { useNarrow } from '../../ui/narrow.ts';
import { Note } from '../../ui/note.tsx';
import { TroubleNote } from '../../ui/trouble-note.tsx';
import { useTypedNumber } from '../../ui/typed-number.ts';
import { useBoardActs } from './board-acts.ts';
import { lineWithBag, rowsOf, stepFrom } from './board.ts';
import { BoardSums } from './board-sums.tsx';
import { BoardWhy } from './board-why.tsx';
import { LatestNote } from './latest-note.tsx';
import { LineDrawer } from './line-drawer.tsx';
import { LineLedger } from './line-ledger.tsx';
import { NoBoard } from './no-board.tsx';
import { toRow, useBoardPlace, type BoardPlace } from './place.ts';
import { PlanKit, PlanTrouble, useKitPlanning } from './plan-kit.tsx';
import { Lacks, Reaches } from './reaches.tsx';
import './board.css';

/** One board: how many can be built, what answers each line and why, and a kit of it. */
export function BoardPage() {
  const place = useBoardPlace();
  const asked = useBoardLines(place.board, place.boards, place.revision);
  const { trouble } = asked;
  // the former answer stays while a number changes, but never the one of another board
  const known = asked.value?.board === place.board ? asked.value : undefined;
  const view = known && (place.revision === undefined || known.revision === place.revision) ? known : undefined;
  if (trouble?.kind === 'refused' && trouble.problem.code === 'no-such-board' && !view) return <NoBoard place={place} />;
  return (
    <main id="main" className="page board">
      {view ? (
        <Board key={place.board} place={place} view={view} asking={asked.asking} />
      ) : (
        <Answer title={<Named says={trouble ? place.board : sayReading(place.board)} name={place.board} />} />
      )}
      <TroubleNote trouble={trouble} />
    </main>
  );
}

interface BoardProps {
  readonly place: BoardPlace;
  readonly view: BoardLines;
  readonly asking: boolean;
}

function Board({ place, view, asking }: BoardProps) {
  const { board, boards, row } = place;
  const narrow = useNarrow();
  const acts = useBoardActs(board);
  const planning = useKitPlanning(board, view.revision);
  const waits = useId();
  const ready = view.boards === boards;
  const line = view.lines.find((one) => one.row === row);
  const detail = useLine(board, line ? line.row : null, {
    ...(place.bag !== null && { bag: place.bag }),
    ...(place.revision !== undefined && { revision: place.revision }),
  });
  const close = (): void => place.go({ row: null, bag: null, show: null }, 'replace');
  useBoardKeys(place, view, () => ready && view.buildable > 0 && planning.plan(view.buildable), close);
  const over = narrow && line !== undefined;
  const title = ready ? sayCanBuild({ board, boards, buildable: view.buildable }) : sayReckoning(board, boards);
  return (
    <div className="split">
      <div inert={over}>
        <Answer title={<Named says={title} name={board} />} why={<BoardWhy view={view} id={waits} />}>
          <PlanKit
            planning={planning}
            boards={boards}
            buildable={view.buildable}
            ready={ready}
            waitsFor={waits}
            onBoards={(wanted) => place.go({ boards: String(wanted) }, 'replace')}
          />
        </Answer>
        <PlanTrouble planning={planning} boards={ready ? view.buildable : boards} />
        {!over && <LatestNote acts={acts} />}
        <BoardSums place={place} view={view} />
        <div className="col" aria-busy={asking}>
          {view.lines.length === 0 ? (
            <Note title={BOARD_PAGE.noLines}>{BOARD_PAGE.noLinesWhy}</Note>
          ) : (
            <LineLedger rows={rowsOf(view.lines)} row={line ? line.row : null} />
          )}
        </div>
        <BoardKeyHints />
      </div>
      <aside className={over ? 'drawer flush over' : 'drawer flush'} aria-label={BOARD_PAGE.drawer}>
        {line && <LineDrawer line={line} asked={detail} place={place} acts={acts} over={over} onClose={close} />}
        {over && <LatestNote acts={acts} />}
        {line && <hr />}
        <Reaches lines={view.lines} boards={view.boards} />
        <Lacks lines={view.lines} boards={view.boards} />
      </aside>
    </div>
  );
}

function useBoardKeys(place: BoardPlace, view: BoardLines, plan: () => void, close: () => void): void {
  const to = (row: number | null): void => {
    if (row !== null && row !== place.row) place.go(toRow(row), place.row === null ? 'push' : 'replace');
  };
  const figures = useTypedNumber((bag) => to(lineWithBag(view.lines, bag)));
  useKeys({
    ...figures,
    ArrowDown: () => to(stepFrom(rowsOf(view.lines), place.row, 1)),
    ArrowUp: () => to(stepFrom(rowsOf(view.lines), place.row, -1)),
    Escape: () =>
      place.others || place.bag !== null ? place.go({ show: null, bag: null }, 'replace') : place.row !== null && close(),
    k: plan,
  });
}

function BoardKeyHints() {
  const { keys } = BOARD_PAGE;
  return (
    <p className="keys">
      <span>
        <kbd>↑</kbd> <kbd>↓</kbd> {keys.row}
      </span>
      <span>
        <kbd>A</kbd> {keys.accept}
      </span>
      <span>
        <kbd>O</kbd> {keys.other}
      </span>
      <span>
        <kbd>F</kbd> {keys.later}
      </span>
      <span>
        <kbd>K</kbd> {keys.plan}
      </span>
    </p>
  );
}
