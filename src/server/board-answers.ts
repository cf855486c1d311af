import type { BoardLineFound, BoardLinesFound } from '#actions/board-lines.ts';
import type { BagAnswer, LineDetailFound } from '#actions/line-detail.ts';
import type { BoardLine, BoardLines, BoardView, LineDetail } from '#api/boards.ts';
import { kitAnswer, lineAnswer } from '#api/kit-answers.ts';
import type { BoardRevision, BoardSummary } from '#db/boards.ts';
import type { BuildSummary } from '#db/read-builds.ts';
import { sayBecause } from '#say/en/because.ts';
import { doubtText } from '#say/en/doubts.ts';
import { sayPoint } from '#say/en/points.ts';
import { sayReasons } from '#say/en/reasons.ts';
import { sayPart } from '#say/en/said.ts';

/** Boards as they cross the wire, each with its builds. */
export function boardViews(boards: readonly BoardSummary[], builds: ReadonlyMap<string, readonly BuildSummary[]>): BoardView[] {
  return boards.map(({ id, name, revisions }) => ({
    id,
    name,
    revisions: [...revisions],
    builds: (builds.get(name) ?? []).map((build) => ({
      build: build.id,
      name: build.name,
      state: build.state,
      boards: build.boards,
      made: build.made,
      when: build.reserved,
    })),
  }));
}

/** The lines of a board as they cross the wire. */
export function boardLinesAnswer({ board, revision }: BoardRevision, found: BoardLinesFound): BoardLines {
  const { boards, buildable, buildableWithChecks, limitedBy, proof } = kitAnswer(found.planned, [], sayBecause);
  const { name, source } = revision;
  return {
    board: board.name,
    revision: name,
    source,
    boards,
    buildable,
    buildableWithChecks,
    limitedBy,
    proof,
    lines: found.lines.map(boardLine),
  };
}

function boardLine({ line, row, choice, holds, later, nearest, free, left, reaches, waits }: BoardLineFound): BoardLine {
  return {
    ...lineAnswer(line, sayBecause),
    demand: line.demand,
    asks: row.part.text,
    said: sayPart(row.part),
    fitted: row.fitted,
    later,
    chosen: choice && { bag: choice.bag, accept: choice.accept, reason: choice.reason ?? null },
    holds: holds && sayPart(holds.part),
    nearest,
    waits,
    free,
    left,
    reaches,
    doubts: row.doubts.map((doubt) => ({ field: doubt.field, ...doubtText(doubt) })),
  };
}

/** A line against one bag as it crosses the wire. */
export function lineDetailAnswer({ row, matched, answer, asked, points, others }: LineDetailFound): LineDetail {
  return {
    row: row.row,
    refs: [...row.refs],
    demand: matched.demand,
    asks: row.part.text,
    said: sayPart(row.part),
    bag: answer?.bag.number ?? null,
    verdict: answer?.verdict ?? 'missing',
    because: sayReasons(answer?.because ?? matched.because.filter(({ code }) => code !== 'short')),
    points: answer ? points.map((point) => sayPoint(point, answer.bag.part, asked)) : [],
    others: others.map(otherBag),
  };
}

function otherBag({ bag, verdict, because, chosen }: BagAnswer): LineDetail['others'][number] {
  const { number, box, part, sure, reserved } = bag;
  return { bag: number, box, said: sayPart(part), free: sure - reserved, verdict, because: sayReasons(because), chosen };
}
