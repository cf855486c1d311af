import type { Doubt } from '#core/part/doubt.ts';
import { doubtedFields, isAssumption, isOfPart } from '#core/part/doubted.ts';
import type { Part } from '#core/part/part.ts';
import { isForMains } from '#core/serve/safety.ts';
import { serve } from '#core/serve/serve.ts';
import { rankOf, type Answer, type Because, type Verdict } from '#core/serve/verdict.ts';
import { free, type Bag } from '#core/stock/stock.ts';
import type { ReadRow } from './bom.ts';

/** A bag with how it answers the line, its own state and the line's doubts counted in. */
export interface Judged extends Answer {
  readonly bag: Bag;
  /** the bag states the package that is asked */
  readonly samePackage: boolean;
}

/** How each bag answers what is asked; those that don't at all are left out. Bags of one part are judged once. */
function judge(bags: readonly Bag[], asked: Part, doubts: readonly Doubt[]): Judged[] {
  const known = new Map<string, Answer & { readonly samePackage: boolean }>();
  const judged: Judged[] = [];
  for (const bag of bags) {
    let answer = known.get(bag.partId);
    if (!answer) {
      const served = doubtedBag(bag.part, doubted(serve(bag.part, asked), doubts));
      known.set(bag.partId, (answer = { ...served, samePackage: statesPackage(served) }));
    }
    if (answer.verdict === 'missing') continue;
    const { verdict, because } = asItIs(bag, answer);
    judged.push({ bag, verdict, because, samePackage: answer.samePackage });
  }
  return judged;
}

function statesPackage({ because }: Answer): boolean {
  return because.some(({ code, args }) => code === 'same' && args['fact'] === 'package');
}

/** How bags answer a line: its own part, or else one that the line itself names as an alternate, which is `serves` at best. */
export function judgeLine(
  { part, doubts, alternates = [] }: Pick<ReadRow, 'part' | 'doubts' | 'alternates'>,
  bagsLike: (part: Part) => readonly Bag[],
): Judged[] {
  const own = judge(bagsLike(part), part, doubts);
  if (alternates.length === 0) return own;
  const best = new Map(own.map((judged) => [judged.bag.id, judged]));
  for (const alternate of alternates) {
    const said: Because = { code: 'alternate', args: { text: alternate.text } };
    for (const { bag, samePackage, ...answer } of judge(bagsLike(alternate), alternate, [])) {
      const before = best.get(bag.id);
      const judged = { bag, samePackage, ...atMost(answer, 'serves', said) };
      if (!before || rankOf(judged.verdict) < rankOf(before.verdict)) best.set(bag.id, judged);
    }
  }
  return [...best.values()];
}

/** At most this verdict, for that reason. */
function atMost(answer: Answer, most: Verdict, because: Because): Answer {
  const verdict = rankOf(answer.verdict) < rankOf(most) ? most : answer.verdict;
  return { verdict, because: [because, ...answer.because] };
}

/** The same part number settles every doubt but one about the number itself. */
function doubted(answer: Answer, doubts: readonly Doubt[]): Answer {
  const byNumber = isByNumber(answer);
  return doubts
    .filter((doubt) => isOfPart(doubt) && (!byNumber || doubt.field === 'partNumber'))
    .reduce(
      (before, doubt) =>
        atMost(before, isAssumption(doubt) ? 'serves' : 'check', {
          code: 'doubt',
          args: { field: doubt.field, text: doubt.args['text'] ?? '' },
        }),
      answer,
    );
}

/** The same for what the bag was read as when it came in. */
function doubtedBag(part: Part, answer: Answer): Answer {
  const byNumber = isByNumber(answer);
  return doubtedFields(part)
    .filter((field) => !byNumber || field === 'partNumber')
    .reduce((before, field) => atMost(before, 'check', { code: 'doubt', args: { field, text: part.text } }), answer);
}

function isByNumber({ because }: Answer): boolean {
  return because.some(({ code }) => code === 'part-number');
}

/** Salvaged, mixed and expired bags are for a person to look at; an estimate is said. */
function asItIs(bag: Bag, answer: Answer): Answer {
  const known = bag.sure < bag.onHand ? { ...answer, because: [...answer.because, estimate(bag)] } : answer;
  return bag.state === 'sound' || bag.state === 'astray'
    ? known
    : atMost(known, 'check', { code: 'second-hand', args: { state: bag.state } });
}

function estimate({ sure, onHand }: Bag): Because {
  return { code: 'estimate', args: { sure, onHand } };
}

/**
 * Capacitors for the mains last (where these are asked, no other answers); bags that can give something first, then the better
 * verdict, the package that is asked before one not stated, the older lot, the lower number.
 */
export function byUse(a: Judged, b: Judged): number {
  return (
    Number(isForMains(a.bag.part)) - Number(isForMains(b.bag.part)) ||
    Number(free(b.bag) > 0) - Number(free(a.bag) > 0) ||
    rankOf(a.verdict) - rankOf(b.verdict) ||
    Number(b.samePackage) - Number(a.samePackage) ||
    compareDates(a.bag.oldest, b.bag.oldest) ||
    a.bag.number - b.bag.number
  );
}

function compareDates(a: string | null, b: string | null): number {
  if (a === b) return 0;
  if (a === null) return 1;
  return b === null || a < b ? -1 : 1;
}
