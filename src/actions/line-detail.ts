import type { ReadRow } from '#core/bom/bom.ts';
import { linePoints } from '#core/bom/line-points.ts';
import { matchBom, type MatchedLine } from '#core/bom/match.ts';
import { nearestBags } from '#core/bom/nearest.ts';
import { mayPlan } from '#core/kit/problem.ts';
import type { Part } from '#core/part/part.ts';
import type { Point } from '#core/serve/points.ts';
import type { Because, Verdict } from '#core/serve/verdict.ts';
import { done, refuse, type Outcome } from '#core/stock/refusal.ts';
import type { Bag } from '#core/stock/stock.ts';
import type { BoardRevision } from '#db/boards.ts';
import type { StockNow } from './follow-stock.ts';

/** How one bag answers a line. */
export interface BagAnswer {
  readonly bag: Bag;
  readonly verdict: Verdict;
  readonly because: readonly Because[];
  readonly chosen: boolean;
}

/** A line against one bag, point by point. */
export interface LineDetailFound {
  readonly row: ReadRow;
  readonly matched: MatchedLine;
  /** null where nothing is like what is asked */
  readonly answer: BagAnswer | null;
  /** the part that the points compare with: the line's own, or an alternate that it names */
  readonly asked: Part;
  readonly points: readonly Point[];
  /** the best first; those that fall short last */
  readonly others: readonly BagAnswer[];
}

const MOST_OTHERS = 20;
/** Bags that fall short are shown too, so that one may be taken with a reason. */
const SHORT_OTHERS = 5;

/** One line of a board against the bag that is asked for, or against the one that it would get, and the others that may answer. */
export function lineDetail(now: StockNow, board: BoardRevision, row: number, wanted?: number): Outcome<LineDetailFound> {
  const line = board.lines.find((one) => one.row === row);
  if (!line) return refuse('not-valid', { field: 'row', received: row, expected: 'row-of-board' });
  const [matched] = matchBom([line], now.index, board.choices, 1, board.later);
  if (!matched) throw new Error('a line is matched with as many lines');
  const answers = answersOf(now, line, matched);
  const asked = wanted === undefined ? null : now.bag(wanted);
  if (wanted !== undefined && !asked) return refuse('no-such-bag', { bag: wanted });
  const answer = asked ? (answers.find(({ bag }) => bag.id === asked.id) ?? answerOf(line, asked)) : bestOf(matched, answers);
  const others = answers.filter(({ bag }) => bag.id !== answer?.bag.id);
  const { points, asked: part } = answer ? linePoints(line, answer.bag) : { points: [], asked: line.part };
  return done({ row: line, matched, answer, asked: part, points, others: some(others) });
}

/** The bag that would be taken: the one chosen by hand, the best that may be planned, one to look at, the nearest. */
function bestOf({ candidates }: MatchedLine, answers: readonly BagAnswer[]): BagAnswer | null {
  const best = candidates.find(({ accepted }) => accepted) ?? candidates.find(mayPlan);
  return answers.find(({ bag }) => bag.number === best?.bag) ?? answers[0] ?? null;
}

/** Every bag that may answer, as the plan sees it, then those that are nearest. */
function answersOf(now: StockNow, line: ReadRow, { candidates }: MatchedLine): BagAnswer[] {
  const found = candidates.flatMap(({ bag: number, verdict, because, accepted }): BagAnswer[] => {
    const bag = now.bag(number);
    return bag ? [{ bag, verdict, because, chosen: accepted }] : [];
  });
  const known = new Set(found.map(({ bag }) => bag.id));
  const nearest = line.part.kind === 'not-a-part' ? [] : nearestBags(now.index, line.part);
  return [...found, ...nearest.filter(({ bag }) => !known.has(bag.id)).map(({ bag }) => answerOf(line, bag))];
}

function answerOf(line: ReadRow, bag: Bag): BagAnswer {
  const { verdict, because } = linePoints(line, bag);
  return { bag, verdict, because, chosen: false };
}

/** At most so many, the last places kept for some that fall short. */
function some(others: readonly BagAnswer[]): BagAnswer[] {
  const short = others.filter(({ verdict }) => verdict === 'missing');
  const may = others.filter(({ verdict }) => verdict !== 'missing');
  const most = MOST_OTHERS - Math.min(SHORT_OTHERS, short.length);
  const shown = may.slice(0, Math.max(most, MOST_OTHERS - short.length));
  return [...shown, ...short.slice(0, MOST_OTHERS - shown.length)];
}
