import { candidates } from '#core/find/candidates.ts';
import type { FindIndex } from '#core/find/find-index.ts';
import type { DoubtField } from '#core/part/doubt.ts';
import { demandKey } from '#core/part/demand-key.ts';
import type { Part } from '#core/part/part.ts';
import { serve } from '#core/serve/serve.ts';
import type { Because, Verdict } from '#core/serve/verdict.ts';
import { free, type Bag } from '#core/stock/stock.ts';
import type { Choice, ReadRow } from './bom.ts';
import { byUse, judgeLine, type Judged } from './judge.ts';
import { nearestBag } from './nearest.ts';
import { perBoardOf } from './per-board.ts';

/** A bag that answers a line. `accepted`: chosen by hand, so that it may be planned whatever is left to check. */
export interface Match {
  readonly bag: number;
  readonly verdict: Verdict;
  readonly because: readonly Because[];
  readonly accepted: boolean;
}

/** A line put against the bags, before anything is planned. */
export interface MatchedLine {
  readonly row: number;
  readonly refs: readonly string[];
  /** pieces for one board: the refs, or the quantity where there are none; see `perBoardOf` */
  readonly perBoard: number;
  /** not where the line says so, and not where it is left off for now */
  readonly fitted: boolean;
  readonly asked: Part;
  readonly demand: string;
  /** how the best bag answers; for lines that are not fitted too, but these need nothing */
  readonly verdict: Verdict;
  readonly because: readonly Because[];
  /** those of `because` that speak of the line itself, whatever bag answers it */
  readonly ofLine: readonly Because[];
  /** best first */
  readonly candidates: readonly Match[];
  /** where nothing serves: the bag that lacks least */
  readonly nearest: number | null;
  readonly need: number;
  /** what all plannable bags together lack, other lines left aside */
  readonly short: number;
}

/**
 * Puts the lines of a BOM against the bags, for so many boards. The choice by hand for a demand comes first. Bags that are astray
 * are left out and named; a stated shortfall is `missing`, with the nearest bag in the reasons. Lines with a demand of `later` need nothing.
 */
export function matchBom(
  lines: readonly ReadRow[],
  index: FindIndex,
  choices: readonly Choice[],
  boards = 1,
  later: readonly string[] = [],
): MatchedLine[] {
  const chosen = new Map(choices.map((choice) => [choice.demand, choice]));
  const off = new Set(later);
  return lines.map((line) => {
    const demand = demandKey(line.part);
    return matchLine(line, index, { choice: chosen.get(demand) ?? null, later: off.has(demand) }, boards);
  });
}

/** What a person decided for a line. */
interface Decided {
  readonly choice: Choice | null;
  readonly later: boolean;
}

function matchLine(line: ReadRow, index: FindIndex, { choice, later }: Decided, boards: number): MatchedLine {
  const { row, refs, part: asked } = line;
  const fitted = line.fitted && !later;
  const isPart = asked.kind !== 'not-a-part';
  const perBoard = isPart ? perBoardOf(line) : 0;
  const need = fitted ? perBoard * boards : 0;
  const judged = isPart ? judgeLine(line, (part) => candidates(index, part)).toSorted(byUse) : [];
  const here = judged.filter(({ bag }) => bag.state !== 'astray');
  const answers = withChoice(here, index, asked, choice);
  const nearest = isPart && answers.length === 0 ? nearestBag(index, asked) : null;
  const short = Math.max(0, need - promised(answers, choice));
  const ofLine: Because[] = [...(later && line.fitted ? [LATER] : []), ...stateOf(line)];
  const because = [
    ...ofLine,
    ...(short ? [{ code: 'short' as const, args: { free: need - short, need } }] : []),
    ...(answers[0] ? saidOf(matchOf(answers[0], choice)) : (nearest?.because ?? (isPart ? [NOTHING] : []))),
    ...judged
      .filter(({ bag }) => bag.state === 'astray')
      .map(({ bag }) => ({ code: 'astray' as const, args: { bag: bag.number } })),
  ];
  return {
    row,
    refs,
    perBoard,
    fitted,
    asked,
    need,
    short,
    because,
    ofLine,
    demand: demandKey(asked),
    nearest: nearest?.bag ?? null,
    verdict: answers[0]?.verdict ?? 'missing',
    candidates: answers.map((answer) => matchOf(answer, choice)),
  };
}

const LATER: Because = { code: 'later', args: {} };
const NOTHING: Because = { code: 'nothing-like-it', args: {} };

/** An open check names its bag, since nothing is taken from it. */
function saidOf({ bag, verdict, accepted, because }: Match): readonly Because[] {
  return verdict === 'check' && !accepted ? [{ code: 'may-serve', args: { bag } }, ...because] : because;
}

/** Fields of the line that no bag can settle: what is doubtful about them is said whatever answers. */
const LINE_FIELDS: ReadonlySet<DoubtField> = new Set<DoubtField>(['refs', 'quantity', 'fitted', 'row']);

function stateOf(line: ReadRow): Because[] {
  const { fitted, part, refs, quantity, doubts } = line;
  if (part.kind === 'not-a-part') return [{ code: 'not-a-part', args: {} }];
  const said = doubts
    .filter(({ field }) => LINE_FIELDS.has(field))
    .map(({ code, field, args }): Because =>
      code === 'quantity-not-refs'
        ? { code, args: { ...args, need: perBoardOf(line) } }
        : { code: 'doubt', args: { field, text: args['text'] ?? args['ref'] ?? '' } },
    );
  if (!fitted) return [{ code: 'not-fitted', args: {} }, ...said];
  return refs.length === 0 && quantity === null && !said.some(({ args }) => args['field'] === 'quantity')
    ? [{ code: 'doubt', args: { field: 'quantity', text: '' } }, ...said]
    : said;
}

/** The bag chosen by hand first, even where it falls short: then it is for its chooser to answer, at most a check. */
function withChoice(answers: readonly Judged[], index: FindIndex, asked: Part, choice: Choice | null): Judged[] {
  if (!choice) return [...answers];
  const others = answers.filter(({ bag }) => bag.number !== choice.bag);
  const listed = answers.find(({ bag }) => bag.number === choice.bag) ?? overridden(index, asked, choice.bag);
  return listed ? [listed, ...others] : others;
}

function overridden(index: FindIndex, asked: Part, number: number): Judged | null {
  const bag = (index.byNumber.get(number) ?? []).map((slot) => index.slots[slot]).find((one): one is Bag => Boolean(one));
  return bag && bag.state !== 'astray'
    ? { bag, verdict: 'check', because: serve(bag.part, asked).because, samePackage: false }
    : null;
}

function matchOf({ bag, verdict, because }: Judged, choice: Choice | null): Match {
  const accepted = choice?.bag === bag.number;
  if (!accepted) return { bag: bag.number, verdict, because, accepted };
  const byHand: Because[] = [{ code: 'chosen', args: { bag: bag.number } }];
  if (choice.accept && verdict === 'check')
    byHand.push({ code: 'accepted', args: choice.reason === undefined ? {} : { reason: choice.reason } });
  return { bag: bag.number, verdict, because: [...byHand, ...because], accepted };
}

/** Free pieces in the bags that may be planned. */
function promised(answers: readonly Judged[], choice: Choice | null): number {
  return answers
    .filter(({ verdict, bag }) => verdict !== 'check' || bag.number === choice?.bag)
    .reduce((sum, { bag }) => sum + Math.max(0, free(bag)), 0);
}
