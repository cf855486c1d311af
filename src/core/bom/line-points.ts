import type { DoubtField } from '#core/part/doubt.ts';
import { isAssumption } from '#core/part/doubted.ts';
import type { FactKey, Part } from '#core/part/part.ts';
import { pointKey, pointsOf, type Point, type PointKey } from '#core/serve/points.ts';
import { serve } from '#core/serve/serve.ts';
import { rankOf, type Because, type Verdict } from '#core/serve/verdict.ts';
import type { Bag } from '#core/stock/stock.ts';
import type { ReadRow } from './bom.ts';
import { judgeLine } from './judge.ts';

/** A line against one bag: how it answers, why, and point by point. */
export interface LinePoints {
  readonly verdict: Verdict;
  readonly because: readonly Because[];
  /** the part that was compared with: the line's own, or an alternate that it names */
  readonly asked: Part;
  readonly points: readonly Point[];
}

type Asking = Pick<ReadRow, 'part' | 'doubts' | 'alternates'>;

/** A line point by point against a bag; what is doubtful about either, an alternate and a second-hand bag are points as well. */
export function linePoints(line: Asking, bag: Bag): LinePoints {
  const judged = judgeLine(line, () => [bag])[0];
  const { verdict, because } = judged ?? { ...serve(bag.part, line.part), verdict: 'missing' as const };
  const asked = answered(line, because);
  const ofPart = pointsOf(bag.part, asked);
  const points = judged ? because.reduce<readonly Point[]>((all, one) => withReason(all, one, line), ofPart) : ofPart;
  return { verdict, because, asked, points };
}

/** The part that the bag answers: the line's own, or the alternate that is named in the reasons. */
function answered({ part, alternates = [] }: Asking, because: readonly Because[]): Part {
  const named = because.find(({ code }) => code === 'alternate');
  return alternates.find(({ text }) => text === named?.args['text']) ?? part;
}

/** A reason that is of the line or of the bag itself, put to its point. */
function withReason(points: readonly Point[], { code, args }: Because, line: Asking): Point[] {
  if (code === 'alternate')
    return [{ key: 'alternate', asked: String(args['text']), has: null, fit: 'serves', word: 'alternate' }, ...points];
  if (code === 'second-hand')
    return [...points, { key: 'state', asked: null, has: String(args['state']), fit: 'check', word: 'to-look-at' }];
  if (code !== 'doubt') return [...points];
  const assumed = line.doubts.some((doubt) => doubt.field === args['field'] && isAssumption(doubt));
  const open = line.doubts.some((doubt) => doubt.field === args['field'] && !isAssumption(doubt));
  const fit = assumed && !open ? 'serves' : 'check';
  return doubtedPoint(points, doubtKey(args['field'] as DoubtField), fit); // as: `judge` names a field of a part
}

function doubtKey(field: DoubtField): PointKey {
  return field === 'unit' ? 'value' : field === 'kind' || field === 'tolerance' ? field : (pointKey(field as FactKey) ?? 'part'); // as: the other fields of a part are facts
}

function doubtedPoint(points: readonly Point[], key: PointKey, fit: 'serves' | 'check'): Point[] {
  const found = points.find((point) => point.key === key);
  if (!found) return [...points, { key, asked: null, has: null, fit, word: 'doubt' }];
  if (found.fit !== 'none' && rankOf(found.fit) >= rankOf(fit)) return [...points];
  return points.map((point) => (point === found ? { ...point, fit, word: 'doubt' } : point));
}
